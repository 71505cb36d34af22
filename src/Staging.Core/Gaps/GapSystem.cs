using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Right-hand side of the displacement model while the joint is stuck or slides.</summary>
internal struct GapSystem(GapParameters parameters, bool sliding) : IOdeSystem
{
    /// <summary>Events, by index.</summary>
    public const int JointMoves = 0;
    public const int Spent = 1;
    public const int FrontAtLastVent = 2;
    public const int ProductsAtNozzle = 3;

    /// <summary>Share of products at which a place counts as reached [-]; half-way by definition of a front.</summary>
    public const double Reached = 0.5;

    /// <summary>Gauge pressure, as a share of the outside pressure, below which a gap is spent [-]; a judgement, it only ends the run.</summary>
    public const double SpentShare = 0.01;

    private readonly GapParameters p = parameters;

    public readonly int Dimension => GapState.Count;

    /// <summary>Sliding adds two ways to end: the joint opens, or comes to rest.</summary>
    public readonly int EventCount => sliding ? 5 : 4;

    public const int JointRests = 4;

    public readonly EventRule Rule(int index) => index switch
    {
        JointMoves => new EventRule(Crossing.Rising, true),
        Spent => new EventRule(Crossing.Rising, true),
        JointRests => new EventRule(Crossing.Falling, true),
        _ => new EventRule(Crossing.Rising, false),
    };

    public readonly void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        GapRates rates = default;
        var flows = new GapFlows(p, t, y, ref rates);
        double speed = sliding ? y[GapState.SlideSpeed] : 0;
        double volumeRate = p.JointArea * speed;
        double dpdt = flows.Equalise(volumeRate, ref rates);
        double work = flows.Pressure * volumeRate;

        Write(dydt, GapState.Chamber, rates.Chamber, 0);
        double hotWork = ParcelWork(flows.Hot, flows.Pressure, dpdt, rates.Hot.Swelling(flows.Hot, p));
        Write(dydt, GapState.Hot, rates.Hot, hotWork);
        Write(dydt, GapState.Cold, rates.Cold, work - hotWork);
        Write(dydt, GapState.DeadEnd, rates.DeadEnd, 0);
        dydt[GapState.Slide] = speed;
        dydt[GapState.SlideSpeed] = sliding ? JointAcceleration(flows.Pressure, SlidingFriction(y[GapState.Slide])) : 0;
        dydt[GapState.Burnt] = flows.BurningRate;
        dydt[GapState.MassOut] = rates.MassOut;
        dydt[GapState.EnergyOut] = rates.EnergyOut + work;
    }

    public readonly void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
        GapRates rates = default;
        var flows = new GapFlows(p, t, y, ref rates);
        values[JointMoves] = sliding ? y[GapState.Slide] - p.Engagement : JointAcceleration(flows.Pressure, p.Breakaway);
        values[Spent] = t >= p.FragmentBurnTime
            ? (1 + SpentShare) * p.OutsidePressure - Math.Max(flows.Pressure, flows.ChamberPressure)
            : -p.OutsidePressure;
        values[FrontAtLastVent] = flows.ProductsAtLastVent - Reached;
        values[ProductsAtNozzle] = flows.DeadEnd.ProductFraction - Reached;
        if (sliding)
            values[JointRests] = y[GapState.SlideSpeed];
    }

    /// <summary>Relative acceleration of the two bodies under gap pressure, friction and what presses them together [m/s2].</summary>
    public readonly double JointAcceleration(double pressure, double friction) =>
        ((pressure - p.OutsidePressure) * p.JointArea - friction) / p.ReducedMass - p.ClosingAcceleration;

    /// <summary>Friction falls with the length still engaged [N].</summary>
    public readonly double SlidingFriction(double slide) => p.Sliding * Math.Clamp(1 - slide / p.Engagement, 0, 1);

    /// <summary>Work of a parcel on its neighbours, p dV/dt = (S - V dp/dt)/gamma [W].</summary>
    private static double ParcelWork(in Zone zone, double pressure, double dpdt, double swelling) =>
        (swelling - zone.PressureVolume / pressure * dpdt) / zone.Gamma;

    private static void Write(Span<double> dydt, int at, in Account account, double work)
    {
        dydt[at] = account.Products;
        dydt[at + 1] = account.Air;
        dydt[at + 2] = account.Energy - work;
    }
}
