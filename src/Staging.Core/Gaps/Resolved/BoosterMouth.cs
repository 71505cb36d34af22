using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>The opening of one chamber in the booster's end of the tube, the gas behind it, and what came out in the last step.</summary>
internal sealed class BoosterMouth(IDischargeLaw law)
{
    public IDischargeLaw Law { get; } = law;

    /// <summary>The opening as far as it has grown.</summary>
    public OrificeSize Opening { get; set; }

    /// <summary>Gas in the chamber.</summary>
    public OrificeSide Chamber { get; set; }

    /// <summary>Mass fraction of products in the chamber [-].</summary>
    public double Fraction { get; set; }

    public bool IsOpen => Opening.Area > 0;

    /// <summary>Total enthalpy of the chamber's gas [J/kg].</summary>
    public double Enthalpy => Chamber.Gas.Cp * Chamber.T;

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
