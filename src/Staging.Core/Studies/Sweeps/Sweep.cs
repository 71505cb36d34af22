using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Runs any pure function along one axis, or over two, and finds where along one a condition holds.</summary>
public static class Sweep
{
    /// <summary>Runs a function at every value of an axis.</summary>
    /// <typeparam name="TResult">What it gives.</typeparam>
    /// <param name="axis">The values.</param>
    /// <param name="run">The function, of a value in the unit of the axis [Unit]; it has to be pure, and is called on
    /// any thread.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the sweep.</param>
    /// <returns>Values and results, in order.</returns>
    /// <exception cref="InvalidModelException">The options ask for a part.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SweepLine<TResult> Along<TResult>(
        Axis axis, Func<double, CancellationToken, TResult> run, StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(run);
        return new SweepLine<TResult>(axis,
            PointEvaluator.All(axis.Values.Length, (i, cancel) => run(axis.Values[(int)i], cancel), options, progress, cancellationToken));
    }

    /// <summary>Runs a function at every pair of values of two axes.</summary>
    /// <typeparam name="TResult">What it gives.</typeparam>
    /// <param name="across">The values of its first argument.</param>
    /// <param name="up">The values of its second argument.</param>
    /// <param name="run">The function, of a value of each axis [Unit]; it has to be pure, and is called on any
    /// thread.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the sweep.</param>
    /// <returns>The map.</returns>
    /// <exception cref="InvalidModelException">The options ask for a part.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static SweepMap<TResult> Over<TResult>(
        Axis across, Axis up, Func<double, double, CancellationToken, TResult> run, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(across);
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(run);
        int wide = across.Values.Length;
        ImmutableArray<TResult> results = PointEvaluator.All(
            (long)wide * up.Values.Length, (i, cancel) => run(across.Values[(int)(i % wide)], up.Values[(int)(i / wide)], cancel), options,
            progress, cancellationToken);
        return new SweepMap<TResult>(across, up, results);
    }

    /// <summary>Prepares a sweep along one axis that can be run in parts.</summary>
    /// <typeparam name="TResult">What it gives.</typeparam>
    /// <param name="axis">The values.</param>
    /// <param name="run">The function, of a value in the unit of the axis [Unit]; it has to be pure, and is called on
    /// any thread.</param>
    /// <param name="codec">How a result becomes numbers and comes back.</param>
    /// <returns>The study; its answer holds what comes back from the numbers.</returns>
    public static PartitionedStudy<SweepLine<TResult>> AlongInParts<TResult>(Axis axis, Func<double, CancellationToken, TResult> run,
        PartCodec<TResult> codec)
    {
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(codec);
        return new PartitionedStudy<SweepLine<TResult>>(
            new StudyHeading(axis.Values.Length, 0, $"sweep along {axis}{codec.Remark}", [axis.Name], [], codec.Columns.Items),
            (i, cancel) => codec.Row(run(axis.Values[(int)i], cancel), i),
            rows => new SweepLine<TResult>(axis, [.. rows.Select(codec.Result)]),
            someMayBeAbsent: true);
    }

    /// <summary>Prepares a sweep over two axes that can be run in parts.</summary>
    /// <typeparam name="TResult">What it gives.</typeparam>
    /// <param name="across">The values of its first argument.</param>
    /// <param name="up">The values of its second argument.</param>
    /// <param name="run">The function, of a value of each axis [Unit]; it has to be pure, and is called on any
    /// thread.</param>
    /// <param name="codec">How a result becomes numbers and comes back.</param>
    /// <returns>The study; its answer holds what comes back from the numbers.</returns>
    public static PartitionedStudy<SweepMap<TResult>> OverInParts<TResult>(
        Axis across, Axis up, Func<double, double, CancellationToken, TResult> run, PartCodec<TResult> codec)
    {
        ArgumentNullException.ThrowIfNull(across);
        ArgumentNullException.ThrowIfNull(up);
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(codec);
        int wide = across.Values.Length;
        return new PartitionedStudy<SweepMap<TResult>>(
            new StudyHeading((long)wide * up.Values.Length, 0, $"sweep over {across} and {up}{codec.Remark}",
                [across.Name, up.Name], [], codec.Columns.Items),
            (i, cancel) => codec.Row(run(across.Values[(int)(i % wide)], up.Values[(int)(i / wide)], cancel), i),
            rows => new SweepMap<TResult>(across, up, [.. rows.Select(codec.Result)]),
            someMayBeAbsent: true);
    }

    /// <summary>
    /// Finds where along an axis a condition holds: brackets every change on the axis, then halves the bracket.
    /// </summary>
    /// <param name="axis">Where to look. A window narrower than its step may be missed: its values are the
    /// scan.</param>
    /// <param name="width">Width at which an edge counts as found: a length of the axis [Unit], or a factor less 1 [-]
    /// on an axis of factors; above 0.</param>
    /// <param name="holds">The question, of a value in the unit of the axis [Unit]; pure, and called on any
    /// thread.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows found, or that there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The edge width is not above 0.</exception>
    /// <exception cref="InvalidModelException">The options ask for a part.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WindowResult Windows(
        Axis axis, double width, Func<double, CancellationToken, bool> holds, StudyOptions? options = null,
        CancellationToken cancellationToken = default) =>
        WindowSearch.Find(axis, width, holds, options, cancellationToken);

    /// <summary>
    /// How a result of <see cref="Windows"/> on one axis is written as numbers: the answer at every value, and the
    /// edge between neighbours that differ. A search cannot be divided into parts, but a sweep of searches can.
    /// </summary>
    /// <param name="axis">The axis that is searched at every point.</param>
    /// <returns>The codec.</returns>
    public static PartCodec<WindowResult> WindowCodec(Axis axis) => WindowSearch.Codec(axis);

    /// <summary>The codec of a result that is one number [unit].</summary>
    /// <param name="name">What it is called: letters, digits, dots, hyphens and inner spaces.</param>
    /// <param name="unit">Its unit; <c>-</c> where there is none.</param>
    /// <returns>The codec.</returns>
    /// <exception cref="ArgumentException">The name is blank or holds other characters.</exception>
    public static PartCodec<double> Number(string name, string unit) => new(
        x => x[0] ?? throw new ArgumentException($"The number \"{Excerpt.Of(name)}\" is absent at a point.", nameof(name)),
        new Measure<double>(name, unit, x => x));
}
