namespace Staging.Core.Flight;

/// <summary>What is known of one staging while the flight is computed.</summary>
internal sealed class StagingRecorder(int stage, BodyState start)
{
    /// <summary>Index of the stage to be lit.</summary>
    public int Stage => stage;

    /// <summary>
    /// The stack at the burn-through or burnout below, or when the timer ends, before anything is decided: where
    /// failure cases start. A copy only where failure cases are flown.
    /// </summary>
    public BodyState Start => start;

    /// <summary>The state that was put to the gap, or that electronics met.</summary>
    public BurnThroughState? State { get; set; }

    /// <summary>What the gap answered in the nominal flight; null where none was asked.</summary>
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
