using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>The opening of one chamber in the booster's end of the tube, the gas behind it, and what came out in the last step.</summary>
internal sealed class BoosterMouth(IDischargeLaw law)
{
    private OrificeSize opening;
    private OrificeSide chamber;

    public IDischargeLaw Law { get; } = law;

    /// <summary>The opening as far as it has grown.</summary>
    public OrificeSize Opening
    {
        get => opening;
        set => opening = value;
    }

    /// <summary>Gas in the chamber.</summary>
    public OrificeSide Chamber
    {
        get => chamber;
        set => (chamber, Enthalpy) = (value, value.Gas.Cp * value.T);
    }

    /// <summary>Mass fraction of products in the chamber [-].</summary>
    public double Fraction { get; set; }

    public bool IsOpen => opening.Area > 0;

    /// <summary>Pressure in the chamber [Pa].</summary>
    public double Pressure => chamber.P;

    /// <summary>Total enthalpy of the chamber's gas [J/kg].</summary>
    public double Enthalpy { get; private set; }

    /// <summary>Flow into the end at a pressure there that is not above the chamber's [kg/s].</summary>
    public double Out(double pressure) => opening.Area * Law.MassFlux_kg_per_m2s(OrificeKernel.Conditions(opening, chamber, pressure));

    /// <summary>Flow from the end into the chamber at a pressure there that is above the chamber's; only R T and gamma of the gas there enter it [kg/s].</summary>
    public double In(double pressure, double RT, double gamma) =>
        opening.Area * Law.MassFlux_kg_per_m2s(new OrificeConditions(pressure, RT, chamber.P, 1, gamma, opening.Diameter, opening.Thickness));

    /// <summary>Mass flow out of the chamber in the last step, a unit of bore [kg/(m2 s)]; negative into it.</summary>
    public double Mass { get; set; }

    /// <summary>Products and energy that went with it.</summary>
    public double Products { get; set; }

    public double Energy { get; set; }

    /// <summary>Enters a flow of gas with a fraction of products and an enthalpy.</summary>
    public void Pass(double mass, double fraction, double enthalpy)
    {
        Mass = mass;
        Products = mass * fraction;
        Energy = mass * enthalpy;
    }
}
