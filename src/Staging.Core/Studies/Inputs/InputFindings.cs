using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The findings about a set of inputs, tried on the model before anything runs.</summary>
internal static class InputFindings
{
    public static IEnumerable<ModelFinding> All<T>(T nominal, EquatableArray<StudyInput<T>> inputs)
    {
        if (inputs.Length == 0)
            yield return new ModelFinding(FindingSeverity.Error, "STU001", "Inputs", "There is no input; give at least one.");
        foreach (string twice in inputs.GroupBy(i => i.Path).Where(g => g.Count() > 1).Select(g => g.Key))
            yield return new ModelFinding(FindingSeverity.Error, "STU002", twice, "Two inputs have this name; give each its own.");
        foreach (StudyInput<T> input in inputs)
        {
            foreach (string refusal in Refusals(nominal, input))
                yield return new ModelFinding(FindingSeverity.Error, "STU003", input.Path, refusal);
        }
    }

    /// <summary>
    /// Which of the values tried the model refuses, and why. A reason that is the same for all of them does not depend
    /// on the value, and is reported once.
    /// </summary>
    private static IEnumerable<string> Refusals<T>(T nominal, StudyInput<T> input)
    {
        ImmutableArray<double> tried = Tried(input.Spread);
        ImmutableArray<string?> reasons = [.. tried.Select(value => Refusal(nominal, input, value))];
        if (tried.Length > 1 && reasons[0] is { } only && reasons.All(reason => reason == only))
            return [$"The model refuses this input, whatever its value: {only}"];
        return tried.Zip(reasons).Where(pair => pair.Second is not null).Select(
            pair => $"The model refuses {AcceptedRange.Text(pair.First)} {input.Unit}, which this input can take: {pair.Second} A "
                + $"bounded or truncated distribution would fit.");
    }

    /// <summary>
    /// Every value of a list; of a continuous spread both ends, or what a draw comes nearest to them, and the middle.
    /// </summary>
    private static ImmutableArray<double> Tried(Distribution spread) =>
        spread.Shape is DistributionShape.Discrete listed
            ? listed.Values.Items
            : [spread.At(Philox4x32.Nearest), spread.Median, spread.At(1 - Philox4x32.Nearest)];

    private static string? Refusal<T>(T nominal, StudyInput<T> input, double value)
    {
        try
        {
            input.With(nominal, value);
            return null;
        }
        catch (ArgumentException refusal)
        {
            return refusal.Message.ReplaceLineEndings(" ");
        }
    }
}
