using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>A coupler held by friction: it breaks away, slides over its engaged length and opens.</summary>
/// <remarks>The sliding force falls in proportion to the length still engaged, because less surface rubs.</remarks>
public sealed record FrictionJoint
{
    /// <summary>Strongest joint that can be described [N].</summary>
    internal const double MaxForce_N = 2000;

    /// <summary>Diameter over which the gap pressure pushes the stages apart [m], 2 mm to 300 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length PressureDiameter { get; init => field = Guard.In(value, 0.002, 0.3); }

    /// <summary>Force that starts the joint sliding [N], 0 to 2000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Force BreakawayForce { get; init => field = Guard.In(value, 0, MaxForce_N); }

    /// <summary>Friction while sliding at full engagement [N], 0 to 2000; at most the breakaway force.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Force SlidingForce { get; init => field = Guard.In(value, 0, MaxForce_N); }

    /// <summary>Engaged length: travel after which the joint opens [m], 0.5 mm to 500 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Engagement { get; init => field = Guard.In(value, 5e-4, 0.5); }

    /// <summary>
    /// Clearance past coupler and motor through which the gap leaks from the start [m2], 0 to 200 mm2; zero when left
    /// out. 0 to 20 mm2 is a judged range for 18 to 24 mm hardware: a gap of 0.1 mm round a motor of 18 mm is 6 mm2. No
    /// measurement was found.
    /// </summary>
    /// <remarks>
    /// It lies at the booster's end, leads to the surroundings and has the edges of a thin wall. Once the joint has
    /// opened it remains, beside the annulus between the bodies.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Area LeakArea { get; init => field = Guard.In(value, 0, 2e-4); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>Area over which the gap pressure acts.</summary>
    public Area PressureArea => Area.FromSquareMeters(Math.PI / 4 * PressureDiameter.Meters * PressureDiameter.Meters);
}
