using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns a joint into plain SI numbers.</summary>
internal static class JointToSi
{
    /// <summary>
    /// Mass of what moves times mass of the rest over their sum [kg]. What moves is the body behind, or a free motor
    /// tube alone.
    /// </summary>
    public static double ReducedMass(StageJoint joint, SeparatingBodies bodies)
    {
        double all = bodies.MassAhead.Kilograms + bodies.MassBehind.Kilograms;
        double moving = (joint.MovingMass ?? bodies.MassBehind).Kilograms;
        return moving * (all - moving) / all;
    }

    /// <summary>The film of a tape, at the temperature of the air to begin with.</summary>
    public static FilmParameters? Film(StageJoint joint, Temperature air) =>
        joint.Tape is { } tape ? FilmToSi.ToSi(tape, air) : null;

    /// <summary>Holes through the centring rings: vents to the outside at the booster's end.</summary>
    public static IEnumerable<VentParameters> RearPassages(StageJoint joint, double frontThickness, GapProblem problem) =>
        joint.RearPassages is { } holes
            ? [new VentParameters(0, frontThickness, 0, 0,
                new OutletParameters(new OrificeSize(holes), -1, problem.Behind(joint.RearPressureCoefficient)), 0)]
            : [];

    /// <summary>
    /// What leaks past coupler and motor: a vent without depth to the outside at the booster's end, as wide along the
    /// tube as a round hole of its area.
    /// </summary>
    public static IEnumerable<VentParameters> Leak(StageJoint joint, double frontThickness, GapProblem problem) =>
        joint.Coupler.LeakArea.SquareMeters is > 0 and var area
            ? [new VentParameters(0, frontThickness, 0, 0,
                new OutletParameters(new OrificeSize(area, Math.Sqrt(4 * area / Math.PI), 0), -1, problem.Behind(0)), 0)]
            : [];
}
