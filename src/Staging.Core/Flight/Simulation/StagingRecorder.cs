namespace Staging.Core.Flight;

/// <summary>The record of one staging while the flight is computed.</summary>
internal sealed class StagingRecorder(int stage, BodyState start)
{
    /// <summary>Index of the stage to be lit.</summary>
    public int Stage => stage;

    /// <summary>
    /// The stack at the burn-through or burnout below, or when the timer ends, before ignition is decided:
    /// failure cases start here. Copied only where failure cases are flown.
    /// </summary>
    public BodyState Start => start;

    /// <summary>
    /// The state passed to the gap model; with electronics, that at the burnout below, or when the timer ended if that
    /// came first.
    /// </summary>
    public BurnThroughState? State { get; set; }

    /// <summary>The answer of the gap model in the nominal flight; null without one.</summary>
    public GapIgnitionResult? Answer { get; set; }

    public bool Lit { get; set; }

    public string Reason { get; set; } = "The flight ended before this was decided.";

    /// <summary>Ignition of the upper stage [s], not-a-number where it stays cold.</summary>
    public double IgnitionTime { get; set; } = double.NaN;

    /// <summary>Height [m] and velocity [m/s] at ignition.</summary>
    public (double Height, double Velocity) AtIgnition { get; set; } = (double.NaN, double.NaN);

    /// <summary>Separation [s], not-a-number where the stages stay joined.</summary>
    public double SeparationTime { get; set; } = double.NaN;
}
