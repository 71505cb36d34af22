namespace Staging.Core.Flight;

/// <summary>Drag coefficient of an airframe by parts, on its largest cross-section.</summary>
public sealed class DragEstimate
{
    internal DragEstimate(
        double machNumber, double bodyFriction, double finFriction, double forebody, double finPressure, double suction) =>
        (MachNumber, BodyFriction, FinFriction, Forebody, FinPressure, Base) =
            (machNumber, bodyFriction, finFriction, forebody, finPressure, suction);

    /// <summary>Mach number [-].</summary>
    public double MachNumber { get; }

    /// <summary>Skin friction of nose, tubes and transitions, with their form factor [-].</summary>
    public double BodyFriction { get; }

    /// <summary>Skin friction of the fins, with their form factor [-].</summary>
    public double FinFriction { get; }

    /// <summary>Pressure on the nose and on widening transitions [-].</summary>
    public double Forebody { get; }

    /// <summary>Pressure on the edges of the fins, and their wave drag above the speed of sound [-].</summary>
    public double FinPressure { get; }

    /// <summary>Suction on the base [-].</summary>
    public double Base { get; }

    /// <summary>The sum [-].</summary>
    public double Total => BodyFriction + FinFriction + Forebody + FinPressure + Base;

    /// <summary>The sum and its parts on one line.</summary>
    /// <returns>Drag coefficients.</returns>
    public override string ToString() => Invariant.Text(
        $"Cd {Total:F3} at Mach {MachNumber:G3}: body friction {BodyFriction:F3}, fin friction {FinFriction:F3}, ")
        + Invariant.Text($"forebody {Forebody:F3}, fin edges {FinPressure:F3}, base {Base:F3}");
}
