namespace Staging.Core.Flight;

/// <summary>One stage as SI numbers.</summary>
internal sealed record StageParameters
{
    public required string Name { get; init; }

    /// <summary>Structure and burnt motors; on the uppermost stage the payload too [kg].</summary>
    public required double BurntMass { get; init; }

    public required MotorBurn Burn { get; init; }

    /// <summary>End of the main motor's thrust history from ignition [s]: delays count from it.</summary>
    public required double MotorEnd { get; init; }

    /// <summary>When the last web breaks, from ignition [s]; not-a-number where it never does.</summary>
    public required double BurnThrough { get; init; }

    /// <summary>Time from burnout to ejection [s]; not-a-number where there is no charge.</summary>
    public required double Delay { get; init; }

    public required DragCurve Drag { get; init; }

    public required DragCurve DragWhileBurning { get; init; }

    /// <summary>Drag of the body once nothing is attached above it.</summary>
    public required DragCurve DragDropped { get; init; }

    /// <summary>Drag area of the recovery device [m2]; zero where there is none.</summary>
    public required double DeviceArea { get; init; }

    /// <summary>The trigger of the device; null where there is none.</summary>
    public required DeploymentEvent? Deployment { get; init; }

    /// <summary>Time from the trigger until the device acts [s].</summary>
    public required double DeploymentLag { get; init; }

    public required IgnitionParameters Ignition { get; init; }
}
