namespace Staging.Core.Gases;

/// <summary>
/// Exact solution of a Riemann problem: two waves, a contact surface between the two gases, and the uniform star states
/// on its sides. A value; made by <see cref="Of"/>.
/// </summary>
/// <remarks>
/// Where the gases part faster than both can expand, a vacuum opens: star pressure and star densities are 0, and the
/// tails of the two fans are its edges.
/// </remarks>
public readonly struct RiemannSolution
{
    /// <summary>The gas on the left before the waves.</summary>
    public FlowState Left { get; internal init; }

    /// <summary>The gas on the right before the waves.</summary>
    public FlowState Right { get; internal init; }

    /// <summary>Pressure p* between the waves [as given]; 0 when a vacuum opens.</summary>
    public double StarPressure { get; internal init; }

    /// <summary>Velocity u* of the contact surface [as given]; in a vacuum the mean of its two edges.</summary>
    public double ContactSpeed { get; internal init; }

    /// <summary>Density between left wave and contact [as given].</summary>
    public double LeftStarDensity { get; internal init; }

    /// <summary>Density between contact and right wave [as given].</summary>
    public double RightStarDensity { get; internal init; }

    /// <summary>Velocity of the left edge of the left wave [as given]: the shock, or the head of the fan.</summary>
    public double LeftHead { get; internal init; }

    /// <summary>
    /// Velocity of the right edge of the left wave [as given]: the shock again, or the tail of the fan.
    /// </summary>
    public double LeftTail { get; internal init; }

    /// <summary>Velocity of the left edge of the right wave [as given]: the shock, or the tail of the fan.</summary>
    public double RightTail { get; internal init; }

    /// <summary>
    /// Velocity of the right edge of the right wave [as given]: the shock again, or the head of the fan.
    /// </summary>
    public double RightHead { get; internal init; }

    /// <summary>Whether a vacuum opens between the gases.</summary>
    public bool VacuumOpens { get; internal init; }

    /// <summary>Whether the left wave is a shock; otherwise it is an expansion fan.</summary>
    public bool LeftIsShock => StarPressure > Left.Pressure;

    /// <summary>Whether the right wave is a shock; otherwise it is an expansion fan.</summary>
    public bool RightIsShock => StarPressure > Right.Pressure;

    /// <summary>Solves the problem.</summary>
    /// <param name="left">The gas on the left: density and pressure 1e-75 to 1e75, velocity up to 1e75 either way,
    /// gamma 1.01 to 3.</param>
    /// <param name="right">The gas on the right, in the same units.</param>
    /// <returns>Star state, waves and contact.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number of a state outside its range.</exception>
    public static RiemannSolution Of(in FlowState left, in FlowState right) => RiemannProblem.Solve(left, right);

    /// <summary>The state on a ray x/t from the point where the gases met.</summary>
    /// <param name="speed">x/t [as the velocities], finite; the contact itself counts to the right.</param>
    /// <returns>
    /// The state, with the gamma of the gas that is there. In a vacuum density and pressure are 0 and the velocity is
    /// x/t.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public FlowState Sample(double speed)
    {
        double s = Guard.In(speed, double.MinValue, double.MaxValue, "-", nameof(speed));
        if (VacuumOpens && s >= LeftTail && s <= RightTail)
            return new FlowState(0, s, 0, s < ContactSpeed ? Left.Gamma : Right.Gamma);
        if (s < ContactSpeed)
        {
            if (s < LeftHead)
                return Left;
            return s >= LeftTail ? new FlowState(LeftStarDensity, ContactSpeed, StarPressure, Left.Gamma) : InFan(Left, s, +1);
        }

        if (s > RightHead)
            return Right;
        return s <= RightTail ? new FlowState(RightStarDensity, ContactSpeed, StarPressure, Right.Gamma) : InFan(Right, s, -1);
    }

    /// <summary>
    /// Inside a fan, Toro (2009) equations 4.56 and 4.63; <paramref name="side"/> is +1 in the left one, -1 in the
    /// right one.
    /// </summary>
    private static FlowState InFan(in FlowState k, double s, int side)
    {
        double g = k.Gamma;
        double a_k = k.SoundSpeed;
        double a = Math.Max(0, 2 / (g + 1) * (a_k + (g - 1) / 2 * side * (k.Velocity - s)));
        double rho = k.Density * Math.Pow(a / a_k, 2 / (g - 1));
        return new FlowState(rho, s + side * a, rho * a * a / g, g);
    }
}
