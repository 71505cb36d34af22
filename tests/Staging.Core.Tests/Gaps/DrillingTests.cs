using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Holes that nobody can drill are an error with place, value and limit; what can be built is none.</summary>
public class DrillingTests
{
    public static TheoryData<string, Vent[], double, string, string, string> Impossible => new()
    {
        { "wider than the bore", [At(100, 6, 4)], 2, "GAP002", "Vents[0].Holes.Diameter", "A hole of 6 mm is wider than the bore of 2 mm; it may be at most as wide." },
        { "1000 holes in one ring", [At(100, 6, 1000)], 18, "GAP002", "Vents[0].Holes.Count", "1000 holes of 6 mm do not fit side by side round a bore of 18 mm; there may be at most 9, or more over a stated axial length." },
        { "ten round 18 mm", [At(100, 6, 10)], 18, "GAP002", "Vents[0].Holes.Count", "10 holes of 6 mm do not fit side by side" },
        { "more than the wall", [At(60, 6, 300) with { AxialLength = Length.FromMillimeters(100) }], 18, "GAP002", "Vents[0].Holes.Count", "300 holes of 6 mm do not fit over 100 mm of a bore of 18 mm; there may be at most 200." },
        { "a wall of 40 mm", [At(100, 6, 4, 40)], 18, "GAP014", "Vents[0].Holes.WallThickness", "A wall of 40 mm round a bore of 18 mm is no tube; it may be at most as thick as the bore." },
        { "two vents at one place", [At(100, 6, 6), At(102, 6, 6)], 18, "GAP013", "Vents[1].Station", "The holes lie over those of Vents[0]: 2 mm from centre to centre, and round the bore there is room for 79 % of both. The stations must be 6 mm apart." },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_cannot_be_drilled_is_an_error_and_is_not_run(string what, Vent[] vents, double bore_mm, string code, string path, string words)
    {
        GapProblem gap = Gap(bore_mm, vents);
        ModelFinding finding = Assert.Single(gap.Check(), f => f.Code == code);
        Assert.Equal((FindingSeverity.Error, path), (finding.Severity, finding.Path));
        Assert.True(finding.Message.StartsWith(words, StringComparison.Ordinal), $"{what}: {finding.Message}");
        Assert.Contains(finding.ToString(), Assert.Throws<InvalidModelException>(() => gap.Solve()).Findings.Select(f => f.ToString()));
    }

    [Theory]
    [InlineData(40, 5, 0.5, 31, "GAP002", "40 holes of 5 mm do not fit side by side round a bore of 31 mm; there may be at most 19.")]
    [InlineData(1, 60, 0.5, 31, "GAP002", "A hole of 60 mm is wider than the bore of 31 mm")]
    [InlineData(4, 5, 45, 31, "GAP014", "A wall of 45 mm round a bore of 31 mm is no tube")]
    [InlineData(4, 5, 0.5, 17, "GAP035", "The outer wall of 'outer' has a bore of 17 mm")]
    public void An_outer_wall_that_cannot_be_drilled_is_an_error(int count, double diameter, double wall, double bore, string code, string words)
    {
        VentHoles holes = new() { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(wall), Count = count };
        GapProblem nested = Nested(Gap(18, At(100, 4, 2)), bore, holes);
        ModelFinding finding = Assert.Single(nested.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(code, finding.Code);
        Assert.StartsWith(words, finding.Message, StringComparison.Ordinal);
    }

    /// <summary>An outer wall goes round that part of a stepped tube whose holes lead into it.</summary>
    [Theory]
    [InlineData(18, 30, 25, true)]
    [InlineData(30, 18, 25, false)]
    public void An_outer_wall_has_to_fit_where_its_holes_are(double below, double above, double outer, bool fits)
    {
        GapProblem one = Gap(below, At(100, 4, 2)).With(d => d with
        {
            Tube = d.Tube with { Steps = [new BoreStep { Station = Length.FromMillimeters(200), Bore = Length.FromMillimeters(above) }] },
        });
        GapProblem nested = Nested(one, outer, one.Design.Vents[0].Holes);
        Assert.Equal(!fits, nested.Check().Any(f => f.Code == "GAP035"));
    }

    [Fact]
    public void A_joint_of_another_tube_is_doubted()
    {
        Assert.DoesNotContain(Gap(18, At(100, 4, 2)).Check(), f => f.Code == "GAP034");
        Assert.Contains(Gap(24, At(100, 4, 2)).Check(), f => f.Code == "GAP034" && f.Message.Contains("0.563", StringComparison.Ordinal));
    }

    [Fact]
    public void What_can_be_drilled_is_no_error()
    {
        // Nine 6 mm holes are 54 mm round; the bore of 18 mm is 56.5 mm round. A hole as wide as its bore can be drilled, just.
        Assert.DoesNotContain(Gap(18, At(100, 6, 9)).Check(), IsError);
        Assert.DoesNotContain(Gap(6, At(100, 6, 1)).Check(), IsError);
        Assert.DoesNotContain(Gap(18, At(100, 6, 4), At(106, 6, 4)).Check(), f => f.Code == "GAP013");
        Assert.DoesNotContain(Gap(18, At(60, 6, 100) with { AxialLength = Length.FromMillimeters(100) }).Check(), IsError);
    }

    [Fact]
    public void Two_rings_at_one_station_that_fit_when_turned_are_a_warning()
    {
        ModelFinding finding = Assert.Single(Gap(18, At(100, 6, 4), At(102, 6, 4)).Check(), f => f.Code == "GAP013");
        Assert.Equal(FindingSeverity.Warning, finding.Severity);
        Assert.Contains("turned against each other", finding.Message, StringComparison.Ordinal);
    }

    private static bool IsError(ModelFinding finding) => finding.Severity == FindingSeverity.Error;

    private static GapProblem Gap(double bore_mm, params Vent[] vents) =>
        StartingGaps.Bore18mm.With(bore: Length.FromMillimeters(bore_mm), vents: [.. vents]).With(d => d with { DischargeLaw = ShortTubeLaw.SquareInlet });

    /// <summary>One wall, and an outer one round it into which its first vent leads.</summary>
    private static GapProblem Nested(GapProblem one, double outerBore_mm, VentHoles outerHoles) => one.With(d => d with
    {
        Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("outer") }],
        Jackets =
        [
            new Jacket
            {
                Name = "outer",
                Volume = Volume.FromCubicCentimeters(20),
                WallArea = Area.Zero,
                OuterBore = Length.FromMillimeters(outerBore_mm),
                Openings = [new JacketOpening { Holes = outerHoles, To = VentTarget.Air, Station = Length.FromMillimeters(80) }],
            },
        ],
    });

    private static Vent At(double station_mm, double diameter_mm, int count, double wall_mm = 0.5) => new()
    {
        Station = Length.FromMillimeters(station_mm),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(diameter_mm), WallThickness = Length.FromMillimeters(wall_mm), Count = count },
    };
}
