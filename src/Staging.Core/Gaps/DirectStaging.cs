using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Direct staging: motors in contact, held by tape round the seam, as the limit of a gap without length. Nothing is vented; the gas that comes through
/// fills the upper motor's nozzle and recess, and pushes the motors apart as soon as the tape lets go.
/// </summary>
/// <remarks>
/// The shortest tube that a gap may have, one millimetre, stands for the uneven faces. Its results differ from those of no length as the volume of
/// that millimetre does from the recess (shown by the tests): with a recess of 0.3 cm3 the motors part about a tenth later.
/// What the model leaves out here is the jet from the booster that strikes the grain: it knows a stream only through vents, so in contact it
/// heats the grain by radiation alone and says that it stays dark, where common practice has motors in contact light readily. Take
/// from it the race of tape and pressure, not the light.
/// </remarks>
public static class DirectStaging
{
    /// <summary>Shortest tube [m], which <see cref="GuideTube.Length"/> accepts.</summary>
    private const double Shortest_m = 1e-3;

    /// <summary>Travel after which motors that only touched have parted [m]: the shortest engagement that <see cref="FrictionJoint.Engagement"/> accepts.</summary>
    private const double Parted_m = 5e-4;

    /// <summary>The same motors in contact: no tube, no vents, no coupler, tape alone.</summary>
    /// <param name="problem">The gap whose motors, bodies and air are taken.</param>
    /// <param name="tape">The tape round the seam; strong enough or not, that is the question.</param>
    /// <returns>The problem of direct staging.</returns>
    public static GapProblem InContact(this GapProblem problem, JointTape tape)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(tape);
        GapDesign design = problem.Design;
        return problem with
        {
            Design = design with
            {
                Tube = design.Tube with { Length = Length.FromMeters(Shortest_m) },
                Vents = [],
                Joint = new StageJoint.Taped
                {
                    Coupler = design.Joint.Coupler with { BreakawayForce = Force.Zero, SlidingForce = Force.Zero, Engagement = Length.FromMeters(Parted_m) },
                    Tape = tape,
                },
            },
        };
    }
}
