using System.Runtime.InteropServices;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Right-hand side and events of the lumped models during one phase.</summary>
internal struct GapSystem(GapParameters parameters, GapPhase phase) : IOdeSystem
{
    /// <summary>
    /// Events, by index; shares that burn down by the pressure, and ways of pieces, come after these, one event each.
    /// </summary>
    public const int JointMoves = 0;
    public const int Spent = 1;
    public const int FrontAtLastVent = 2;
    public const int ProductsAtNozzle = 3;
    public const int JointRests = 4;
    public const int AheadSpent = 5;
    public const int FirstShare = 6;

    /// <summary>Share of products at which a place counts as reached [-]; half-way by definition of a front.</summary>
    public const double Reached = 0.5;

    /// <summary>
    /// Gauge pressure, as a share of the outside pressure, below which a gap is spent [-]; a judgement, it only ends
    /// the run.
    /// </summary>
    public const double SpentShare = 0.01;

    private readonly GapParameters p = parameters;
    private readonly GapPhase phase = phase;
    private readonly JointMechanics joint = new(parameters, phase.Joint);

    public static bool HasJacobian => true;

    public static bool HasDomain => true;

    public readonly int Dimension => p.StateCount;

    public readonly int Integrals => GapJacobian.FirstVariable(phase);

    public readonly int EventCount => FirstShare + p.FirstLayer - p.FirstShare;

    public readonly EventRule Rule(int index) => index switch
    {
        JointMoves => new EventRule(Crossing.Rising, true),
        Spent => new EventRule(Crossing.Rising, true),
        FrontAtLastVent or ProductsAtNozzle => new EventRule(Crossing.Rising, false),
        _ => new EventRule(Crossing.Falling, true),
    };

    /// <summary>Passes through the right-hand side that one Jacobian takes.</summary>
    public readonly int PassesPerJacobian => GapJacobian.Passes(p, phase);

    public readonly void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) =>
        Slopes(t, new StateVector<Real>(y), MemoryMarshal.Cast<double, Real>(dydt));

    /// <summary>Writes the slopes of a state at a time, and with them the derivatives that its numbers carry.</summary>
    public readonly void Slopes<T>(T t, StateVector<T> y, Span<T> dydt)
        where T : struct, IReal<T>
    {
        T pressure = GapBalance.Write(p, phase, t, y, joint.VolumeRate(y), dydt);
        joint.Slopes(pressure, y, dydt);
    }

    public readonly void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
        var now = new LumpedView(p, y);
        values[JointMoves] = joint.Moving(now.Pressure, y);
        // Bodies that move go on by themselves: whether they part is not known before they do, or rest.
        values[Spent] = phase.Joint != JointPhase.Slides && phase.Start >= p.KnownSourceEnd && now.IsBurnt
            ? (1 + SpentShare) * p.OutsidePressure - now.MaxPressure
            : -p.OutsidePressure;
        values[FrontAtLastVent] = now.ProductsAtLastVent - Reached;
        values[ProductsAtNozzle] = now.Nozzle.ProductFraction - Reached;
        values[JointRests] = joint.Resting(y);
        values[AheadSpent] = y[StateLayout.Cold + 2] - phase.LeastAhead;
        y[p.FirstShare..p.FirstLayer].CopyTo(values[FirstShare..]);
    }

    /// <summary>Every parcel that is there holds gas: mass, constants and temperature are above zero.</summary>
    public readonly bool Holds(ReadOnlySpan<double> y)
    {
        for (int at = StateLayout.FirstParcel; at < p.FirstShare; at += StateLayout.Parcel)
        {
            var zone = new Zone<Real>(y[at], y[at + 1], y[at + 2], p.Products, p.Air);
            if (!(zone.Mass > 0 && zone.IsGas) && !(zone.Mass == 0 && y[at + 2] == 0))
                return false;
        }

        return true;
    }

    public readonly void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian,
        Span<double> timeSlope) => GapJacobian.Write(this, p, phase, t, y, jacobian, timeSlope);
}
