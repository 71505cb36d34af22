namespace Staging.Core.Flight;

/// <summary>The event that starts the timer of an electronic ignition.</summary>
public enum TimerStart
{
    /// <summary>Lift-off of the stack.</summary>
    LiftOff,

    /// <summary>Burnout of the stage below.</summary>
    BurnoutBelow,

    /// <summary>Separation from the stage below; asks for <see cref="SeparationRule.AfterBurnout"/>.</summary>
    Separation,
}
