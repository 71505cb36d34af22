namespace Staging.Core.Flight;

/// <summary>The event that starts the timer of an electronic ignition.</summary>
public enum TimerStart
{
    /// <summary>Ignition of the lowest stage, when the launch button is pressed: <c>t = 0</c>.</summary>
    Launch,

    /// <summary>Lift-off of the stack.</summary>
    LiftOff,

    /// <summary>The end of the guide.</summary>
    GuideExit,

    /// <summary>Ignition of the stage below.</summary>
    IgnitionBelow,

    /// <summary>Burn-through of the stage below; requires a motor that burns through.</summary>
    BurnThroughBelow,

    /// <summary>Burnout of the stage below.</summary>
    BurnoutBelow,

    /// <summary>
    /// Separation from the stage below; requires <see cref="StageIgnition.ByElectronics.SeparationAfterBurnout"/>.
    /// </summary>
    Separation,

    /// <summary>
    /// Apogee of the stack. A motor lit after it pushes towards the ground; a guard on the tilt or the height should
    /// prevent it.
    /// </summary>
    Apogee,
}
