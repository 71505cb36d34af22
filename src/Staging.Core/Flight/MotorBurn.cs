namespace Staging.Core.Flight;

/// <summary>All motors of one stage together, lowered to SI numbers: thrust, running impulse and what they say about mass.</summary>
internal sealed class MotorBurn
{
    private readonly double[] time;
    private readonly double[] thrust;
    private readonly double[] impulse;

    public MotorBurn(ReadOnlySpan<double> time, ReadOnlySpan<double> thrust, ReadOnlySpan<double> impulse, double propellant, int count)
    {
        this.time = time.ToArray();
        this.thrust = thrust.ToArray();
        this.impulse = impulse.ToArray();
        for (int i = 0; i < this.thrust.Length; i++)
        {
            this.thrust[i] *= count;
            this.impulse[i] *= count;
        }

        Propellant = propellant * count;
        MassPerImpulse = Propellant / this.impulse[^1];
    }

    /// <summary>Propellant of all motors [kg].</summary>
    public double Propellant { get; }

    /// <summary>Propellant burnt per impulse, 1/c [kg/(N s)].</summary>
    public double MassPerImpulse { get; }

    /// <summary>End of the thrust curve from ignition [s].</summary>
    public double End => time[^1];

    /// <summary>Number of straight pieces; piece -1 is the wait before the first point, the piece of this number the time after the last.</summary>
    public int Pieces => time.Length - 1;

    /// <summary>Start of a piece from ignition [s]; the wait starts at 0.</summary>
    public double StartOf(int piece) => piece < 0 ? 0 : time[piece];

    /// <summary>End of a piece from ignition [s]; infinite after the last point.</summary>
    public double EndOf(int piece) => piece >= Pieces ? double.PositiveInfinity : time[piece + 1];

    /// <summary>Thrust at the start of a piece [N] and its slope [N/s].</summary>
    public (double F0, double Slope) Line(int piece) => piece < 0 || piece >= Pieces
        ? (0, 0)
        : (thrust[piece], (thrust[piece + 1] - thrust[piece]) / (time[piece + 1] - time[piece]));

    /// <summary>Propellant left at the start of a piece [kg]; exactly zero after the last point.</summary>
    public double LeftAt(int piece) => piece < 0 ? Propellant : piece >= Pieces ? 0 : Propellant - MassPerImpulse * impulse[piece];
}
