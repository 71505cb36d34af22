namespace Staging.Core.Gases;

/// <summary>How the gas in a vessel keeps, or loses, its temperature.</summary>
public enum VesselHeat
{
    /// <summary>
    /// No heat from the walls: the gas left behind expands isentropically, entering gas brings its enthalpy.
    /// </summary>
    Adiabatic,

    /// <summary>The walls hold the gas at constant temperature.</summary>
    Isothermal,
}
