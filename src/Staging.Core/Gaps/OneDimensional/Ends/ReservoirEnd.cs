using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The booster's end of the tube: a wall with an opening to each chamber, and to the outside once the joint is open.
/// The discharge law gives the mass flows between chamber pressures and the pressure at the end, the gas spreads over
/// the bore at its total enthalpy, and the tube answers with its wave.
/// </summary>
/// <remarks>
/// The pressure at the end is the one at which the velocity of the gas that fills the bore and the velocity behind the
/// wave sent into the tube agree: the Riemann problem with the openings in place of its left half. Nothing of the jets'
/// momentum is recovered, as behind any sudden widening at the law's own downstream pressure. When the filled bore
/// would run supersonically, it runs no faster than an isentropic widening from the choked openings allows; beyond that
/// the tube is not heard. Where the openings would pass more than the tube brings with the speed of sound, or with its
/// own if that is above, the pressure behind them falls until they pass just that. A chamber below the pressure at the
/// end takes in what is mixed there: <see cref="ChamberOpeningFlows"/>.
/// </remarks>
internal sealed class ReservoirEnd(double boreArea, params ChamberOpening[] mouths) : TubeEnd
{
    /// <summary>Width of the bracket on the pressure at the end, relative [-].</summary>
    private const double PressureTolerance = 1e-11;

    /// <summary>Share of the last pressure by which the search first looks beyond it [-].</summary>
    private const double FirstReach = 1e-3;

    /// <summary>Looks beyond it at most: far more than all of the accepted pressures.</summary>
    private const int MostReaches = 200;

    private readonly double boreArea = boreArea;
    private readonly ChamberOpening[] mouths = mouths;
    private double speed;

    /// <summary>Flow of the last step, a unit of bore.</summary>
    public EndFlux Last { get; private set; }

    /// <summary>Pressure at the end in the last step.</summary>
    public double LastPressure { get; private set; }

    /// <summary>
    /// Energy that came through the end in the last flow, a unit of bore [W/m2]: the rest of
    /// <see cref="EndFlux.Energy"/> is work on the end.
    /// </summary>
    public double EnergyThrough { get; private set; }

    /// <summary>The known flow that enters here too.</summary>
    public EndFeed Feed { get; set; }

    public override bool Mirrors => IsShut;

    private bool IsShut => Feed.Mass == 0 && HighestPressure == 0;

    public override double Speed => speed;

    /// <summary>Highest pressure behind an opening [Pa]; 0 when none is open.</summary>
    private double HighestPressure
    {
        get
        {
            double most = 0;
            foreach (ChamberOpening mouth in mouths)
                most = mouth.IsOpen ? Math.Max(most, mouth.Pressure) : most;
            return most;
        }
    }

    /// <summary>Sets the speed at which the end recedes [m/s], 0 or more.</summary>
    public void Recede(double value) => speed = -value;

    public override EndFlux Flow(in EndState inside)
    {
        var match = new Match(this, inside.From(speed));
        EndFlux at = match.Find(out double pressure);
        LastPressure = pressure;
        EnergyThrough = at.Energy;

        // From the frame of the end to that of the tube: momentum and energy of the mass, and the work of the receding
        // end.
        double momentum = at.Momentum + at.Mass * speed;
        Last = new EndFlux(at.Mass, momentum, at.Energy + at.Momentum * speed + 0.5 * at.Mass * speed * speed, at.Products);
        return Last;
    }

    /// <summary>Finds the pressure at which chambers and tube agree.</summary>
    private ref struct Match(ReservoirEnd end, EndState tube) : IScalarFunction
    {
        private readonly EndState tube = tube;
        private ChamberOpeningFlows flows;

        /// <summary>What the tube lets out at most, and from which pressure on it lets out less [Pa].</summary>
        private EndState unhindered;
        private double heardFrom = double.NaN;

        public EndFlux Find(out double pressure)
        {
            if (end.IsShut)
            {
                pressure = tube.WallPressure();
                foreach (ChamberOpening mouth in end.mouths)
                    mouth.Pass(0, 0, 0);
                return new EndFlux(0, pressure, 0, 0);
            }

            // The pressure moves little from step to step: from the last one the bracket opens with doubled shares.
            double first = end.LastPressure > 0 ? end.LastPressure : end.HighestPressure > 0 ? end.HighestPressure : tube.Pressure;
            double atFirst = At(first), low = first, high = first, fLow = atFirst, fHigh = atFirst, share = FirstReach;
            for (int i = 0; i < MostReaches && fLow > 0; i++, share = Math.Min(0.5, 2 * share))
                (high, fHigh, fLow) = (low, fLow, At(low *= 1 - share));
            for (int i = 0; i < MostReaches && fHigh < 0; i++, share = Math.Min(1, 2 * share))
                (low, fLow, fHigh) = (high, fHigh, At(high *= 1 + share));
            pressure = atFirst == 0 ? first
                : fLow > 0 ? low
                : BracketedRoot.Shrink(ref this, low, fLow, high, fHigh, PressureTolerance * first).High;
            At(pressure);
            return Flux(ref pressure);
        }

        /// <summary>
        /// Velocity behind the wave in the tube less velocity of the gas that comes from the openings, at a pressure.
        /// </summary>
        public double At(double p)
        {
            flows = new ChamberOpeningFlows(end.mouths, end.Feed, end.boreArea, tube, p);
            if (flows.Net > 0)
                return tube.VelocityAt(p) - Filled(p);
            return IsHeard(p)
                ? tube.VelocityAt(p) - flows.Net / tube.DensityAt(p)
                : (unhindered.Density * unhindered.Velocity - flows.Net) / tube.DensityAt(p);
        }

        /// <summary>Whether a pressure that the tube flows out against is heard inside.</summary>
        private bool IsHeard(double p)
        {
            if (double.IsNaN(heardFrom))
                unhindered = tube.Unhindered(out heardFrom);
            return p >= heardFrom;
        }

        /// <summary>
        /// Velocity of the inflow once it fills the bore at pressure p: (k/2) u^2 + p u = k H with k = m R/cp.
        /// </summary>
        private readonly double Filled(double p)
        {
            double k = flows.Net * flows.Gas.R / flows.Gas.Cp;
            return 2 * k * flows.Enthalpy / (p + Math.Sqrt(p * p + 2 * k * k * flows.Enthalpy));
        }

        private EndFlux Flux(ref double p)
        {
            double mass = flows.Net;
            if (mass <= 0)
            {
                (double rho, double at) = IsHeard(p) ? (tube.DensityAt(p), p) : (unhindered.Density, unhindered.Pressure);
                double v = mass / rho, H0 = tube.Gamma / (tube.Gamma - 1) * at / rho + 0.5 * v * v;
                flows.Share(end.mouths, H0, tube.Fraction);
                return new EndFlux(mass, at + mass * v, mass * H0, mass * tube.Fraction);
            }

            GasConstants gas = flows.Gas;
            double H = flows.Enthalpy, u = Filled(p);
            double soundSquared = gas.Gamma * gas.R * (H - 0.5 * u * u) / gas.Cp;
            if (u * u > soundSquared)
            {
                double M = IsentropicFlow.SupersonicMach(Math.Max(1, 1 / flows.ThroatShare(end.mouths)), gas.Gamma);
                double T = H / gas.Cp / (1 + 0.5 * (gas.Gamma - 1) * M * M);
                double most = M * Math.Sqrt(gas.Gamma * gas.R * T);
                if (u > most)
                {
                    u = most;
                    p = mass / u * gas.R * T;
                }
            }

            flows.Share(end.mouths, H, flows.Fraction);
            return new EndFlux(mass, mass * u + p, mass * H, mass * flows.Fraction);
        }
    }
}
