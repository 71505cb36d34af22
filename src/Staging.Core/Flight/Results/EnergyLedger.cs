using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Work and energy of one body on the way up, from lift-off (or the start of its record) to apogee: work of thrust =
/// gain of kinetic and potential energy + work of drag and friction + energy carried off by the mass that left (burnt
/// propellant, dropped stages), each by quadrature along the recorded trajectory.
/// </summary>
public sealed class EnergyLedger
{
    internal EnergyLedger(double thrust, double drag, double friction, double gravity, double left, double gain) =>
        (Thrust, Drag, Friction, Gravity, LeftWithMass, KineticGain) = (
            Energy.FromJoules(thrust), Energy.FromJoules(drag), Energy.FromJoules(friction), Energy.FromJoules(gravity),
            Energy.FromJoules(left), Energy.FromJoules(gain));

    /// <summary>Work of the thrust, integral of F v dt [J].</summary>
    public Energy Thrust { get; }

    /// <summary>Work against drag [J].</summary>
    public Energy Drag { get; }

    /// <summary>Work against the friction of the guide [J].</summary>
    public Energy Friction { get; }

    /// <summary>Work against gravity, integral of m g sin(theta) v dt [J].</summary>
    public Energy Gravity { get; }

    /// <summary>Kinetic energy of the mass that left, at the speed of the body [J].</summary>
    public Energy LeftWithMass { get; }

    /// <summary>Kinetic energy at the end less that at the start [J].</summary>
    public Energy KineticGain { get; }

    /// <summary>
    /// The residual of the balance, over the largest entry of the ledger [-]: the error of the integration; zero where
    /// nothing moved.
    /// </summary>
    public double Residual
    {
        get
        {
            double whole = 0;
            foreach (Energy entry in (ReadOnlySpan<Energy>)[Thrust, Drag, Friction, Gravity, LeftWithMass, KineticGain])
                whole = Math.Max(whole, Math.Abs(entry.Joules));
            double left = Thrust.Joules - Drag.Joules - Friction.Joules - Gravity.Joules - LeftWithMass.Joules - KineticGain.Joules;
            return whole == 0 ? 0 : left / whole;
        }
    }

    /// <summary>The ledger on one line.</summary>
    /// <returns>Every entry in joules, and the residual.</returns>
    public override string ToString() => Invariant.Text(
        $"thrust {Thrust.Joules:G5} J = drag {Drag.Joules:G5} J + friction {Friction.Joules:G5} J + gravity {Gravity.Joules:G5} J + ")
        + Invariant.Text($"left with mass {LeftWithMass.Joules:G5} J + kinetic gain {KineticGain.Joules:G5} J, residual {Residual:G2}");
}
