using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

public class DischargeProperties
{
    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 500)]
    public bool Flow_is_odd_under_exchange_of_sides(DischargeCase c) =>
        OrificeKernel.SignedMassFlow(c.Law, c.Size, c.One, c.Two) == -OrificeKernel.SignedMassFlow(c.Law, c.Size, c.Two, c.One);

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 1000)]
    public bool Flow_rises_with_the_pressure_of_side_one_and_falls_with_that_of_side_two(DischargeCase c)
    {
        foreach (double step in (double[])[1e-8, 1e-5, 1e-3, 0.03, 0.5])
        {
            double q = c.Flow(c.P1, c.P2);
            double slack = 1e-13 * Math.Abs(q);
            if (c.Flow(c.P1 * (1 + step), c.P2) < q - slack || c.Flow(c.P1, c.P2 * (1 + step)) > q + slack)
                return false;
        }
        return true;
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 500)]
    public bool Flow_runs_downhill_and_is_finite(DischargeCase c)
    {
        double q = c.Flow(c.P1, c.P2);
        return double.IsFinite(q) && Math.Sign(q) == Math.Sign(c.P1 - c.P2);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 500)]
    public bool Flow_scales_with_pressure_with_the_number_of_holes_and_with_the_square_of_their_size(DischargeCase c)
    {
        double q = c.Flow(c.P1, c.P2);
        double doubled = c.Flow(2 * c.P1, 2 * c.P2);
        DischargeCase more = c with { Holes = c.Holes with { Count = 3 * c.Holes.Count } };
        // Halved in every direction, the wall as well: its thickness in diameters, all that a law knows of size, stays.
        double half = OrificeKernel.SignedMassFlow(
            c.Law, new OrificeSize(c.Size.Area / 4, c.Size.Diameter / 2, c.Size.Thickness / 2), c.Side(c.P1, c.T1), c.Side(c.P2, c.T1));
        return Close(doubled, 2 * q, 1e-12) && Close(more.Flow(c.P1, c.P2), 3 * q, 1e-12) && Close(half, q / 4, 1e-12);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool A_hole_comes_back_from_its_flow_with_every_law(DischargeCase c)
    {
        if (c.P1 == c.P2)
            return true;
        VentHoles hole = c.Holes with { Count = 1 };
        GasState one = State(c, c.P1, c.T1), two = State(c, c.P2, c.T2);
        VentHoles found = VentHoles.ForFlow(Orifice.Flow(one, two, hole, c.Law).MassFlow, one, two, c.Law, hole.WallThickness);
        return Close(found.Diameter.Meters, hole.Diameter.Meters, 1e-9) && found.Count == 1;
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 500)]
    public bool No_law_passes_more_than_the_ideal_nozzle(DischargeCase c) =>
        c.Law is SonicConductanceLaw || Math.Abs(c.Flow(c.P1, c.P2)) <= Math.Abs((c with { Law = ConstantCoefficientLaw.Ideal }).Flow(c.P1, c.P2)) * (1 + 1e-12);

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Flow_and_slope_are_continuous_through_equal_pressures(DischargeCase c)
    {
        double p = c.P1;
        OrificeDerivatives middle = Slopes(c, p, p);
        OrificeDerivatives above = Slopes(c, p, p * (1 - 1e-9));
        OrificeDerivatives below = Slopes(c, p, p * (1 + 1e-9));
        return middle.MassFlow_kg_per_s == 0 && middle.ByPressureOne_kg_per_sPa > 0
            && Close(above.ByPressureOne_kg_per_sPa, middle.ByPressureOne_kg_per_sPa, 1e-5)
            && Close(below.ByPressureOne_kg_per_sPa, middle.ByPressureOne_kg_per_sPa, 1e-5)
            && Close(above.ByPressureTwo_kg_per_sPa, middle.ByPressureTwo_kg_per_sPa, 1e-5)
            && Close(below.ByPressureTwo_kg_per_sPa, middle.ByPressureTwo_kg_per_sPa, 1e-5)
            && Close(above.MassFlow_kg_per_s, middle.ByPressureTwo_kg_per_sPa * -1e-9 * p, 1e-5);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Flow_and_slope_are_continuous_through_the_choked_limit(DischargeCase c) => ContinuousAt(c, c.Law.CriticalPressureRatio(c.Gas.HeatCapacityRatio));

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Flow_and_slope_are_continuous_at_the_edge_of_the_blend(DischargeCase c) => ContinuousAt(c, 1 - Orifice.BlendWidth);

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 1000)]
    public bool Slopes_match_finite_differences(DischargeCase c)
    {
        OrificeDerivatives s = Slopes(c, c.P1, c.P2);
        double h = 1e-6 * Math.Max(Math.Abs(c.P1 - c.P2), 1e-5 * c.P1);
        double byOne = (c.Flow(c.P1 + h, c.P2) - c.Flow(c.P1 - h, c.P2)) / (2 * h);
        double byTwo = (c.Flow(c.P1, c.P2 + h) - c.Flow(c.P1, c.P2 - h)) / (2 * h);
        // Round-off of a difference over 2h, plus the change of slope over h where the blend and the choked limit bend the curve.
        double slack = 1e-5 * (Math.Abs(s.ByPressureOne_kg_per_sPa) + Math.Abs(s.ByPressureTwo_kg_per_sPa)) + 4e-15 * Math.Abs(s.MassFlow_kg_per_s) / h;
        return Math.Abs(byOne - s.ByPressureOne_kg_per_sPa) <= slack && Math.Abs(byTwo - s.ByPressureTwo_kg_per_sPa) <= slack
            && Close(s.MassFlow_kg_per_s, c.Flow(c.P1, c.P2), 1e-12);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Series_never_flows_more_than_its_smallest_member(SeriesCase c)
    {
        (GasState one, GasState two) = States(c);
        OpeningsFlow all = Orifice.InSeries(one, two, c.Openings);
        double min = c.Openings.Min(o => Math.Abs(Orifice.Flow(one, two, o.Holes, o.Law).MassFlow.KilogramsPerSecond));
        double q = all.MassFlow.KilogramsPerSecond;
        return Math.Abs(q) <= min * (1 + 1e-12) && Math.Sign(q) == Math.Sign(c.P1 - c.P2);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Every_member_of_a_series_passes_the_same_flow_at_falling_pressures(SeriesCase c)
    {
        (GasState one, GasState two) = States(c);
        OpeningsFlow all = Orifice.InSeries(one, two, c.Openings);
        double q = all.MassFlow.KilogramsPerSecond;
        double[] p = [c.P1, .. all.Between.Select(b => b.Pascals), c.P2];
        // A pressure between two holes is a double, off by a unit in the last place; the law forms r^(1/g) - r, which near r = 1 is as much off as
        // g/(g-1) units of pressure would make it. Marched upstream at one flow, the holes behind add up before the first, for a hole passes on at
        // most the error it is given. Each of the two holes that are compared answers with its slope.
        double[] slopes = [.. Enumerable.Range(0, all.Members.Length).Select(i =>
        {
            Opening o = c.Openings[i];
            (_, double byOne, double byTwo) = Orifice.Slopes(State(c, p[i]), State(c, p[i + 1]), o.Holes, o.Law);
            return byOne - byTwo;
        }).OrderDescending()];
        double gamma = c.Gas.HeatCapacityRatio, lastPlace = Math.BitIncrement(Math.Max(c.P1, c.P2)) - Math.Max(c.P1, c.P2);
        double slack = 1e-12 * Math.Abs(q) + all.Members.Length * (1 + gamma / (gamma - 1)) * lastPlace * slopes.Take(2).Sum();
        return all.Members.All(m => Math.Abs(m.MassFlow.KilogramsPerSecond - q) <= slack)
            && Enumerable.Range(0, p.Length - 1).All(i => (p[i] - p[i + 1]) * Math.Sign(q) >= 0);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 200)]
    public bool Series_is_odd_when_turned_round(SeriesCase c)
    {
        (GasState one, GasState two) = States(c);
        return Orifice.InSeries(one, two, c.Openings).MassFlow.KilogramsPerSecond == -Orifice.InSeries(two, one, [.. c.Openings.Reverse()]).MassFlow.KilogramsPerSecond;
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 200)]
    public bool Parallel_flow_is_the_sum_and_its_equivalent_hole_passes_it(SeriesCase c)
    {
        (GasState one, GasState two) = States(c);
        Opening[] pair = [.. c.Openings.Take(2)];
        MassFlow q = Orifice.InParallel(one, two, [.. pair]).MassFlow;
        double sum = pair.Sum(o => Orifice.Flow(one, two, o.Holes, o.Law).MassFlow.KilogramsPerSecond);
        // Two pinholes may pass less than the smallest hole that an answer may have.
        double min = Math.Abs(Orifice.Flow(one, two, Pinhole, ConstantCoefficientLaw.Ideal).MassFlow.KilogramsPerSecond);
        if (Math.Abs(sum) < min)
            return Close(q.KilogramsPerSecond, sum, 1e-12) && Refused(q, one, two);
        VentHoles hole = VentHoles.ForFlow(q, one, two, ConstantCoefficientLaw.Ideal, Length.FromMillimeters(0.5));
        return Close(q.KilogramsPerSecond, sum, 1e-12) && Close(Orifice.Flow(one, two, hole, ConstantCoefficientLaw.Ideal).MassFlow.KilogramsPerSecond, sum, 1e-10);
    }

    [Property(Arbitrary = [typeof(DischargeCases)], MaxTest = 300)]
    public bool Area_to_holes_and_back_is_a_round_trip_and_drills_bracket_it(AreaCase c)
    {
        HolePattern pattern = HolePattern.ForArea(Area.FromSquareMeters(c.Area_m2), c.Count, Length.FromMeters(c.Wall_m), c.Drills);
        bool below = pattern.Below is not { } b
            || (b.AreaError <= 1e-5 && Close(b.Holes.TotalArea.SquareMeters, c.Area_m2 * (1 + b.AreaError), 1e-10));
        bool above = pattern.Above is not { } a
            || (a.AreaError >= -1e-5 && Close(a.Holes.TotalArea.SquareMeters, c.Area_m2 * (1 + a.AreaError), 1e-10));
        return Close(pattern.Exact.TotalArea.SquareMeters, c.Area_m2, 1e-12) && pattern.Exact.Count == c.Count && below && above
            && (pattern.Below is not null || pattern.Above is not null);
    }

    private static VentHoles Pinhole { get; } = new() { Diameter = Length.FromMillimeters(0.1), WallThickness = Length.FromMillimeters(0.5), Count = 1 };

    private static bool Refused(MassFlow q, GasState one, GasState two)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => VentHoles.ForFlow(q, one, two, ConstantCoefficientLaw.Ideal, Length.FromMillimeters(0.5)));
        return true;
    }

    private static bool ContinuousAt(DischargeCase c, double ratio)
    {
        if (ratio <= 0)
            return true;
        double p = Math.Max(c.P1, c.P2);
        OrificeDerivatives above = Slopes(c, p, p * (ratio + 1e-10));
        OrificeDerivatives below = Slopes(c, p, p * (ratio - 1e-10));
        double scale = above.MassFlow_kg_per_s / p;
        return Close(above.MassFlow_kg_per_s, below.MassFlow_kg_per_s, 1e-6)
            && Math.Abs(above.ByPressureOne_kg_per_sPa - below.ByPressureOne_kg_per_sPa) <= 1e-5 * (scale + above.ByPressureOne_kg_per_sPa)
            && Math.Abs(above.ByPressureTwo_kg_per_sPa - below.ByPressureTwo_kg_per_sPa) <= 1e-5 * (scale - above.ByPressureTwo_kg_per_sPa);
    }

    private static OrificeDerivatives Slopes(DischargeCase c, double p1, double p2) =>
        OrificeKernel.SignedSlopes(c.Law, c.Size, c.Side(p1, c.T1), c.Side(p2, c.T1));

    private static GasState State(DischargeCase c, double p, double T) => new()
    {
        Gas = c.Gas,
        Pressure = Pressure.FromPascals(p),
        Temperature = Temperature.FromKelvins(T),
    };

    private static (GasState One, GasState Two) States(SeriesCase c) => (State(c, c.P1), State(c, c.P2));

    private static GasState State(SeriesCase c, double p) => new()
    {
        Gas = c.Gas,
        Pressure = Pressure.FromPascals(p),
        Temperature = Temperature.FromKelvins(c.T),
    };

    private static bool Close(double a, double b, double relative) => Math.Abs(a - b) <= relative * Math.Max(Math.Abs(a), Math.Abs(b));
}
