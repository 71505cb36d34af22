using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>A number read from the result of a case, where there is one.</summary>
/// <typeparam name="TResult">The result of a case.</typeparam>
public sealed record Measure<TResult>
{
    /// <summary>What it is called in results, for example <c>lit time</c>.</summary>
    public required string Name { get; init => field = InputPath.Checked(value); }

    /// <summary>Unit of the number; <c>-</c> where there is none.</summary>
    public required string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>
    /// Reads the number, in [Unit]; null where the result has none, as the time of lighting of a gap that stayed dark.
    /// </summary>
    public required Func<TResult, double?> Of { get; init => field = Guard.NotNull(value); }
}

/// <summary>Makes measures.</summary>
public static class Measure
{
    /// <summary>A number read from a result.</summary>
    /// <typeparam name="TResult">The result of a case.</typeparam>
    /// <param name="name">What it is called in results.</param>
    /// <param name="unit">Unit of the number; <c>-</c> where there is none.</param>
    /// <param name="of">Reads the number, in [unit]; null where the result has none.</param>
    /// <returns>The measure.</returns>
    /// <exception cref="ArgumentException">The name is blank or holds other characters than letters, digits, dots,
    /// hyphens and spaces.</exception>
    public static Measure<TResult> Of<TResult>(string name, string unit, Func<TResult, double?> of) =>
        new() { Name = name, Unit = unit, Of = of };

    /// <summary>A finding for each name that two measures share.</summary>
    internal static ImmutableArray<ModelFinding> Twice<TResult>(ImmutableArray<Measure<TResult>> measures) =>
    [
        .. measures.GroupBy(m => m.Name).Where(g => g.Count() > 1).Select(g =>
            new ModelFinding(FindingSeverity.Error, "STU002", $"Measures.{g.Key}", "Two measures have this name; give each its own.")),
    ];
}
