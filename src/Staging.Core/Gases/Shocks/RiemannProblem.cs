namespace Staging.Core.Gases;

/// <summary>
/// The exact Riemann problem: two gases, each uniform and each with its own gamma, meet at x = 0 at t = 0. Allocates
/// nothing.
/// </summary>
/// <remarks>
/// E. F. Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics (3rd ed. 2009), chapter 4, with the functions
/// of either side taken at its own gamma. The star pressure is the only root of f_L(p) + f_R(p) + u_R - u_L, which
/// rises and is concave. Two fans are solved in z = p^((gamma - 1)/(2 gamma)), in which they are nearly straight;
/// otherwise by Newton steps kept inside a bracket. Round-off is reached; the count of steps is bounded.
/// </remarks>
internal static class RiemannProblem
{
    private const int MaxIterations = 100;
    /// <summary>A Newton step this small, relative, leaves an error of its square: round-off.</summary>
    private const double LastStep = 1e-8;

    /// <summary>Solves the problem.</summary>
    /// <param name="left">The gas on the left: density and pressure 1e-75 to 1e75, velocity up to 1e75 either way,
    /// gamma 1.01 to 3.</param>
    /// <param name="right">The gas on the right, in the same units.</param>
    /// <returns>Star state, waves and contact.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number of a state outside its range.</exception>
    public static RiemannSolution Solve(in FlowState left, in FlowState right)
    {
        var L = new Side(Checked(left));
        var R = new Side(Checked(right));
        double du = right.Velocity - left.Velocity;
        if (du >= L.Reach + R.Reach)
            return Vacuum(L, R);

        double p = StarPressure(L, R, du);
        if (!(p > 0))
            return Vacuum(L, R);
        (double fL, _) = L.At(p);
        (double fR, _) = R.At(p);
        double u = 0.5 * (left.Velocity + right.Velocity) + 0.5 * (fR - fL);
        (double leftHead, double leftTail, double rhoL) = L.Wave(p, u, -1);
        (double rightHead, double rightTail, double rhoR) = R.Wave(p, u, +1);
        return new RiemannSolution
        {
            Left = left,
            Right = right,
            StarPressure = p,
            ContactSpeed = u,
            LeftStarDensity = rhoL,
            RightStarDensity = rhoR,
            LeftHead = leftHead,
            LeftTail = leftTail,
            RightTail = rightTail,
            RightHead = rightHead,
        };
    }

    private static FlowState Checked(in FlowState state)
    {
        // A shock that such a velocity drives into such a gas raises pressure by up to 1e300.
        const double Tiny = 1e-75, Huge = 1e75;
        Guard.In(state.Density, Tiny, Huge, "-", nameof(state.Density));
        Guard.In(state.Pressure, Tiny, Huge, "-", nameof(state.Pressure));
        Guard.In(state.Velocity, -Huge, Huge, "-", nameof(state.Velocity));
        Argument.Gamma(state.Gamma, nameof(state.Gamma));
        return state;
    }

    private static RiemannSolution Vacuum(in Side L, in Side R)
    {
        double leftEdge = L.State.Velocity + L.Reach;
        double rightEdge = R.State.Velocity - R.Reach;
        return new RiemannSolution
        {
            Left = L.State,
            Right = R.State,
            VacuumOpens = true,
            ContactSpeed = 0.5 * (leftEdge + rightEdge),
            LeftHead = L.State.Velocity - L.a,
            LeftTail = leftEdge,
            RightTail = rightEdge,
            RightHead = R.State.Velocity + R.a,
        };
    }

    private static double StarPressure(in Side L, in Side R, double du)
    {
        double min = Math.Min(L.p, R.p);
        double most = Math.Max(L.p, R.p);
        double atLeast = L.At(min).f + R.At(min).f + du;
        if (atLeast == 0)
            return min;
        if (atLeast > 0)
            return TwoFans(L, R, du);

        double atMost = L.At(most).f + R.At(most).f + du;
        if (atMost == 0)
            return most;
        double low = atMost < 0 ? most : min;
        double high = atMost < 0 ? double.PositiveInfinity : most;
        return Newton(L, R, du, low, high);
    }

    /// <summary>
    /// Both waves are fans: c_L z^(b_L/b) + c_R z^(b_R/b) = C with z = (p/p_ref)^b and b the greater exponent. The left
    /// side is concave, so Newton from below climbs to the root; for equal gamma the first step lands on it (Toro's
    /// two-rarefaction solution).
    /// </summary>
    private static double TwoFans(in Side L, in Side R, double du)
    {
        double b = Math.Max(L.Exponent, R.Exponent);
        double reference = Math.Min(L.p, R.p);
        double cL = L.Reach * Math.Pow(reference / L.p, L.Exponent);
        double cR = R.Reach * Math.Pow(reference / R.p, R.Exponent);
        double C = L.Reach + R.Reach - du;
        double eL = L.Exponent / b;
        double eR = R.Exponent / b;
        double z = Math.Pow(C / (cL + cR), 1 / Math.Min(eL, eR));
        for (int i = 0; i < MaxIterations; i++)
        {
            double zL = Math.Pow(z, eL);
            double zR = Math.Pow(z, eR);
            double step = (C - cL * zL - cR * zR) / (cL * eL * zL + cR * eR * zR) * z;
            z += step;
            if (Math.Abs(step) <= LastStep * z)
                break;
        }

        return reference * Math.Pow(z, 1 / b);
    }

    private static double Newton(in Side L, in Side R, double du, double low, double high)
    {
        double p = Math.Clamp(Guess(L, R, du), low, Math.Min(high, double.MaxValue));
        for (int i = 0; i < MaxIterations; i++)
        {
            (double fL, double dL) = L.At(p);
            (double fR, double dR) = R.At(p);
            double f = fL + fR + du;
            if (f == 0)
                return p;
            if (f < 0)
                low = p;
            else
                high = p;
            double next = p - f / (dL + dR);
            if (Math.Abs(next - p) <= LastStep * p)
                return next;
            if (!(next > low && next < high))
                next = double.IsInfinity(high) ? 2 * low : Math.Sqrt(low) * Math.Sqrt(high);
            p = next;
        }

        return p;
    }

    /// <summary>Two-shock estimate around the acoustic one (Toro 2009, equations 9.28, 9.41 and 9.42).</summary>
    private static double Guess(in Side L, in Side R, double du)
    {
        double zL = L.State.Density * L.a;
        double zR = R.State.Density * R.a;
        double acoustic = (zR * L.p + zL * R.p - zL * zR * du) / (zL + zR);
        double p = Math.Max(acoustic, Math.Min(L.p, R.p));
        double gL = L.ShockSlope(p);
        double gR = R.ShockSlope(p);
        return (gL * L.p + gR * R.p - du) / (gL + gR);
    }

    /// <summary>One side of the problem with what its functions need again and again.</summary>
    private readonly struct Side
    {
        private readonly double A;
        private readonly double B;

        public Side(FlowState state)
        {
            State = state;
            double g = state.Gamma;
            p = state.Pressure;
            a = state.SoundSpeed;
            Reach = 2 * a / (g - 1);
            Exponent = (g - 1) / (2 * g);
            A = 2 / ((g + 1) * state.Density);
            B = (g - 1) / (g + 1) * p;
        }

        public FlowState State { get; }

        public double p { get; }

        public double a { get; }

        /// <summary>Speed that a full expansion into vacuum adds, 2 a/(gamma - 1).</summary>
        public double Reach { get; }

        /// <summary>(gamma - 1)/(2 gamma).</summary>
        public double Exponent { get; }

        /// <summary>Slope of the chord of the shock branch, sqrt(A/(p + B)).</summary>
        public double ShockSlope(double p) => Math.Sqrt(A / (p + B));

        /// <summary>
        /// Change of velocity across the wave and its slope in p, Toro (2009) equations 4.6, 4.7 and 4.37.
        /// </summary>
        public (double f, double Slope) At(double pStar)
        {
            if (pStar > p)
            {
                double g = ShockSlope(pStar);
                return ((pStar - p) * g, g * (1 - (pStar - p) / (2 * (B + pStar))));
            }

            double ratio = pStar / p;
            double z = Math.Pow(ratio, Exponent);
            return (Reach * (z - 1), z / (ratio * State.Density * a));
        }

        /// <summary>
        /// Velocities of the outer and inner edge of the wave and density behind it; direction is -1 for the left wave.
        /// </summary>
        public (double Head, double Tail, double Density) Wave(double pStar, double uStar, int direction)
        {
            double g = State.Gamma;
            double ratio = pStar / p;
            if (ratio > 1)
            {
                double b = (g - 1) / (g + 1);
                double speed = State.Velocity + direction * a * Math.Sqrt(1 + (g + 1) / (2 * g) * (ratio - 1));
                return (speed, speed, State.Density * ((ratio + b) / (b * ratio + 1)));
            }

            double rho = State.Density * Math.Pow(ratio, 1 / g);
            return (State.Velocity + direction * a, uStar + direction * Math.Sqrt(g * pStar / rho), rho);
        }
    }
}
