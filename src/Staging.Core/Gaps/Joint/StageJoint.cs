using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What holds the stages together until the gap pressure opens it. Closed: use <see cref="Match"/> to treat every case.
/// A plain <see cref="FrictionJoint"/> may be written where a joint is asked for.
/// </summary>
public abstract record StageJoint
{
    private protected StageJoint()
    {
    }

    /// <summary>
    /// What slides: the area that the gap pressure pushes on, friction, and the travel after which it opens.
    /// </summary>
    public required FrictionJoint Coupler { get; init => field = Guard.NotNull(value); }

    /// <summary>A coupler as a joint held by friction alone.</summary>
    /// <param name="coupler">The coupler.</param>
    /// <returns>The joint.</returns>
    public static implicit operator StageJoint(FrictionJoint coupler) => FromFrictionJoint(coupler);

    /// <summary>A coupler as a joint held by friction alone.</summary>
    /// <param name="coupler">The coupler.</param>
    /// <returns>The joint.</returns>
    public static StageJoint FromFrictionJoint(FrictionJoint coupler) => new FrictionFit { Coupler = coupler };

    /// <summary>Treats every case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="frictionFit">For a joint held by friction alone.</param>
    /// <param name="taped">For a joint with tape over its seam.</param>
    /// <param name="freeMotorTube">For a motor tube that is free to slide rearwards.</param>
    /// <returns>The answer of the case that holds.</returns>
    public T Match<T>(Func<FrictionFit, T> frictionFit, Func<Taped, T> taped, Func<FreeMotorTube, T> freeMotorTube) => this switch
    {
        FrictionFit x => frictionFit(x),
        Taped x => taped(x),
        FreeMotorTube x => freeMotorTube(x),
        _ => throw new InvalidOperationException($"Unknown joint {GetType().Name}."),
    };

    /// <summary>Friction alone holds the coupler.</summary>
    public sealed record FrictionFit : StageJoint;

    /// <summary>
    /// Tape over the seam holds as well, until it tears or has been heated through. It tears at the first movement:
    /// what a film stretches before is less than the travel of any coupler.
    /// </summary>
    public sealed record Taped : StageJoint
    {
        /// <summary>The tape.</summary>
        public required JointTape Tape { get; init => field = Guard.NotNull(value); }
    }

    /// <summary>
    /// The booster's motor tube is free to slide rearwards out of its stage, and releases a streamer when it has slid
    /// over the engagement. The gap vents rearwards, through holes in the centring rings, from the start.
    /// </summary>
    /// <remarks>
    /// The pressure diameter is that of the motor tube, and what moves is the tube with its motor, not the booster.
    /// </remarks>
    public sealed record FreeMotorTube : StageJoint
    {
        /// <summary>
        /// Mass of what slides, motor tube and motor [kg], 1 g to 100 kg; less than both bodies together.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Mass MovingMass { get; init => field = Guard.In(value, 1e-3, 100); }

        /// <summary>
        /// Holes through the centring rings, at the booster's end of the gap; null, the default, where there are none.
        /// </summary>
        public VentHoles? RearPassages { get; init; }

        /// <summary>
        /// Pressure behind the rear passages above that of the surroundings of the gap, over the dynamic pressure [-],
        /// -1.5 to 1. The default is 0; they open into the wake, whose base pressure is some 0.1 to 0.2 lower than that
        /// of the body side.
        /// </summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public double RearPressureCoefficient { get; init => field = Guard.In(value, -1.5, 1); }
    }
}
