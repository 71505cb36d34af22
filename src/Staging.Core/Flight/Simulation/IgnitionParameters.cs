namespace Staging.Core.Flight;

/// <summary>The ignition of a stage, as SI numbers.</summary>
internal sealed record IgnitionParameters
{
    /// <summary>The case in the plan.</summary>
    public required StageIgnition Case { get; init; }

    /// <summary>Contact: burn-through to ignition [s].</summary>
    public double Lag { get; init; }

    /// <summary>Electronics: event to current [s].</summary>
    public double Timer { get; init; }

    /// <summary>Electronics: current to thrust [s].</summary>
    public double IgniterLag { get; init; }

    /// <summary>Electronics: burnout below to separation [s]; not-a-number where ignition separates.</summary>
    public double SeparationLag { get; init; } = double.NaN;

    public double MinSpeed { get; init; } = double.NegativeInfinity;

    public double MinHeight { get; init; } = double.NegativeInfinity;

    public double MaxHeight { get; init; } = double.PositiveInfinity;

    public double Earliest { get; init; } = double.NegativeInfinity;

    public double Latest { get; init; } = double.PositiveInfinity;

    /// <summary>Greatest tilt from vertical [rad].</summary>
    public double MaxTilt { get; init; } = double.PositiveInfinity;
}
