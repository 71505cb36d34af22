using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>A number read from the result of a case, where there is one.</summary>
/// <typeparam name="TResult">The result of a case.</typeparam>
public sealed class Measure<TResult>
{
    /// <summary>A number read from a result.</summary>
    /// <param name="name">What it is called in results.</param>
    /// <param name="unit">Unit of the number; <c>-</c> where there is none.</param>
    /// <param name="of">Reads the number, in [unit]; null where the result has none.</param>
    /// <exception cref="ArgumentException">The name is blank or holds other characters than letters, digits, dots,
    /// hyphens, underscores and inner spaces.</exception>
    public Measure(string name, string unit, Func<TResult, double?> of) =>
        (Name, Unit, Of) = (InputPath.Checked(name), Guard.NotBlank(unit, nameof(unit)), Guard.NotNull(of, nameof(of)));

    /// <summary>Its name in results, for example <c>lit time</c>.</summary>
    public string Name { get; }

    /// <summary>Unit of the number; <c>-</c> where there is none.</summary>
    public string Unit { get; }

    /// <summary>
    /// Reads the number, in [Unit]; null where the result has none, such as the time of ignition of a gap that does not
    /// light.
    /// </summary>
    public Func<TResult, double?> Of { get; }

    /// <summary>Name and unit as the head of a column.</summary>
    internal ColumnName Column => new(Name, Unit);

    /// <summary>A finding for each name that two measures share.</summary>
    internal static ImmutableArray<ModelFinding> Twice(EquatableArray<Measure<TResult>> measures) =>
    [
        .. measures.GroupBy(m => m.Name).Where(g => g.Count() > 1).Select(g =>
            new ModelFinding(FindingSeverity.Error, "STU002", $"Measures.{g.Key}", "Two measures have this name; give each its own.")),
    ];
}
