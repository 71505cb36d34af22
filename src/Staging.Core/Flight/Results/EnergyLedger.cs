using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Work and energy of one body on the way up, from lift-off (or the start of its record) to apogee: work of thrust =
/// gain of kinetic and potential energy + work of drag and friction + energy carried off by the mass that left (burnt
/// propellant, dropped stages), each by quadrature along the recorded course.
/// </summary>
/// <param name="Thrust">Work of the thrust, integral of F v dt [J].</param>
/// <param name="Drag">Work against drag [J].</param>
/// <param name="Friction">Work against the friction of the guide [J].</param>
/// <param name="Gravity">Work against gravity, integral of m g sin(theta) v dt [J].</param>
/// <param name="LeftWithMass">Kinetic energy of the mass that left, at the speed of the body [J].</param>
/// <param name="KineticGain">Kinetic energy at the end less that at the start [J].</param>
public sealed record EnergyLedger(Energy Thrust, Energy Drag, Energy Friction, Energy Gravity, Energy LeftWithMass, Energy KineticGain)
{
    /// <summary>
    /// What is not accounted for, over the work of the thrust or the gain of kinetic energy [-]: the error of the
    /// integration; zero where nothing moved.
    /// </summary>
    public double Residual
    {
        get
        {
            double whole = Math.Max(Math.Abs(Thrust.Joules), Math.Abs(KineticGain.Joules));
            double left = Thrust.Joules - Drag.Joules - Friction.Joules - Gravity.Joules - LeftWithMass.Joules - KineticGain.Joules;
            return whole == 0 ? 0 : left / whole;
        }
    }
}
