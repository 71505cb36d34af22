using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What holds the stages together until the gap pressure opens it: friction alone, friction and tape, or the friction
/// of a motor tube that slides rearwards. A plain <see cref="FrictionJoint"/> may be written in place of a joint.
/// </summary>
public sealed record StageJoint
{
    private StageJoint(FrictionJoint coupler) => Coupler = Guard.NotNull(coupler, nameof(coupler));

    /// <summary>
    /// What slides: the area that the gap pressure pushes on, friction, and the travel after which it opens.
    /// </summary>
    public FrictionJoint Coupler { get; init => field = Guard.NotNull(value); }

    /// <summary>Tape over the seam; null where there is none.</summary>
    public JointTape? Tape { get; private init; }

    /// <summary>
    /// Mass of what slides, a free motor tube and its motor [kg]; null where the whole body behind moves.
    /// </summary>
    public Mass? MovingMass { get; private init; }

    /// <summary>Holes through the centring rings of a free motor tube; null where there are none.</summary>
    public VentHoles? RearPassages { get; private init; }

    /// <summary>
    /// Pressure behind the rear passages above that of the surroundings of the gap, over the dynamic pressure [-]; 0
    /// without such passages.
    /// </summary>
    public double RearPressureCoefficient { get; private init; }

    /// <summary>A coupler as a joint held by friction alone.</summary>
    /// <param name="coupler">The coupler.</param>
    /// <returns>The joint.</returns>
    public static implicit operator StageJoint(FrictionJoint coupler) => FromFrictionJoint(coupler);

    /// <summary>A coupler as a joint held by friction alone.</summary>
    /// <param name="coupler">The coupler.</param>
    /// <returns>The joint.</returns>
    public static StageJoint FromFrictionJoint(FrictionJoint coupler) => new(coupler);

    /// <summary>
    /// Tape over the seam holds as well, until it tears or has been heated through. It tears at the first movement:
    /// what a film stretches before is less than the travel of any coupler.
    /// </summary>
    /// <param name="coupler">What slides; its friction holds beside the tape.</param>
    /// <param name="tape">The tape.</param>
    /// <returns>The joint.</returns>
    public static StageJoint Taped(FrictionJoint coupler, JointTape tape) => new(coupler) { Tape = Guard.NotNull(tape, nameof(tape)) };

    /// <summary>
    /// The booster's motor tube is free to slide rearwards out of its stage, and releases a streamer when it has slid
    /// over the engagement. The gap vents rearwards, through holes in the centring rings, from the start.
    /// </summary>
    /// <remarks>What moves is the tube with its motor, not the booster.</remarks>
    /// <param name="coupler">The motor tube in its rings; the pressure diameter is that of the tube.</param>
    /// <param name="movingMass">
    /// Mass of what slides, motor tube and motor [kg], 1 g to 100 kg; less than both bodies together.
    /// </param>
    /// <param name="rearPassages">
    /// Holes through the centring rings, at the booster's end of the gap; null where there are none.
    /// </param>
    /// <param name="rearPressureCoefficient">
    /// Pressure behind the rear passages above that of the surroundings of the gap, over the dynamic pressure [-], -1.5
    /// to 1. They open into the wake, whose base pressure is some 0.1 to 0.2 lower than that of the body side.
    /// </param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static StageJoint FreeMotorTube(
        FrictionJoint coupler, Mass movingMass, VentHoles? rearPassages = null, double rearPressureCoefficient = 0) => new(coupler)
        {
            MovingMass = Guard.In(movingMass, 1e-3, 100, nameof(movingMass)),
            RearPassages = rearPassages,
            RearPressureCoefficient = Guard.In(rearPressureCoefficient, -1.5, 1, "-", nameof(rearPressureCoefficient)),
        };
}
