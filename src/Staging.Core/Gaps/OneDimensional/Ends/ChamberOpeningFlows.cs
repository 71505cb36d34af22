using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// What passes the openings of all chambers at one pressure at the booster's end, each a unit of bore.
/// </summary>
/// <remarks>
/// Chambers above that pressure give their own gas, which mixes at the end; chambers below it take in the mixture.
/// Where they would take more than the others give, the rest comes from the tube, and the mixture is counted with it:
/// nothing is made or lost, and with one chamber it is the plain flow in one or the other direction. Flows of both
/// signs come of chambers that burn through at different times, and of a joint that has opened: the outside is then one
/// more chamber. A known flow gives whatever the pressure.
/// </remarks>
internal readonly struct ChamberOpeningFlows
{
    private readonly double pressure;
    private readonly double bore;

    /// <summary>R T [J/kg] and gamma of the gas that quieter chambers take in, as their law sees it.</summary>
    private readonly double backRT;
    private readonly double backGamma;
    private readonly double into;
    private readonly double fed;
    private readonly double back;

    /// <summary>What passes at a pressure p at the end, before a tube that answers with its wave.</summary>
    public ChamberOpeningFlows(ChamberOpening[] mouths, in EndFeed feed, double bore, in EndState tube, double p)
    {
        pressure = p;
        this.bore = bore;
        int givers = 0, takers = 0;
        if (feed.Mass > 0)
        {
            fed = into = feed.Mass;
            givers = 1;
            (Gas, Enthalpy, Fraction) = (feed.Gas, feed.Enthalpy, 1);
        }

        foreach (ChamberOpening mouth in mouths)
        {
            if (!mouth.IsOpen)
                continue;
            if (mouth.Pressure < p)
            {
                takers++;
                continue;
            }

            double m = Out(mouth);
            if (++givers == 1)
                (Gas, Enthalpy, Fraction) = (mouth.Chamber.Gas, mouth.Enthalpy, mouth.Fraction);
            else if (m > 0)
                (Gas, Enthalpy, Fraction) = Mixed(m / (into + m), mouth);
            into += m;
        }

        if (takers == 0)
            return;
        double tubeRT = p / tube.DensityAt(p);
        (backRT, backGamma) = into > 0 ? (Gas.R * Enthalpy / Gas.Cp, Gas.Gamma) : (tubeRT, tube.Gamma);
        back = Taken(mouths);
        if (!(into > 0) || back <= into)
            return;
        double s = into / back;
        backRT = s * backRT + (1 - s) * tubeRT;
        backGamma = s * backGamma + (1 - s) * tube.Gamma;
        back = Taken(mouths);
    }

    /// <summary>Mass flow into the tube; negative out of it [kg/(m2 s)].</summary>
    public double Net => into - back;

    /// <summary>Gas that the giving chambers mix to.</summary>
    public GasConstants Gas { get; }

    /// <summary>Its total enthalpy [J/kg].</summary>
    public double Enthalpy { get; }

    /// <summary>Its mass fraction of products [-].</summary>
    public double Fraction { get; }

    /// <summary>
    /// Enters the flow of every chamber; the tube takes or gives gas of a total enthalpy and a fraction of products.
    /// </summary>
    public void Share(ChamberOpening[] mouths, double tubeEnthalpy, double tubeFraction)
    {
        double enthalpy = Enthalpy, fraction = Fraction;
        if (back > into)
        {
            double share = into / back;
            enthalpy = share * enthalpy + (1 - share) * tubeEnthalpy;
            fraction = share * fraction + (1 - share) * tubeFraction;
        }

        foreach (ChamberOpening mouth in mouths)
        {
            if (!mouth.IsOpen)
                mouth.Pass(0, 0, 0);
            else if (mouth.Pressure < pressure)
                mouth.Pass(-In(mouth), fraction, enthalpy);
            else
                mouth.Pass(Out(mouth), mouth.Fraction, mouth.Enthalpy);
        }
    }

    /// <summary>
    /// Choked area that would give the same inflow, over the bore [-]; a known flow counts as the whole bore, so it
    /// never runs supersonically.
    /// </summary>
    public double ThroatShare(ChamberOpening[] mouths)
    {
        double sum = fed > 0 ? 1 : 0;
        foreach (ChamberOpening mouth in mouths)
        {
            if (mouth.IsOpen && mouth.Pressure >= pressure)
                sum += Out(mouth) / ChokedFlux(mouth.Chamber);
        }

        return sum;
    }

    private double Out(ChamberOpening mouth) => mouth.Pressure == pressure ? 0 : mouth.Out(pressure) / bore;

    private double In(ChamberOpening mouth) => mouth.In(pressure, backRT, backGamma) / bore;

    /// <summary>The gas so far with a share of a mouth's [-].</summary>
    private (GasConstants Gas, double Enthalpy, double Fraction) Mixed(double share, ChamberOpening mouth)
    {
        GasConstants other = mouth.Chamber.Gas;
        double R = Gas.R + share * (other.R - Gas.R), cp = Gas.Cp + share * (other.Cp - Gas.Cp);
        return (new GasConstants(R, cp / (cp - R)), Enthalpy + share * (mouth.Enthalpy - Enthalpy),
            Fraction + share * (mouth.Fraction - Fraction));
    }

    private double Taken(ChamberOpening[] mouths)
    {
        double sum = 0;
        foreach (ChamberOpening mouth in mouths)
        {
            if (mouth.IsOpen && mouth.Pressure < pressure)
                sum += In(mouth);
        }

        return sum;
    }

    /// <summary>Greatest isentropic mass flux of a chamber's gas [kg/(m2 s)].</summary>
    private static double ChokedFlux(in OrificeSide chamber) =>
        chamber.P / Math.Sqrt(chamber.Gas.R * chamber.T) * IsentropicFlow.CriticalFlowFactor(chamber.Gas.Gamma);
}
