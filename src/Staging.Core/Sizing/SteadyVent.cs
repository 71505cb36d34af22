using Staging.Core.Discharge;

namespace Staging.Core.Sizing;

/// <summary>
/// The vent area at which a gap that is fed without end rests at a pressure that its joint just bears. No length occurs
/// in it: that is why one size of hole serves gaps of all ordinary lengths.
/// </summary>
/// <remarks>
/// In a steady state what burns leaves: rho A_lit r(p) = A_vent G(p, T, pa) + A_throat G_ideal + A_leak G, where G is
/// the mass flux of the discharge law, at p = pa + F/A_joint. Filling, cooling at the walls and the time that it takes
/// to get there are left out: walls cool the gas, which then needs less area.
/// </remarks>
internal static class SteadyVent
{
    /// <summary>Pressure that a joint just bears [Pa].</summary>
    /// <param name="outside">Pressure outside [Pa].</param>
    /// <param name="force">Force that starts the joint sliding [N].</param>
    /// <param name="jointArea">Area that the gap pressure pushes on [m2].</param>
    public static double PressureBorne(double outside, double force, double jointArea) => outside + force / jointArea;

    /// <summary>
    /// Vent area that is needed [m2]; zero where throat and leak pass all by themselves, infinite where the gap is to
    /// be at the pressure outside.
    /// </summary>
    /// <param name="law">How much the vents and the leak pass.</param>
    /// <param name="gap">The gas of the gap, the pressure outside, diameter and depth of a vent.</param>
    /// <param name="made">Mass that is made per second [kg/s].</param>
    /// <param name="throat">Throats of the nozzles below, ideal ones [m2].</param>
    /// <param name="leak">What leaks past the joint, of no depth [m2].</param>
    public static double Area(IDischargeLaw law, in OrificeConditions gap, double made, double throat, double leak)
    {
        double rear = ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(gap);
        double past = law.MassFlux_kg_per_m2s(gap with { WallThickness_m = 0 });
        double rest = made - throat * rear - leak * past;
        return rest > 0 ? rest / law.MassFlux_kg_per_m2s(gap) : 0;
    }
}
