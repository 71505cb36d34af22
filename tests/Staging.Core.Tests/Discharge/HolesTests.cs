using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Discharge.DischargeTestGas;

namespace Staging.Core.Tests.Discharge;

public class HolesTests
{
    [Fact]
    public void Of_equal_holes_in_series_the_last_chokes_and_never_the_first()
    {
        OpeningsFlow flow = Orifice.InSeries(Air(5e5, 300), Air(1e4, 300), Hole(4), Hole(4), Hole(4));
        Assert.Equal([false, false, true], flow.Members.Select(m => m.IsChoked));
        Assert.Equal(2, flow.Between.Length);
    }

    [Fact]
    public void Holes_in_series_at_equal_pressures_do_not_flow()
    {
        OpeningsFlow flow = Orifice.InSeries(Air(1e5, 300), Air(1e5, 800), Hole(4), Hole(2));
        Assert.Equal(0, flow.MassFlow.KilogramsPerSecond);
        Assert.Equal(1e5, flow.Between[0].Pascals, 1e-6);
    }

    [Fact]
    public void Many_holes_agree_with_two_when_the_others_are_wide()
    {
        GasState one = Air(2e5, 300);
        GasState two = Air(1e5, 300);
        double pair = Orifice.InSeries(one, two, Hole(3), Hole(2)).MassFlow.KilogramsPerSecond;
        double more = Orifice.InSeries(one, two, Hole(3), Hole(100), Hole(2), Hole(100)).MassFlow.KilogramsPerSecond;
        // The wide holes pass a flow far inside the blend near equal pressures, which costs each some 1e-6 of the pressure.
        Assert.Equal(pair, more, 1e-5 * pair);
        Assert.True(more < pair);
    }

    [Theory]
    [InlineData(100, 0.1, 1)]
    [InlineData(0.1, 100, 0)]
    public void Holes_in_series_pass_what_the_one_passes_that_holds_the_pressure(double first_mm, double second_mm, int holding)
    {
        // Over the wide one the pressure falls by a few roundings only: no flow could be told from that.
        OpeningsFlow flow = Orifice.InSeries(Air(2e5, 300), Air(1.5e5, 300), Hole(first_mm), Hole(second_mm));
        double q = flow.MassFlow.KilogramsPerSecond;
        Assert.Equal(flow.Members[holding].MassFlow.KilogramsPerSecond, q, 1e-13 * q);
    }

    [Fact]
    public void The_incompressible_rule_is_two_percent_low_at_small_differences_and_twelve_when_choked()
    {
        Assert.Equal(-0.016, Rule(0.9), 0.001);
        Assert.Equal(-0.124, Rule(0.1), 0.001);

        double Rule(double r)
        {
            GasState one = Air(1e6, 300);
            GasState two = Air(r * 1e6, 300);
            VentHoles exact = VentHoles.ForFlow(Orifice.InSeries(one, two, Hole(4), Hole(4)).MassFlow, one, two, ConstantCoefficientLaw.Ideal, Length.FromMillimeters(1));
            return VentHoles.IncompressibleSeries(Hole(4).Holes.TotalArea, Hole(4).Holes.TotalArea) / exact.TotalArea - 1;
        }
    }

    [Theory]
    [InlineData(1, 0.05)]
    [InlineData(2.5, 0.125)]
    [InlineData(5, 0.25)]
    [InlineData(50, 2.5)]
    public void An_equivalent_hole_is_found_in_a_wall_too_thick_for_the_smallest_hole(double wall_mm, double smallest_mm)
    {
        // A short tube ends at 20 diameters: the smallest hole of the answer is a twentieth of the wall, or 0.1 mm.
        GasState one = Air(2e5, 300);
        GasState two = Air(1e5, 300);
        Length wall = Length.FromMillimeters(wall_mm);
        foreach (double d_mm in (double[])[smallest_mm * 1.01, 3, 20])
        {
            var hole = new VentHoles { Diameter = Length.FromMillimeters(Math.Max(d_mm, 0.1)), WallThickness = wall, Count = 1 };
            MassFlow flow = Orifice.Flow(one, two, hole, ShortTubeLaw.SquareInlet).MassFlow;
            Assert.Equal(hole.Diameter.Millimeters, VentHoles.ForFlow(flow, one, two, ShortTubeLaw.SquareInlet, wall).Diameter.Millimeters, 1e-9 * hole.Diameter.Millimeters);
        }
    }

    [Fact]
    public void An_equivalent_hole_smaller_than_the_law_answers_is_refused_with_the_flow_of_the_smallest()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => VentHoles.ForFlow(
            MassFlow.FromKilogramsPerSecond(1e-9), Air(2e5, 300), Air(1e5, 300), ShortTubeLaw.SquareInlet, Length.FromMillimeters(5)));
        Assert.Equal("flow", refusal.ParamName);
    }

    [Fact]
    public void An_equivalent_hole_is_refused_when_the_flow_runs_against_the_pressures() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => VentHoles.ForFlow(
            MassFlow.FromKilogramsPerSecond(0.001), Air(1e5, 300), Air(2e5, 300), ConstantCoefficientLaw.Ideal, Length.FromMillimeters(1)));

    [Fact]
    public void An_equivalent_hole_is_refused_at_equal_pressures() =>
        Assert.Throws<ArgumentException>(() => VentHoles.ForFlow(
            MassFlow.Zero, Air(1e5, 300), Air(1e5, 300), ConstantCoefficientLaw.Ideal, Length.FromMillimeters(1)));

    [Theory]
    [InlineData(2e5, 1e5)]
    [InlineData(1e5, 2e5)]
    public void A_wall_beyond_what_a_law_accepts_is_refused_where_gas_flows_and_told_where_none_does(double one, double two)
    {
        var thick = new VentHoles { Diameter = Length.FromMillimeters(1), WallThickness = Length.FromMillimeters(21), Count = 1 };
        var opening = new Opening { Holes = thick, Law = ShortTubeLaw.SquareInlet };
        GasState from = Air(one, 300), to = Air(two, 300);
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.Flow(from, to, thick, opening.Law));
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.InSeries(from, to, opening));
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.InParallel(from, to, opening));
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.Slopes(from, to, thick, opening.Law));
        Assert.Equal("DIS002", Assert.Single(Orifice.Flow(from, from, thick, opening.Law).Findings).Code);
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.Slopes(from, from, thick, opening.Law));
    }

    [Fact]
    public void The_incompressible_rule_refuses_no_areas_and_areas_that_are_none()
    {
        Area some = Area.FromSquareMillimeters(10);
        Assert.Equal("areas", Assert.Throws<ArgumentException>(() => VentHoles.IncompressibleSeries()).ParamName);
        foreach (double none in (double[])[0, -1e-5, 1e5])
            Assert.Equal("areas", Assert.Throws<ArgumentOutOfRangeException>(() => VentHoles.IncompressibleSeries(some, Area.FromSquareMeters(none))).ParamName);
        Assert.Equal(some.SquareMeters, VentHoles.IncompressibleSeries(some).SquareMeters, 1e-20);
    }

    [Fact]
    public void A_series_needs_an_opening()
    {
        Assert.Throws<ArgumentException>(() => Orifice.InSeries(Air(2e5, 300), Air(1e5, 300)));
        Assert.Throws<ArgumentException>(() => Orifice.InParallel(Air(2e5, 300), Air(1e5, 300)));
    }

    [Fact]
    public void The_area_of_one_6_mm_hole_over_four_is_four_3_mm_holes()
    {
        Area one = Area.FromSquareMillimeters(Math.PI / 4 * 36);
        HolePattern pattern = HolePattern.ForArea(one, 4, Length.FromMillimeters(0.5), DrillSeries.MetricTenths);
        Assert.Equal(3, pattern.Exact.Diameter.Millimeters, 12);
        Assert.Equal("3.0 mm", pattern.Below!.Drill.Label);
        Assert.Equal("3.0 mm", pattern.Above!.Drill.Label);
        Assert.Equal(0, pattern.Below.AreaError, 12);
    }

    [Fact]
    public void Drills_next_to_a_wanted_diameter_report_their_area_error()
    {
        HolePattern pattern = HolePattern.ForArea(Area.FromSquareMillimeters(3 * Math.PI / 4 * 2.9 * 2.9), 3, Length.FromMillimeters(0.5), DrillSeries.InchFractions);
        Assert.Equal("7/64 in", pattern.Below!.Drill.Label);
        Assert.Equal("1/8 in", pattern.Above!.Drill.Label);
        Assert.Equal(Math.Pow(25.4 * 7 / 64 / 2.9, 2) - 1, pattern.Below.AreaError, 12);
        Assert.Equal(3, pattern.Above.Holes.Count);
    }

    [Fact]
    public void Beyond_the_ends_of_a_series_there_is_no_drill()
    {
        Assert.Null(DrillSize.Below(DrillSeries.MetricTenths, Length.FromMillimeters(0.4)));
        Assert.Null(DrillSize.Above(DrillSeries.MetricTenths, Length.FromMillimeters(13.1)));
    }

    [Fact]
    public void A_series_of_drills_that_is_none_is_refused_by_name()
    {
        const DrillSeries none = (DrillSeries)9;
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => DrillSize.All(none));
        Assert.Equal("series", refusal.ParamName);
        Assert.Contains("series is 9; it must be one of MetricTenths, MetricHalves, InchFractions", refusal.Message, StringComparison.Ordinal);
        Assert.Equal("drills", Assert.Throws<ArgumentOutOfRangeException>(
            () => HolePattern.ForArea(Area.FromSquareMillimeters(10), 2, Length.FromMillimeters(1), none)).ParamName);
    }

    [Theory]
    [InlineData(DrillSeries.MetricTenths, 126, "0.5 mm", "13.0 mm")]
    [InlineData(DrillSeries.MetricHalves, 49, "1.0 mm", "25.0 mm")]
    [InlineData(DrillSeries.InchFractions, 64, "1/64 in", "1 in")]
    public void Series_have_their_sizes_in_rising_order(DrillSeries series, int count, string first, string last)
    {
        DrillSize[] all = [.. DrillSize.All(series)];
        Assert.Equal(count, all.Length);
        Assert.Equal(first, all[0].Label);
        Assert.Equal(last, all[^1].Label);
        Assert.All(all.Zip(all.Skip(1)), pair => Assert.True(pair.First.Diameter.Meters < pair.Second.Diameter.Meters));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void Solving_a_series_allocates_nothing(int count)
    {
        SeriesMember[] members = [.. Enumerable.Repeat(new SeriesMember(SharpEdgedLaw.Perry, new OrificeSize(1e-5, 3e-3, 5e-4)), count)];
        double[] between = new double[count - 1];
        var upstream = new OrificeSide(2e5, 300, new GasConstants(287, 1.4));
        double flow = SeriesKernel.MassFlow(members, upstream, 1e5, between), again = 0;
        Assert.Equal(0, Allocated.By(() => again = SeriesKernel.MassFlow(members, upstream, 1e5, between)));
        Assert.Equal(flow, again);
    }

    private static Opening Hole(double d_mm) => new()
    {
        Holes = new VentHoles { Diameter = Length.FromMillimeters(d_mm), WallThickness = Length.FromMillimeters(0.5), Count = 1 },
        Law = ConstantCoefficientLaw.Ideal,
    };
}
