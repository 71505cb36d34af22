using Staging.Core.Discharge;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// The opening of one chamber in the booster's end of the tube, the gas behind it, and what came out in the last step.
/// </summary>
internal sealed class ChamberOpening(IDischargeLaw law)
{
    private OrificeSize opening;
    private OrificeSide chamber;
    private double pressureAtStart;
    private double volumeRate = double.PositiveInfinity;

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

    /// <summary>
    /// Begins a step of a chamber of a volume [m3] and a pressure [Pa] at its start: through an opening however wide
    /// the step [s] brings the chamber to the pressure at the end, never past it. Without this two chambers with wide
    /// openings would change places every step.
    /// </summary>
    public void Begin(double pressure, double volume, double step) => (pressureAtStart, volumeRate) = (pressure, volume / step);

    /// <summary>Flow into the end at a pressure there that is not above the chamber's [kg/s].</summary>
    public double Out(double pressure) => Math.Min(
        opening.Area * Law.MassFlux_kg_per_m2s(OrificeKernel.Conditions(opening, chamber, pressure)),
        Most(pressureAtStart - pressure, Enthalpy));

    /// <summary>
    /// Flow from the end into the chamber at a pressure there that is above the chamber's; only R T and gamma of the
    /// gas there enter it [kg/s].
    /// </summary>
    public double In(double pressure, double RT, double gamma) => Math.Min(
        opening.Area
            * Law.MassFlux_kg_per_m2s(new OrificeConditions(pressure, RT, chamber.P, 1, gamma, opening.Diameter, opening.Thickness)),
        Most(pressure - pressureAtStart, RT * gamma / (gamma - 1)));

    /// <summary>
    /// Flow of gas of an enthalpy [J/kg] that takes the whole step to change the chamber's pressure by some amount
    /// [kg/s].
    /// </summary>
    private double Most(double change, double enthalpy) =>
        double.IsFinite(volumeRate) ? Math.Max(0, change) * volumeRate / ((chamber.Gas.Gamma - 1) * enthalpy) : double.PositiveInfinity;

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
