using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>What does not hang together is found before anything runs, with code, path and what would fit.</summary>
public class GapCheckTests
{
    [Fact]
    public void The_bench_gap_has_no_finding() => Assert.Empty(Bench.Gap.Check());

    [Fact]
    public void Holes_beyond_the_nozzle_plane_are_refused()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Tube = Bench.Tube(200) });
        ModelFinding finding = Assert.Single(gap.Check());
        Assert.Equal("GAP001", finding.Code);
        Assert.Contains("200 mm", finding.Message, StringComparison.Ordinal);
        Assert.Equal(finding.ToString(), Assert.Single(Assert.Throws<InvalidModelException>(() => gap.Solve()).Findings).ToString());
    }

    [Fact]
    public void A_hole_that_reaches_past_the_nozzle_plane_is_refused()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Vents = [d.Vents[0] with { Station = Length.FromMillimeters(249) }] });
        Assert.Equal("GAP010", Assert.Single(gap.Check()).Code);
    }

    [Fact]
    public void A_hole_too_long_for_the_law_is_refused_before_the_run()
    {
        // A hole of 0.5 mm through 12 mm is 24 diameters long; the short-tube law ends at 20.
        VentHoles pinhole = Bench.Gap.Design.Vents[0].Holes with { Diameter = Length.FromMillimeters(0.5), WallThickness = Length.FromMillimeters(12) };
        GapProblem gap = Bench.Gap.With(d => d with { DischargeLaw = ShortTubeLaw.SquareInlet, Vents = [d.Vents[0] with { Holes = pinhole }] });
        ModelFinding finding = Assert.Single(gap.Check());
        Assert.Equal(("GAP012", FindingSeverity.Error, "Vents[0].Holes.WallThickness"), (finding.Code, finding.Severity, finding.Path));
        Assert.Throws<InvalidModelException>(() => gap.Solve());
        Assert.DoesNotContain(gap.With(d => d with { DischargeLaw = SharpEdgedLaw.Perry }).Check(), f => f.Code == "GAP012");
    }

    [Fact]
    public void A_closed_gap_is_doubted_but_runs() =>
        Assert.Equal(FindingSeverity.Warning, Assert.Single(Bench.Gap.With(d => d with { Vents = [] }).Check()).Severity);

    [Theory]
    [InlineData("GAP004")]
    [InlineData("GAP005")]
    public void Contradictions_are_errors(string code)
    {
        GapProblem gap = code switch
        {
            "GAP004" => Bench.Gap.With(d => d with { Joint = d.Joint.Coupler with { SlidingForce = Force.FromNewtons(30) } }),
            _ => Bench.Gap.With(d => d with { Source = d.Motor() with { ChamberPressure = Pressure.FromKilopascals(90) } }),
        };
        Assert.Contains(gap.Check(), f => f.Code == code && f.Severity == FindingSeverity.Error);
    }

    [Fact]
    public void A_joint_that_holds_more_than_a_hundred_times_the_gap_is_refused()
    {
        // A bore of 2 mm behind a seam of 300 mm: 500 mm of joint are eleven kilometres of bore.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = new GuideTube { Bore = Length.FromMillimeters(2), Length = Length.FromMillimeters(1) },
            Vents = [],
            Joint = Bench.Joint(5) with { PressureDiameter = Length.FromMillimeters(300), Engagement = Length.FromMillimeters(500) },
        });
        ModelFinding finding = Assert.Single(gap.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(("GAP031", "Joint.Coupler.Engagement"), (finding.Code, finding.Path));
        Assert.Contains("500 mm", finding.Message, StringComparison.Ordinal);

        // 1 mm and 0.3 cm3 of recess are 96.5 mm of bore; a hundred times that, over an area ratio of 22500, is what the message names.
        Assert.Contains("at most 100 times, 0.4289 mm", finding.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidModelException>(() => gap.Solve(new GapModel.OneDimensional { Cells = 100_000 }));
        GapProblem below = gap.With(d => d with { Joint = d.Joint.Coupler with { PressureDiameter = Length.FromMillimeters(20), Engagement = Length.FromMillimeters(96) } });
        Assert.DoesNotContain(below.Check(), f => f.Code == "GAP031");
    }

    [Fact]
    public void Doubts_about_inputs_are_noted()
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(600) },
            Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(20) },
            Vents = [Bench.Hole(d.Tube, 10, 6) with { AxialLength = Length.FromMillimeters(10.2), Station = Length.FromMillimeters(50) }],
        });
        Assert.Equal(["GAP002", "GAP007", "GAP008"], gap.Check().Select(f => f.Code).Order());
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(1000)]
    public void A_single_bad_value_names_property_value_unit_and_range(double millimetres)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new GuideTube { Bore = Length.FromMillimeters(millimetres), Length = Length.FromMillimeters(100) });
        Assert.Equal("Bore", refusal.ParamName);
        Assert.Contains("between 0.002 and 0.2 m", refusal.Message, StringComparison.Ordinal);
    }
}
