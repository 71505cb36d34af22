namespace Staging.Core.Studies;

/// <summary>The probability of something before and after the observations.</summary>
public sealed class LearnedOdds
{
    private const double Confidence = 0.95;

    internal LearnedOdds(double before, double casesBefore, double after, double effectiveAfter, long refused)
    {
        (Before, After, EffectiveSampleSize, Refused) = (before, after, effectiveAfter, refused);
        BeforeAt95 = ScoreInterval.Of(before, casesBefore, Confidence);
        AfterAt95 = ScoreInterval.Of(after, effectiveAfter, Confidence);
    }

    /// <summary>The probability before [-].</summary>
    public double Before { get; }

    /// <summary>Where it lies at 95 %, by the score interval over the cases [-].</summary>
    public Interval BeforeAt95 { get; }

    /// <summary>The probability after [-].</summary>
    public double After { get; }

    /// <summary>
    /// Where it lies at 95 % [-], by the score interval over the effective number of cases: what the sampling leaves
    /// open, not what the model does.
    /// </summary>
    public Interval AfterAt95 { get; }

    /// <summary>The effective number of cases behind the probability after [-].</summary>
    public double EffectiveSampleSize { get; }

    /// <summary>Cases that were refused where it was asked; they count against it.</summary>
    public long Refused { get; }

    /// <summary>Both probabilities with their intervals, on one line.</summary>
    /// <returns>For example <c>0.71 (0.69 to 0.73) before, 0.84 (0.79 to 0.88) after</c>.</returns>
    public override string ToString() => Invariant.Text($"{Before:F3} ({BeforeAt95.Low:F3} to {BeforeAt95.High:F3}) before, {After:F3} "
        + $"({AfterAt95.Low:F3} to {AfterAt95.High:F3}) after");
}
