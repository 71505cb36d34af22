namespace Staging.Core.Flight;

/// <summary>Drag coefficient of an airframe by parts, on its largest cross-section.</summary>
/// <param name="MachNumber">Mach number [-].</param>
/// <param name="BodyFriction">Skin friction of nose, tubes and transitions, with their form factor [-].</param>
/// <param name="FinFriction">Skin friction of the fins, with their form factor [-].</param>
/// <param name="Forebody">Pressure on the nose and on widening transitions [-].</param>
/// <param name="FinPressure">Pressure on the edges of the fins, and their wave drag above the speed of sound
/// [-].</param>
/// <param name="Base">Suction on the base [-].</param>
public sealed record DragEstimate(double MachNumber, double BodyFriction, double FinFriction, double Forebody, double FinPressure,
    double Base)
{
    /// <summary>The sum [-].</summary>
    public double Total => BodyFriction + FinFriction + Forebody + FinPressure + Base;
}
