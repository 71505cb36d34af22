using System.Runtime.CompilerServices;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// Motion along a straight line: dh/dt = v sin(theta), m dv/dt = F - D - m g sin(theta) - friction, D = rho/2 v|v|
/// Cd(M) A. State 0 is the height above the site [m], state 1 the velocity [m/s].
/// </summary>
/// <remarks>
/// Events 0 and 1 are those of the phase; 2 and 3 are the upper and the lower end of the line of the drag table in use.
/// A segment is flown in one direction, up or down, and drag opposes it. Where a step reaches past the turning point
/// before the event cuts it off, drag continues smoothly as v^2: with v |v| its curvature would jump there, and the
/// error estimate of that step would be meaningless.
/// </remarks>
internal struct TrajectorySystem(SiteColumn site, in FlightSegment segment, PhaseEvents events) : IOdeSystem
{
    /// <summary>Event of a Mach number that rises above the line of the drag table in use.</summary>
    public const int MachAbove = 2;

    /// <summary>Event of a Mach number that falls below it.</summary>
    public const int MachBelow = 3;

    private readonly FlightSegment segment = segment;
    private readonly double direction = events == PhaseEvents.Falling ? -1 : 1;
    private double[] cell = [];
    private int cellIndex = int.MinValue;
    private double cellMiddle = double.NaN;

    /// <summary>Height of the guide's end [m]; for <see cref="PhaseEvents.Guide"/>.</summary>
    public double GuideHeight { get; init; }

    public readonly int Dimension => 2;

    public readonly int EventCount => 4;

    /// <summary>dh/dt over velocity [-].</summary>
    public readonly double Rise => segment.Rise;

    /// <summary>The line of the drag table in use.</summary>
    public readonly DragSegment Line => segment.Line;

    /// <summary>Reciprocal speed of sound at the last acceleration computed [s/m].</summary>
    public double LastReciprocalSound { get; private set; }

    public readonly EventRule Rule(int index) => index switch
    {
        MachAbove => new EventRule(Crossing.Rising, true),
        MachBelow => new EventRule(Crossing.Falling, true),
        0 => new EventRule(events == PhaseEvents.Guide ? Crossing.Rising : Crossing.Falling, true),
        _ => new EventRule(events == PhaseEvents.Rising ? Crossing.Rising : Crossing.Falling, true),
    };

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1] * segment.Rise;
        dydt[1] = Acceleration(t, y[0], y[1]);
    }

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
        (values[0], values[1]) = PhaseValues(y[0], y[1]);
        double M = Math.Abs(y[1]) * Around(y[0]).ReciprocalSound;
        (values[MachAbove], values[MachBelow]) = (M - segment.Line.High, M - segment.Line.Low);
    }

    /// <summary>
    /// Whether an event can happen while height, velocity and Mach number stay within bounds on one side of which they
    /// start.
    /// </summary>
    public readonly bool MayFire(double lowest, double highest, double slowest, double fastest, double minMach, double maxMach) =>
        events switch
        {
            PhaseEvents.Guide => highest >= GuideHeight || slowest <= 0,
            PhaseEvents.Rising => slowest <= 0 || highest >= site.Ceiling,
            _ => lowest <= 0,
        } || maxMach >= segment.Line.High || minMach <= segment.Line.Low;

    private readonly (double First, double Second) PhaseValues(double h, double v) => events switch
    {
        PhaseEvents.Guide => (h - GuideHeight, v),
        PhaseEvents.Rising => (v, h - site.Ceiling),
        _ => (h, 1),
    };

    /// <summary>dv/dt [m/s2].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Acceleration(double t, double h, double v)
    {
        // Thrust and mass depend on time alone: the processor computes them in parallel with the air.
        double tau = t - segment.Push.Start;
        double perMass = 1 / (segment.Push.Mass0 - tau * (segment.Push.MassFlow + segment.Push.HalfMassFlowSlope * tau));
        double F = segment.ThrustSign * (segment.Push.Thrust0 + segment.Push.ThrustSlope * tau) - segment.Friction;
        (double rho, double reciprocalSound, double g) = Around(h);
        double speed = direction * v, M = speed * reciprocalSound;
        LastReciprocalSound = reciprocalSound;
        double dragPerArea = rho * (v * speed * perMass);
        return Math.FusedMultiplyAdd(-dragPerArea, segment.Line.HalfArea(M), Math.FusedMultiplyAdd(F, perMass, -g * segment.GravityShare));
    }

    public static bool HasJacobian => true;

    /// <inheritdoc/>
    /// <remarks>By height a difference: the air changes by a millionth over the step.</remarks>
    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        const double step = 0.01;
        double h = y[0], v = y[1], tau = t - segment.Push.Start, a = slope[1];
        double perMass = 1 / segment.Push.Mass(t);
        (double rho, double reciprocalSound, double g) = Around(h);
        double massSlope = -segment.Push.MassFlow - 2 * segment.Push.HalfMassFlowSlope * tau;
        DragSegment line = segment.Line;
        double speed = direction * v;
        jacobian[0] = 0;
        jacobian[1] = segment.Rise;
        jacobian[2] = (Acceleration(t, h + step, v) - a) / step;
        jacobian[3] = -rho * perMass * speed * (2 * line.Intercept + 3 * line.Slope * speed * reciprocalSound);
        timeSlope[0] = 0;
        timeSlope[1] = perMass * (segment.ThrustSign * segment.Push.ThrustSlope - (a + g * segment.GravityShare) * massSlope);
    }

    /// <summary>Drag over the square of the speed [kg/m] at a height [m] and a speed [m/s].</summary>
    public double DragPerSpeedSquared(double h, double speed)
    {
        (double rho, double reciprocalSound, _) = Around(h);
        return rho * segment.Line.HalfArea(speed * reciprocalSound);
    }

    /// <summary>Gravity at a height [m/s2].</summary>
    public readonly double Gravity(double h) => site.Gravity(h);

    /// <summary>Density [kg/m3], reciprocal speed of sound [s/m] and gravity [m/s2] at a height.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (double Density, double ReciprocalSound, double Gravity) Around(double h)
    {
        double u = (h - cellMiddle) * (2 / SiteColumn.CellHeight);
        if (!(Math.Abs(u) <= 1))
        {
            Enter(h);
            u = (h - cellMiddle) * (2 / SiteColumn.CellHeight);
        }

        double[] c = cell;
        if (c.Length != SiteColumn.CellLength)
            return Direct(h);
        // Estrin's scheme: short chains for the processor.
        double u2 = u * u, u4 = u2 * u2;
        return (Math.FusedMultiplyAdd(Cubic(c, 4, u, u2), u4, Cubic(c, 0, u, u2)),
            Math.FusedMultiplyAdd(Cubic(c, SiteColumn.Terms + 4, u, u2), u4, Cubic(c, SiteColumn.Terms, u, u2)),
            Cubic(c, SiteColumn.GravityAt, u, u2));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Cubic(double[] c, int at, double u, double u2) =>
        Math.FusedMultiplyAdd(Math.FusedMultiplyAdd(c[at + 3], u, c[at + 2]), u2, Math.FusedMultiplyAdd(c[at + 1], u, c[at]));

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Enter(double h)
    {
        int index = SiteColumn.CellOf(h);
        if (index == cellIndex)
            return;
        cellIndex = index;
        cell = site.Cell(index);
        cellMiddle = SiteColumn.MiddleOf(index);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private readonly (double Density, double ReciprocalSound, double Gravity) Direct(double h)
    {
        AirSample sample = site.At(h);
        return (sample.Density_kg_per_m3, 1 / sample.SoundSpeed_m_per_s, site.Gravity(h));
    }
}
