using System.Collections.Immutable;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// A gap design at the moment of burn-through: with the bodies on either side and the air outside. It says nothing
/// about how it is solved.
/// </summary>
/// <remarks>
/// Immutable; may be read from any thread. A changed copy is <c>problem.With(length: ...)</c> or
/// <c>problem with { ... }</c>.
/// </remarks>
public sealed partial record GapProblem
{
    /// <summary>Greatest dynamic pressure that is accepted [Pa].</summary>
    internal const double MostDynamicPressure = 1e6;

    /// <summary>The gap as built.</summary>
    public required GapDesign Design { get; init => field = Guard.NotNull(value); }

    /// <summary>The bodies ahead of and behind the joint.</summary>
    public required SeparatingBodies Bodies { get; init => field = Guard.NotNull(value); }

    /// <summary>Air outside the holes; the gap starts filled with it.</summary>
    public required GasState Surroundings { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Dynamic pressure of the flight [Pa], 0 to 1 MPa; 0, the default, at rest. Outlets with a pressure coefficient
    /// stand so much above the pressure of the surroundings.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure DynamicPressure { get; init => field = Guard.In(value, 0, MostDynamicPressure); }

    /// <summary>How long after burn-through the gap is watched [s], 0.1 ms to 10 s. The default is 0.2 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration Horizon { get; init => field = Guard.In(value, 1e-4, 10); } = Duration.FromMilliseconds(200);

    /// <summary>
    /// How long the gap is followed once its joint has opened [s], 0 to 1 s. The default is 0: the run ends there,
    /// because gas that is no longer guided lights nothing that could be counted on. What the grain still goes through
    /// is in <see cref="GapRun.PeakGrainSurfaceAfterOpening"/>. Motors in contact (<see cref="InContact"/>) are
    /// followed: the jet from one into the other guides itself over a few diameters of the opening. The run ends
    /// sooner where the bodies are pushed together again.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration AfterOpening { get; init => field = Guard.In(value, 0, 1); } = Duration.Zero;

    /// <summary>A copy with other choices of a builder; what is left out stays.</summary>
    /// <param name="length">Length of the guide tube [m], 1 mm to 5 m. Vents stay at their stations.</param>
    /// <param name="bore">Inner diameter of the guide tube [m], 2 mm to 200 mm. The joint keeps its pressure
    /// diameter.</param>
    /// <param name="breakaway">Force that starts the joint sliding [N], 0 to 2000.</param>
    /// <param name="sliding">Friction while sliding [N], 0 to 2000; left out, it keeps its share of the breakaway
    /// force, all of it where there was none.</param>
    /// <param name="vents">Holes out of the tube.</param>
    /// <param name="joint">What holds the stages together; breakaway and sliding force are then changed on it.</param>
    /// <param name="source">What comes out of the booster.</param>
    /// <returns>The changed problem.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public GapProblem With(Length? length = null, Length? bore = null, Force? breakaway = null, Force? sliding = null,
        EquatableArray<Vent>? vents = null, StageJoint? joint = null, GapSource? source = null)
    {
        StageJoint held = joint ?? Design.Joint;
        FrictionJoint coupler = held.Coupler;
        double before = coupler.BreakawayForce.Newtons, share = before > 0 ? coupler.SlidingForce.Newtons / before : 1;
        if (breakaway is { } force)
            coupler = coupler with { BreakawayForce = force, SlidingForce = Force.FromNewtons(share * force.Newtons) };
        return this with
        {
            Design = Design with
            {
                Tube = Design.Tube with { Length = length ?? Design.Tube.Length, Bore = bore ?? Design.Tube.Bore },
                Vents = vents ?? Design.Vents,
                Joint = held with { Coupler = coupler with { SlidingForce = sliding ?? coupler.SlidingForce } },
                Source = source ?? Design.Source,
            },
        };
    }

    /// <summary>All findings about the model, from holes outside the tube to laws used outside their range.</summary>
    /// <returns>The findings; empty when there is none.</returns>
    public ImmutableArray<ModelFinding> Check() => GapChecks.Of(this);
}
