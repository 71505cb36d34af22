namespace Staging.Core.Reviews;

/// <summary>What a review answers to the question whether a stage lights.</summary>
public enum Verdict
{
    /// <summary>
    /// It lights in every case that was tried, and they are so many that the share is above 0.9 at 95 %; in the nominal
    /// one, where no odds were asked for or nothing is judged.
    /// </summary>
    Lights,

    /// <summary>It lights in some cases over what is judged, and stays cold in others.</summary>
    MayLight,

    /// <summary>It lights in no case that was tried.</summary>
    StaysCold,
}
