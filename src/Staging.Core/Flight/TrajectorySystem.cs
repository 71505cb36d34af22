using System.Runtime.CompilerServices;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Motion along a straight line: dh/dt = v sin(theta), m dv/dt = F - D - m g sin(theta) - friction, D = rho/2 v|v| Cd(M) A.
/// State 0 is the height above the site [m], state 1 the velocity [m/s].
/// </summary>
internal struct TrajectorySystem(AirColumn air, double seaLevelGravity, double earthRadius, in FlightPiece piece, FlightWatch watch) : IOdeSystem
{
    private readonly FlightPiece piece = piece;
    private double[] cell = [];
    private int cellIndex = int.MinValue;
    private double cellMiddle = double.NaN;
    private int machHint;

    /// <summary>Height of the guide's end [m]; for <see cref="FlightWatch.Guide"/>.</summary>
    public double GuideHeight { get; init; }

    public readonly int Dimension => 2;

    public readonly int EventCount => 2;

    public readonly EventRule Rule(int index) => watch switch
    {
        FlightWatch.Guide => index == 0 ? new EventRule(Crossing.Rising, true) : new EventRule(Crossing.Falling, true),
        FlightWatch.Rising => index == 0 ? new EventRule(Crossing.Falling, true) : new EventRule(Crossing.Rising, true),
        _ => new EventRule(Crossing.Falling, true),
    };

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1] * piece.Rise;
        dydt[1] = Acceleration(t, y[0], y[1]);
    }

    public readonly void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
        (values[0], values[1]) = Events(t, y[0], y[1]);
    }

    /// <summary>dh/dt over velocity [-].</summary>
    public readonly double Rise => piece.Rise;

    /// <summary>Both event functions.</summary>
    public readonly (double First, double Second) Events(double t, double h, double v) => watch switch
    {
        FlightWatch.Guide => (h - GuideHeight, v),
        FlightWatch.Rising => (v, h - air.Ceiling),
        FlightWatch.Falling => (h, 1),
        _ => (h, Unsettled(t, h, v)),
    };

    /// <summary>Whether a pair of values around a stretch of time means the event.</summary>
    public readonly bool Meets(int index, double before, double after) => Rule(index).Crossing == Crossing.Rising
        ? before < 0 && after >= 0
        : before > 0 && after <= 0;

    /// <summary>
    /// How far each event function can move within a step of <paramref name="dt"/> [s], from the greatest speed and acceleration of its stages;
    /// half as much again for what the stages do not see.
    /// </summary>
    public readonly (double First, double Second) Reach(double dt, double speed, double acceleration)
    {
        double h = 1.5 * dt * speed, v = 1.5 * dt * acceleration;
        return watch switch
        {
            FlightWatch.Guide => (h, v),
            FlightWatch.Rising => (v, h),
            FlightWatch.Falling => (h, 0),
            _ => (h, double.PositiveInfinity),
        };
    }

    /// <summary>dv/dt [m/s2].</summary>
    public double Acceleration(double t, double h, double v)
    {
        // Thrust and mass depend on time alone: the processor works them out beside the air.
        double tau = t - piece.Start;
        double perMass = 1 / (piece.Mass0 - tau * (piece.MassFlow + piece.HalfMassFlowSlope * tau));
        double F = piece.ThrustSign * (piece.Thrust0 + piece.ThrustSlope * tau) - piece.Friction;
        (double rho, double reciprocalSound) = Air(h);
        double halfArea = piece.Drag is { } curve ? curve.HalfArea(Math.Abs(v) * reciprocalSound, ref machHint) : piece.HalfDragArea;
        return F * perMass - Gravity(h) * piece.GravityShare - rho * (v * Math.Abs(v) * perMass) * halfArea;
    }

    /// <summary>g = g0 (R/(R + z))^2 [m/s2]; an infinite radius makes it uniform.</summary>
    public readonly double Gravity(double h)
    {
        double q = 1 / (1 + (h + air.SiteElevation) / earthRadius);
        return seaLevelGravity * q * q;
    }

    private readonly double Unsettled(double t, double h, double v)
    {
        SteadyDescent steady = SteadyDescent.At(new DescentLaw(air, seaLevelGravity, earthRadius, 2 * piece.HalfDragArea / piece.Mass(t)), h);
        return steady.Settles ? QuasiSteadyDescent.LeastShare * steady.SpeedSquared - v * v : 1;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (double Density, double ReciprocalSound) Air(double h)
    {
        double u = (h - cellMiddle) * (2 / AirColumn.CellHeight);
        if (!(Math.Abs(u) <= 1))
        {
            Enter(h);
            u = (h - cellMiddle) * (2 / AirColumn.CellHeight);
        }

        double[] c = cell;
        if (c.Length != 2 * AirColumn.Terms)
            return Direct(h);
        // Estrin's scheme: short chains for the processor.
        double u2 = u * u, u4 = u2 * u2;
        double rho = c[0] + c[1] * u + (c[2] + c[3] * u) * u2 + (c[4] + c[5] * u + (c[6] + c[7] * u) * u2) * u4;
        double s = c[8] + c[9] * u + (c[10] + c[11] * u) * u2 + (c[12] + c[13] * u + (c[14] + c[15] * u) * u2) * u4;
        return (rho, s);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Enter(double h)
    {
        int index = AirColumn.CellOf(h);
        if (index == cellIndex)
            return;
        cellIndex = index;
        cell = air.Cell(index);
        cellMiddle = AirColumn.MiddleOf(index);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private readonly (double Density, double ReciprocalSound) Direct(double h)
    {
        AirSample sample = air.At(h);
        return (sample.Density_kg_per_m3, 1 / sample.SoundSpeed_m_per_s);
    }
}
