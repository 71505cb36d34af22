namespace Staging.Core.Flight;

/// <summary>A flight plan as SI numbers, with the air and the gravity of its site.</summary>
internal sealed record PlanParameters
{
    public required StageParameters[] Stages { get; init; }

    public required SiteColumn Site { get; init; }

    /// <summary>Length of the guide [m].</summary>
    public required double GuideLength { get; init; }

    /// <summary>Elevation of the guide above the horizontal [rad].</summary>
    public required double Elevation { get; init; }

    /// <summary>Sine of the elevation [-], exactly 1 for a straight-up guide.</summary>
    public required double SinElevation { get; init; }

    /// <summary>Cosine of the elevation [-], exactly 0 for a straight-up guide.</summary>
    public required double CosElevation { get; init; }

    public required double FrictionCoefficient { get; init; }

    /// <summary>Constant friction of the guide [N].</summary>
    public required double ConstantFriction { get; init; }

    /// <summary>Wind [m/s].</summary>
    public required double Wind { get; init; }
}
