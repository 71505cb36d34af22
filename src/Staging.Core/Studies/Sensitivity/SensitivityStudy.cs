namespace Staging.Core.Studies;

/// <summary>
/// A number that follows from a model with uncertain inputs: which of them matter? It says nothing about how that is
/// found.
/// </summary>
/// <typeparam name="T">The model that is varied.</typeparam>
/// <remarks>
/// Immutable. The function has to be pure: it is called on any thread. An exception of the model ends the study.
/// </remarks>
public sealed record SensitivityStudy<T>
{
    /// <summary>The model and what is uncertain in it.</summary>
    public required InputSet<T> Inputs { get; init => field = Guard.NotNull(value); }

    /// <summary>Unit of the number; <c>-</c> where there is none.</summary>
    public required string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>Runs one case and gives the number, in [Unit]: a time, a margin, or 1 and 0 for lit and dark.</summary>
    public required Func<T, CancellationToken, double> Model { get; init => field = Guard.NotNull(value); }

    /// <summary>What tells a study of this kind from others; each case gives numbers in [Unit].</summary>
    internal StudyHeading Heading(long cases, ulong seed, string design, IEnumerable<string> numbers) => new(
        cases, seed, design, Inputs.Names, Inputs.Spreads, [.. numbers.Select(name => new ColumnName(name, Unit))]);

    /// <summary>The number at given values of the inputs.</summary>
    internal double At(ReadOnlySpan<double> values, CancellationToken cancel)
    {
        double result = Model(Inputs.At(values), cancel);
        return double.IsFinite(result)
            ? result
            : throw new ArithmeticException(
                $"The model gave no finite number at {string.Join(", ", values.ToArray().Select(AcceptedRange.Text))}.");
    }

    /// <summary>
    /// The values of the inputs at a point of the unit cube; where a distribution has no ends, 0 and 1 stand for its 1
    /// % and 99 %.
    /// </summary>
    internal double[] Values(ReadOnlySpan<double> unit)
    {
        const double nearest = 0.5 / (1UL << 52), tail = 0.01;
        double[] values = new double[unit.Length];
        for (int d = 0; d < values.Length; d++)
        {
            Distribution spread = Inputs.Inputs[d].Spread;
            values[d] = spread.At(spread.IsBounded ? Math.Clamp(unit[d], nearest, 1 - nearest) : tail + (1 - 2 * tail) * unit[d]);
        }

        return values;
    }
}
