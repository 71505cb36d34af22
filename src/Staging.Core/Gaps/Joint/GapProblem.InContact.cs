using UnitsNet;

namespace Staging.Core.Gaps;

/// <content>Direct staging: the same motors in contact.</content>
public sealed partial record GapProblem
{
    /// <summary>
    /// Shortest tube [m] that <see cref="GuideTube.Length"/> accepts: motors in contact, which have nothing to vent.
    /// </summary>
    internal const double Shortest_m = 1e-3;

    /// <summary>
    /// Travel after which motors that only touched have parted [m]: the shortest engagement that
    /// <see cref="FrictionJoint.Engagement"/> accepts.
    /// </summary>
    private const double Parted_m = 5e-4;

    /// <summary>
    /// How long the motors are followed once they have parted [s]: bodies of 30 and 60 g are then beyond the core of a
    /// jet of 10 mm.
    /// </summary>
    private const double Followed_s = 0.01;

    /// <summary>
    /// Direct staging: the same motors in contact, as the limit of a gap without length. No tube, no vents, no jackets,
    /// no coupler, tape alone; followed for 10 ms once they have parted, or longer if the gap is.
    /// </summary>
    /// <remarks>
    /// Nothing is vented; the jet that comes through strikes the upper nozzle, fills it and the recess, and pushes the
    /// motors apart as soon as the tape lets go.
    /// The shortest tube that a gap may have, one millimetre, stands for the uneven faces. Its results differ from
    /// those of no length as the volume of that millimetre does from the recess (shown by the tests): with a recess of
    /// 0.3 cm3 the motors part about a tenth later. Once they have parted the jet still counts while its core reaches
    /// the throat: a free jet as hot as the products keeps one of three diameters of the opening. The light is as good
    /// as the share of the particles' heat that the grain keeps, for which nothing is published:
    /// <see cref="MixingAndHeat.ParticleEfficiency"/> decides it, so solve at both ends of its range. The grain stands
    /// behind the throat and the model heats it as if it stood in it: the flux is an upper bound.
    /// Searches and flights count what is lit before parting, nothing else.
    /// The one-dimensional model takes a few cells here (<see cref="GapModel.OneDimensional.CellsPerBore"/>).
    /// </remarks>
    /// <param name="tape">The tape round the seam; strong enough or not, that is the question.</param>
    /// <returns>The problem of direct staging.</returns>
    public GapProblem InContact(JointTape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return this with
        {
            Design = Design with
            {
                Tube = Design.Tube with { Length = Length.FromMeters(Shortest_m), Steps = [] },
                Vents = [],
                Jackets = [],
                Joint = StageJoint.Taped(
                    Design.Joint.Coupler with
                    {
                        BreakawayForce = Force.Zero,
                        SlidingForce = Force.Zero,
                        LeakArea = Area.Zero,
                        Engagement = Length.FromMeters(Parted_m)
                    },
                    tape),
            },
            AfterOpening = Duration.FromSeconds(Math.Max(Followed_s, AfterOpening.Seconds)),
        };
    }
}
