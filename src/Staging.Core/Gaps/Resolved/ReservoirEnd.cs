using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// The booster's end of the tube: a wall with an opening to the chamber. The discharge law gives the mass flow between chamber pressure
/// and the pressure in the tube, the gas spreads over the bore at the chamber's total enthalpy, and the tube answers with its wave.
/// </summary>
/// <remarks>
/// The pressure at the end is the one at which the velocity of the gas that fills the bore and the velocity behind the wave sent into
/// the tube agree: the Riemann problem with the opening in place of its left half. Nothing of the jet's momentum is recovered, as behind any
/// sudden widening at the law's own downstream pressure. When the filled bore would run supersonically, it runs no faster than an
/// isentropic widening from the choked opening allows; beyond that the tube is not heard.
/// </remarks>
internal sealed class ReservoirEnd(IDischargeLaw law, double boreArea) : TubeEnd
{
    /// <summary>Width of the bracket on the pressure at the end, relative [-].</summary>
    private const double PressureTolerance = 1e-11;

    private readonly IDischargeLaw law = law;
    private readonly double boreArea = boreArea;
    private double speed;

    /// <summary>The opening as far as it has grown.</summary>
    public OrificeSize Opening { get; set; }

    /// <summary>Gas in the chamber.</summary>
    public OrificeSide Chamber { get; set; }

    /// <summary>Mass fraction of products in the chamber [-].</summary>
    public double ChamberFraction { get; set; }

    /// <summary>Flow of the last step, a unit of bore.</summary>
    public EndFlux Last { get; private set; }

    /// <summary>Pressure at the end in the last step.</summary>
    public double LastPressure { get; private set; }

    public override bool Mirrors => Opening.Area == 0;

    public override double Speed => speed;

    /// <summary>Sets the speed at which the end recedes [m/s], 0 or more.</summary>
    public void Recede(double value) => speed = -value;

    public override EndFlux Flow(in EndState inside)
    {
        var match = new Match(this, inside.From(speed));
        EndFlux at = match.Find(out double pressure);
        LastPressure = pressure;

        // From the frame of the end to that of the tube: momentum and energy of the mass, and the work of the receding end.
        double momentum = at.Momentum + at.Mass * speed;
        Last = new EndFlux(at.Mass, momentum, at.Energy + at.Momentum * speed + 0.5 * at.Mass * speed * speed, at.Products);
        return Last;
    }

    /// <summary>Energy that the last flow took from the chamber, a unit of bore [W/m2]: the rest of <see cref="EndFlux.Energy"/> is work on the end.</summary>
    public double EnergyFromChamber { get; private set; }

    /// <summary>Finds the pressure at which chamber and tube agree.</summary>
    private ref struct Match(ReservoirEnd end, EndState tube) : IScalarFunction
    {
        private readonly EndState tube = tube;
        private double mass;

        public EndFlux Find(out double pressure)
        {
            if (end.Opening.Area == 0)
            {
                pressure = tube.WallPressure();
                end.EnergyFromChamber = 0;
                return new EndFlux(0, pressure, 0, 0);
            }

            double chamber = end.Chamber.P;
            double atChamber = At(chamber);
            double low = chamber, high = chamber;
            double fLow = atChamber, fHigh = atChamber;
            for (int i = 0; i < 200 && fLow > 0; i++)
                fLow = At(low *= 0.5);
            for (int i = 0; i < 200 && fHigh < 0; i++)
                fHigh = At(high *= 2);
            pressure = atChamber == 0 ? chamber
                : fLow > 0 ? low
                : BracketedRoot.Shrink(ref this, low, fLow, high, fHigh, PressureTolerance * chamber).High;
            At(pressure);
            return Flux(ref pressure);
        }

        /// <summary>Velocity behind the wave in the tube less velocity of the gas that comes from the opening, at a pressure.</summary>
        public double At(double p)
        {
            double wave = tube.VelocityAt(p);
            if (p <= end.Chamber.P)
            {
                mass = OrificeKernel.SignedMassFlow(end.law, end.Opening, end.Chamber, new OrificeSide(p, end.Chamber.T, end.Chamber.Gas)) / end.boreArea;
                return wave - Filled(p);
            }

            double rho = tube.DensityAt(p);
            // Only R T = p/rho enters the flow, so the gas of the tube may be given with any R.
            var back = new OrificeSide(p, p / rho, new GasConstants(1, tube.Gamma));
            mass = OrificeKernel.SignedMassFlow(end.law, end.Opening, end.Chamber, back) / end.boreArea;
            return wave - mass / rho;
        }

        /// <summary>Velocity of the inflow once it fills the bore at pressure p: (k/2) u^2 + p u = k H with k = m R/cp.</summary>
        private readonly double Filled(double p)
        {
            GasConstants gas = end.Chamber.Gas;
            double k = mass * gas.R / gas.Cp, H = gas.Cp * end.Chamber.T;
            return 2 * k * H / (p + Math.Sqrt(p * p + 2 * k * k * H));
        }

        private readonly EndFlux Flux(ref double p)
        {
            if (mass <= 0)
            {
                double rho = tube.DensityAt(p), v = mass / rho;
                double energy = mass * (tube.Gamma / (tube.Gamma - 1) * p / rho + 0.5 * v * v);
                end.EnergyFromChamber = energy;
                return new EndFlux(mass, p + mass * v, energy, mass * tube.Fraction);
            }

            GasConstants gas = end.Chamber.Gas;
            double H = gas.Cp * end.Chamber.T, u = Filled(p);
            double soundSquared = gas.Gamma * gas.R * (end.Chamber.T - 0.5 * u * u / gas.Cp);
            if (u * u > soundSquared)
            {
                double M = AreaRatio.SupersonicMach(Math.Max(1, ChokedFlux() / mass), gas.Gamma);
                double T = end.Chamber.T / (1 + 0.5 * (gas.Gamma - 1) * M * M);
                double most = M * Math.Sqrt(gas.Gamma * gas.R * T);
                if (u > most)
                {
                    u = most;
                    p = mass / u * gas.R * T;
                }
            }

            end.EnergyFromChamber = mass * H;
            return new EndFlux(mass, mass * u + p, mass * H, mass * end.ChamberFraction);
        }

        /// <summary>Greatest isentropic mass flux of the chamber's gas.</summary>
        private readonly double ChokedFlux() =>
            end.Chamber.P / Math.Sqrt(end.Chamber.Gas.R * end.Chamber.T) * ChokedFlow.CriticalFlowFactor(end.Chamber.Gas.Gamma);
    }
}
