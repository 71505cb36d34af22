using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>A gap that passes its check is answered, in any layout: areas that cannot be drilled are not tried, and a layout that allows none is a finding.</summary>
public class VentLimitTests
{
    /// <summary>Watched for a short time: what is asked here is what can be drilled, not what lights.</summary>
    private static readonly GapProblem Gap = Bench.Gap.With(d => d with { Joint = Bench.Joint(30) }) with { Horizon = Duration.FromMilliseconds(20) };

    /// <summary>Steps enough for all but the stiffest of gaps; those are answered too, as not solved.</summary>
    private static readonly SolverOptions Bounded = new() { MaxSteps = 5_000 };

    public static TheoryData<string> Cases => [.. Layouts.Keys];

    private static Dictionary<string, (GapProblem Gap, VentLayout Layout, string? Code)> Layouts { get; } = new()
    {
        ["jacket holes scaled below 0.1 mm"] = (WithJacket(Opening(1, 20), Opening(1, 0.12)), TestPlans.Layout, null),
        ["jacket holes scaled above 100 mm"] = (WithJacket(Opening(1, 100), Opening(100, 1)), TestPlans.Layout, null),
        ["jacket holes with no area between the two"] = (WithJacket(Opening(1, 100), Opening(1, 0.1)), TestPlans.Layout, "SIZ002"),
        ["land = tube length"] = (Gap, TestPlans.Layout with { Land = Gap.Design.Tube.Length }, "SIZ001"),
        ["land longer than the tube"] = (Gap, TestPlans.Layout with { Land = Length.FromMeters(1) }, "SIZ001"),
        ["64 holes"] = (Gap, TestPlans.Layout with { HoleCount = 64 }, null),
        ["100 holes"] = (Gap, TestPlans.Layout with { HoleCount = 100 }, null),
        ["wall 18 mm round a 6 mm hole"] = (WithShortTubes(6), TestPlans.Layout with { WallThickness = Length.FromMillimeters(18) }, null),
        ["wall 40 mm round a bore of 18 mm"] = (WithShortTubes(6), TestPlans.Layout with { WallThickness = Length.FromMillimeters(40) }, "SIZ006"),
        ["wall 50 mm round 100 holes"] = (WithShortTubes(6), TestPlans.Layout with { WallThickness = Length.FromMillimeters(50), HoleCount = 100 }, "SIZ006"),
        ["1 mm tube, land 1 mm"] = (WithTube(18, 1), TestPlans.Layout, "SIZ001"),
        ["1 mm tube, land 0.5 mm"] = (WithTube(18, 1), TestPlans.Layout with { Land = Length.FromMillimeters(0.5) }, null),
        ["2 mm bore"] = (WithTube(2, 30), TestPlans.Layout, null),
        ["200 mm bore, one hole"] = (WithTube(200, 400), TestPlans.Layout with { HoleCount = 1 }, null),
        ["a tube that widens below the nozzle"] = (Stepped((200, 24)), TestPlans.Layout, null),
        ["a tube that narrows below the nozzle"] = (Stepped((200, 15)), TestPlans.Layout, null),
        ["a tube that widens twice"] = (Stepped((100, 20), (240, 30)), TestPlans.Layout, null),
        ["a wide ring at the nozzle, as long as the land"] = (Stepped((249.5, 24)), TestPlans.Layout, "SIZ001"),
    };

    private static GapProblem Stepped(params (double Station, double Bore)[] steps) => Gap.With(d => d with
    {
        Tube = d.Tube with
        {
            Steps = [.. steps.Select(s => new BoreStep { Station = Length.FromMillimeters(s.Station), Bore = Length.FromMillimeters(s.Bore) })],
        },
        Vents = [],
    });

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_passes_its_check_is_answered(string name)
    {
        (GapProblem gap, VentLayout layout, string? code) = Layouts[name];
        Assert.DoesNotContain(gap.Check(), f => f.Severity == FindingSeverity.Error);
        foreach (VentAdvice advice in new[] { gap.SizeVents(layout, options: Bounded), gap.Recommend(layout, options: Bounded) })
        {
            Assert.Equal(code is null ? [] : [code], advice.Findings.Select(f => f.Code));
            Assert.Equal(code is null, advice.Trials.Length > 0);
            Assert.All(advice.ToString().Split('\n'), line => Assert.InRange(line.Length, 1, 100));
        }

        Assert.Equal(code is null ? [] : [code], layout.Check(gap.Design).Select(f => f.Code));
    }

    [Theory]
    [InlineData(18, 1.5, 100, 0.01, 0.1, 0)]
    [InlineData(3, 2, 7, 0.3, 1, 2)]
    [InlineData(150, 20, 33, 12, 5, 0)]
    [InlineData(2.5, 400, 1, 50, 20, 1)]
    [InlineData(60, 300, 90, 3, 0.1, 5)]
    [InlineData(9, 45, 16, 0.05, 19, 20)]
    public void Any_tube_and_any_layout_is_answered(double bore, double length, int holes, double wall, double land, int inJacket)
    {
        GapProblem gap = WithTube(bore, length);
        if (inJacket > 0)
            gap = WithJacket(gap, Opening(inJacket, 15), Opening(3, 0.8));
        var layout = new VentLayout { HoleCount = holes, WallThickness = Length.FromMillimeters(wall), Land = Length.FromMillimeters(land) };
        Assert.DoesNotContain(gap.Check(), f => f.Severity == FindingSeverity.Error);
        VentAdvice advice = gap.SizeVents(layout, options: Bounded);
        Assert.Equal(advice.Findings.IsEmpty, advice.Trials.Length > 0);
    }

    [Fact]
    public void A_finding_names_value_unit_and_range()
    {
        (GapProblem gap, VentLayout layout, _) = Layouts["land = tube length"];
        double length = gap.Design.Tube.Length.Millimeters;
        ModelFinding land = Assert.Single(layout.Check(gap.Design));
        Assert.Equal("Layout.Land", land.Path);
        Assert.Contains(FormattableString.Invariant($"A land of {length} mm leaves nothing of the {length} mm of tube that holes below the nozzle may take; it must be at least 0 and below that."), land.Message, StringComparison.Ordinal);
        ModelFinding area = Assert.Single(Assert.Throws<InvalidModelException>(() => Gap.WithVents(TestPlans.Layout, Area.FromSquareMillimeters(1e5))).Findings);
        Assert.Equal("SIZ003", area.Code);
        Assert.Contains("must be between 0.03142 mm2 (holes of 0.1 mm in the tube) and", area.Message, StringComparison.Ordinal);
        Assert.Contains("(the side wide open)", area.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thick_wall_bounds_the_areas_that_are_tried()
    {
        (GapProblem gap, VentLayout layout, _) = Layouts["wall 18 mm round a 6 mm hole"];
        // A hole may be twenty diameters long: no hole below 0.9 mm.
        VentAdvice advice = gap.SizeVents(layout);
        Assert.Equal(0.81 * Math.PI, advice.Trials[0].TotalArea.SquareMillimeters, 1e-6);
    }

    private static GapProblem WithTube(double bore, double length) => Gap.With(d => d with
    {
        Tube = new GuideTube { Bore = Length.FromMillimeters(bore), Length = Length.FromMillimeters(length) },
        Vents = [],
        Joint = Bench.Joint(30, 0.5),
        Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(Math.Min(bore, 10)) },
    });

    private static GapProblem WithShortTubes(double diameter) => Gap.With(d => d with { DischargeLaw = ShortTubeLaw.SquareInlet, Vents = [Bench.Hole(d.Tube, diameter, 4)] });

    private static GapProblem WithJacket(params ReadOnlySpan<JacketOpening> openings) => WithJacket(Gap, openings);

    private static GapProblem WithJacket(GapProblem gap, params ReadOnlySpan<JacketOpening> openings)
    {
        Jacket jacket = Jacket.Between("outer tube", Length.FromMillimeters(210), Length.FromMillimeters(240), Length.FromMillimeters(100), openings);
        return gap.With(d => d with { Vents = [], Jackets = [jacket] });
    }

    private static JacketOpening Opening(int count, double millimetres) => new()
    {
        Holes = new VentHoles { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = count },
        To = VentTarget.Air,
    };
}
