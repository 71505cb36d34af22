using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Finds before a phase whether an explicit or an implicit method will take less work.</summary>
/// <remarks>
/// A volume V behind holes of area A follows the pressure beyond them at the rate gamma sqrt(R T) k A/V once both
/// pressures are nearly equal, where k is the slope of the blended root, 45 sqrt(2)/(32 sqrt(w)). An explicit step may
/// be no longer than some 3.5 of that time, however little happens; an implicit one is bound by its accuracy only, but
/// costs a Jacobian. Choosing wrongly costs time, and little of it: a phase goes on implicitly where its steps show it.
/// </remarks>
internal static class Stiffness
{
    /// <summary>Evaluations of a step of either method.</summary>
    private const int Evaluations = 6;

    /// <summary>Evaluations that a pass with derivatives costs, and that the linear systems of a step do.</summary>
    private const int PerPass = 5;
    private const int ForSystems = 5;

    /// <summary>
    /// Implicit steps of a phase at the tolerance <see cref="ReferenceTolerance"/>: 30 to 400 were counted here, from
    /// the late phases of a usual gap to one that is wide open or has a small jacket. Any number from 110 to 170 gives
    /// the least time within 3 % over gaps from closed to wide open behind an end burner.
    /// </summary>
    private const double ImplicitSteps = 170;

    /// <summary>Relative tolerance at which steps were counted [-].</summary>
    private const double ReferenceTolerance = 1e-6;

    private static readonly double RootSlope = 45 * Math.Sqrt(2) / (32 * Math.Sqrt(Orifice.BlendWidth));

    /// <summary>Whether the implicit method is the cheaper one over a phase from a time and of a length [s].</summary>
    public static bool PaysImplicit(GapParameters p, ReadOnlySpan<double> y, double time, double length, double tolerance)
    {
        double quiet = Math.Min(length, TimeToArrival(p, y, time));
        double explicitCalls = FastestRate(p, y) * quiet / Tsitouras54.EdgeOfStability * Evaluations;
        int passes = (p.FirstLayer - StateLayout.FirstParcel) / Dual.Places + 1;
        double implicitSteps = ImplicitSteps * Math.Pow(ReferenceTolerance / tolerance, 0.25);
        return explicitCalls > implicitSteps * (Evaluations + PerPass * passes + ForSystems);
    }

    /// <summary>
    /// Time until pieces that are on their way come to the nozzle, which ends the phase [s]; those of a chamber that is
    /// still closed are not.
    /// </summary>
    private static double TimeToArrival(GapParameters p, ReadOnlySpan<double> y, double time)
    {
        double first = double.PositiveInfinity;
        foreach (ChamberParameters c in p.Chambers)
        {
            if (c.Start <= time && c.Pieces is { Speed: > 0 } pieces && y[pieces.Way] > 0)
                first = Math.Min(first, y[pieces.Way] * p.TubeLength / pieces.Speed);
        }

        return first;
    }

    /// <summary>Fastest rate at which a pressure settles [1/s].</summary>
    private static double FastestRate(GapParameters p, ReadOnlySpan<double> y)
    {
        var now = new GapState<Real>(p, new StateVector<Real>(y));
        double vents = 0;
        foreach (VentParameters vent in p.Vents)
            vents += vent.Outlet.Size.Area;
        double most = RateOf(now.Hot, vents, p.TubeVolume + p.DeadEndVolume);
        foreach (ChamberParameters c in p.Chambers)
            most = Math.Max(most, RateOf(now.ZoneAt(c.At), c.Opening.Area + c.Nozzle.Area, c.Volume));
        for (int i = 0; i < p.Jackets.Length; i++)
        {
            double area = 0;
            foreach (VentParameters vent in p.Vents)
                area += vent.Outlet.Jacket == i ? vent.Outlet.Size.Area : 0;
            foreach (JacketParameters jacket in p.Jackets)
                foreach (OutletParameters opening in jacket.Openings)
                    area += opening.Jacket == i || jacket == p.Jackets[i] ? opening.Size.Area : 0;
            most = Math.Max(most, RateOf(now.ZoneAt(p.Jackets[i].At), area, p.Jackets[i].Volume));
        }

        return most;
    }

    private static double RateOf(in Zone<Real> zone, double area, double volume) =>
        zone.Gamma * Math.Sqrt(zone.R * zone.Temperature) * RootSlope * area / volume;
}
