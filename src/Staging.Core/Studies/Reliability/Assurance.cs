namespace Staging.Core.Studies;

/// <summary>
/// A required probability and the confidence in it: enough cases must succeed that the lower end of the interval is
/// not below it.
/// </summary>
public sealed record Assurance
{
    /// <summary>The required probability [-], 0.01 to 0.9999.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Probability { get; init => field = Guard.In(value, 0.01, 0.9999); }

    /// <summary>Confidence, one-sided [-], 0.5 to 0.9999. The default is 0.95.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Confidence { get; init => field = Guard.In(value, 0.5, 0.9999); } = 0.95;

    /// <summary>Cases at most for one answer, 10 to 10 million. The default is 400.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Cases { get; init => field = Guard.In(value, 10, 10_000_000); } = 400;

    /// <summary>
    /// The seed: every answer draws the same cases, so that neighbours on an axis differ only by the axis value.
    /// </summary>
    public ulong Seed { get; init; }

    /// <summary>
    /// Hits needed: the least k for which k hits or more would be rarer than 1 - confidence, or as rare, if the
    /// probability were exactly the required one; null where even a full score does not reach the confidence.
    /// </summary>
    public int? HitsNeeded
    {
        get
        {
            long k = BinomialRank.Min(Cases, Probability, Confidence) + 1;
            return k <= Cases ? (int)k : null;
        }
    }

    /// <summary>All the settings, so that parts with other cases differ.</summary>
    /// <returns>For example <c>0.9 assured at 0.95 by 400 cases of seed 0</c>.</returns>
    public override string ToString() => Invariant.Text($"{Probability:R} assured at {Confidence:R} by {Cases} cases of seed {Seed}");

    /// <summary>
    /// Whether an outcome is assured. Cases are run in order until the remaining ones cannot change the answer.
    /// </summary>
    /// <typeparam name="T">The model.</typeparam>
    /// <param name="inputs">The model with what is uncertain in it.</param>
    /// <param name="holds">Whether one case comes out well; pure. A model that refuses its input has not.</param>
    /// <param name="cancellationToken">Stops the cases.</param>
    /// <returns>True when enough cases came out well.</returns>
    /// <exception cref="InvalidModelException">No count of hits could bear the probability asked for: more cases are
    /// needed.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public bool Of<T>(InputSet<T> inputs, Func<T, CancellationToken, bool> holds, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(holds);
        int needed = Check();
        var design = new SampleDesign(DesignKind.Independent, Cases, inputs.Inputs.Length, Seed);
        int hits = 0;
        for (int i = 0; i < Cases && hits < needed && hits + Cases - i >= needed; i++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (IsHit(inputs, inputs.Values(design, i), holds, cancellationToken))
                hits++;
        }

        return hits >= needed;
    }

    /// <summary>The hits needed, or the finding that no count of hits would suffice.</summary>
    internal int Check() => HitsNeeded
        ?? throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU008", nameof(Cases), $"{Cases} cases cannot "
            + $"assure {AcceptedRange.Text(Probability)} at a confidence of {AcceptedRange.Text(Confidence)}; {CasesFor()} or more can.")]);

    /// <summary>Cases of which a full score reaches the confidence: p^n not above 1 - confidence.</summary>
    private int CasesFor() => (int)Math.Ceiling(Math.Log(1 - Confidence) / Math.Log(Probability));

    private static bool IsHit<T>(InputSet<T> inputs, double[] values, Func<T, CancellationToken, bool> holds, CancellationToken cancel)
    {
        try
        {
            return holds(inputs.At(values), cancel);
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
