using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// A model with its uncertain inputs, checked when it is made: the model accepts both ends and the middle of every
/// input alone, and each listed value.
/// </summary>
/// <typeparam name="T">The model.</typeparam>
/// <remarks>
/// Immutable; may be read from any thread. Inputs are taken as independent of one another. Equality of two sets
/// compares the functions of their inputs by reference.
/// </remarks>
public sealed record InputSet<T>
{
    /// <summary>A model with its uncertain inputs.</summary>
    /// <param name="nominal">The model whose inputs vary.</param>
    /// <param name="inputs">The inputs; at least one.</param>
    /// <exception cref="InvalidModelException">There is no input, two have one name, or the model refuses a value that
    /// one can take.</exception>
    public InputSet(T nominal, params EquatableArray<StudyInput<T>> inputs)
    {
        ArgumentNullException.ThrowIfNull(nominal);
        InvalidModelException.ThrowOnError([.. InputFindings.All(nominal, inputs)]);
        (Nominal, Inputs) = (nominal, inputs);
    }

    /// <summary>The model whose inputs vary.</summary>
    public T Nominal { get; }

    /// <summary>The inputs, in the order in which they are set and listed.</summary>
    public EquatableArray<StudyInput<T>> Inputs { get; }

    /// <summary>The model with a value for every input.</summary>
    /// <param name="values">One value for each input, in its [Unit].</param>
    /// <returns>A changed copy.</returns>
    /// <exception cref="ArgumentException">Not one value for each input, or the model refuses one.</exception>
    public T At(ReadOnlySpan<double> values) => Of(Nominal, values);

    /// <summary>
    /// The model with every input at its median: the centre of the study. It need not be the nominal model.
    /// </summary>
    /// <returns>A changed copy.</returns>
    public T AtMedians() => At([.. Inputs.Select(i => i.Spread.Median)]);

    /// <summary>Fits the inputs to a measured trace by least squares.</summary>
    /// <remarks>
    /// K. Levenberg, Q. Appl. Math. 2 (1944) 164-168, and D. W. Marquardt, J. SIAM 11 (1963) 431-441, with central
    /// differences for the slopes. Each input is searched within the ends of its distribution, from its median on; the
    /// shape of the distribution is not used. Covariance: s^2 (J' J)^-1 at the minimum, s^2 the squares of the
    /// residuals over their number less that of the inputs (G. A. F. Seber and C. J. Wild, Nonlinear Regression, 1989,
    /// section 2.1). It assumes independent residuals of equal variance: a slow drift of the gauge makes the
    /// intervals too narrow.
    /// </remarks>
    /// <param name="trace">What was measured.</param>
    /// <param name="predict">The values that the model gives at the times [s] of the trace, in its unit [Unit]; pure,
    /// and called on any thread.</param>
    /// <param name="options">How to fit; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the fit.</param>
    /// <returns>The fit. Its findings name the inputs that the trace cannot tell apart.</returns>
    /// <exception cref="InvalidModelException">A distribution has no ends or just listed values, or there are not more
    /// samples than inputs.</exception>
    /// <exception cref="ArithmeticException">The model gave another number of values, or a number that is not
    /// finite.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public CalibrationResult<T> Fit(
        MeasuredTrace trace,
        Func<T, ImmutableArray<double>, CancellationToken, ImmutableArray<double>> predict,
        CalibrationOptions? options = null,
        CancellationToken cancellationToken = default) =>
        Calibration.Fit(this, Guard.NotNull(trace, nameof(trace)), Guard.NotNull(predict, nameof(predict)),
            options ?? CalibrationOptions.Default, cancellationToken);

    /// <summary>Names and units of the inputs.</summary>
    internal ImmutableArray<ColumnName> Names => [.. Inputs.Select(i => new ColumnName(i.Path, i.Unit))];

    /// <summary>The distribution of each input.</summary>
    internal ImmutableArray<string> Spreads => [.. Inputs.Select(i => i.Scatter)];

    /// <summary>Another model of the kind, with a value for every input.</summary>
    internal T Of(T model, ReadOnlySpan<double> values)
    {
        if (values.Length != Inputs.Length)
            throw new ArgumentException($"{values.Length} values for {Inputs.Length} inputs.", nameof(values));
        for (int i = 0; i < values.Length; i++)
            model = Inputs[i].With(model, values[i]);
        return model;
    }

    /// <summary>The values of one point of a design.</summary>
    internal double[] Values(SampleDesign design, long index)
    {
        double[] values = new double[Inputs.Length];
        for (int d = 0; d < values.Length; d++)
            values[d] = Inputs[d].Spread.At(design.Unit(index, d));
        return values;
    }
}
