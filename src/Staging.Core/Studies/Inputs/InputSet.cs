using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// A model with its uncertain inputs, checked when it is made: the model accepts both ends and the middle of every
/// input alone, and each listed value.
/// </summary>
/// <typeparam name="T">The model.</typeparam>
/// <remarks>Immutable; may be read from any thread. Inputs are taken as independent of one another.</remarks>
public sealed record InputSet<T>
{
    internal InputSet(T nominal, ImmutableArray<StudyInput<T>> inputs) => (Nominal, Inputs) = (nominal, inputs);

    /// <summary>The model that the inputs are put into.</summary>
    public T Nominal { get; }

    /// <summary>The inputs, in the order in which they are put in and listed.</summary>
    public ImmutableArray<StudyInput<T>> Inputs { get; }

    /// <summary>The model with a value for every input.</summary>
    /// <param name="values">One value for each input, in its [Unit].</param>
    /// <returns>A changed copy.</returns>
    /// <exception cref="ArgumentException">Not one value for each input, or the model refuses one.</exception>
    public T At(ReadOnlySpan<double> values)
    {
        if (values.Length != Inputs.Length)
            throw new ArgumentException($"{values.Length} values for {Inputs.Length} inputs.", nameof(values));
        T model = Nominal;
        for (int i = 0; i < values.Length; i++)
            model = Inputs[i].With(model, values[i]);
        return model;
    }

    /// <summary>
    /// The model with every input at its median: the centre of the study. It need not be the nominal model.
    /// </summary>
    /// <returns>A changed copy.</returns>
    public T AtMedians() => At([.. Inputs.Select(i => i.Spread.Median)]);

    /// <summary>Names and units of the inputs.</summary>
    internal ImmutableArray<ColumnName> Names => [.. Inputs.Select(i => new ColumnName(i.Path, i.Unit))];

    /// <summary>How each input scatters.</summary>
    internal ImmutableArray<string> Spreads => [.. Inputs.Select(i => i.InWords)];

    /// <summary>The values of one point of a design.</summary>
    internal double[] Values(SampleDesign design, long index)
    {
        double[] values = new double[Inputs.Length];
        for (int d = 0; d < values.Length; d++)
            values[d] = Inputs[d].Spread.At(design.Unit(index, d));
        return values;
    }
}

/// <summary>Makes sets of inputs.</summary>
public static class InputSet
{
    /// <summary>Nearest that a draw comes to 0 and to 1 [-].</summary>
    private const double Nearest = 0.5 / (1UL << 52);

    /// <summary>A model with its uncertain inputs.</summary>
    /// <typeparam name="T">The model.</typeparam>
    /// <param name="nominal">The model that the inputs are put into.</param>
    /// <param name="inputs">The inputs; at least one.</param>
    /// <returns>The set.</returns>
    /// <exception cref="InvalidModelException">There is no input, two have one name, or the model refuses a value that
    /// one can take.</exception>
    public static InputSet<T> Of<T>(T nominal, params ImmutableArray<StudyInput<T>> inputs)
    {
        ArgumentNullException.ThrowIfNull(nominal);
        ImmutableArray<StudyInput<T>> given = inputs.IsDefault ? [] : inputs;
        InvalidModelException.ThrowOnError([.. Findings(nominal, given)]);
        return new InputSet<T>(nominal, given);
    }

    private static IEnumerable<ModelFinding> Findings<T>(T nominal, ImmutableArray<StudyInput<T>> inputs)
    {
        if (inputs.IsEmpty)
            yield return new ModelFinding(FindingSeverity.Error, "STU001", "Inputs", "There is no input; give one or more.");
        foreach (string twice in inputs.GroupBy(i => i.Path).Where(g => g.Count() > 1).Select(g => g.Key))
            yield return new ModelFinding(FindingSeverity.Error, "STU002", twice, "Two inputs have this name; give each its own.");
        foreach (StudyInput<T> input in inputs)
        {
            foreach (string refusal in Refusals(nominal, input))
                yield return new ModelFinding(FindingSeverity.Error, "STU003", input.Path, refusal);
        }
    }

    /// <summary>
    /// Which of the values tried the model refuses, and why. A reason that is the same for all of them is not about the
    /// value, and is told once.
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
        spread is Distribution.Discrete listed ? listed.Values : [spread.At(Nearest), spread.Median, spread.At(1 - Nearest)];

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
