using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Samples;

/// <summary>The sheet that the main sample draws, read back from its files: what is printed stands where the plan says.</summary>
public sealed class BuilderSheetTests : IDisposable
{
    /// <summary>What a printed place may be off [mm]; numbers in the files have four decimals.</summary>
    private const double Printed = 0.01;

    /// <summary>Pages of two nested walls whose drawn holes are not those advised, as they follow each other.</summary>
    private static readonly string[] InOrder = ["guide-tube-as-advised", "outer-tube-as-advised", "guide-tube-as-drawn", "outer-tube-as-drawn"];

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public void Both_walls_of_nested_tubes_are_drawn_at_their_size()
    {
        GapDesign design = TestPlans.TwoWalls;
        string folder = Sheets(design);
        foreach ((HoleTemplate wall, string file) in HoleTemplate.Of(design).Zip(["drill-guide-tube-as-drawn.svg", "drill-outer-tube-as-drawn.svg"]))
        {
            SheetFile page = SheetFile.OfSvg(Path.Combine(folder, file));
            Assert.Equal((210, 297), (page.Width, page.Height));
            Assert.Equal(50, page.ScaleBar, Printed);
            StandsWherePlanned(wall, page);
            Assert.Contains("level with the upper nozzle", page.Words.Replace('\n', ' '), StringComparison.Ordinal);
            Assert.Contains("invented test plan", page.Words, StringComparison.Ordinal);
            Assert.Contains("Print at 100 %", page.Words, StringComparison.Ordinal);
            Assert.Contains("range safety officer", page.Words.Replace('\n', ' '), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_PDF_has_the_pages_of_the_SVG_at_the_same_places()
    {
        string folder = Sheets(TestPlans.TwoWalls, "--paper", "letter");
        SheetFile[] pdf = SheetFile.OfPdf(Path.Combine(folder, "drill.pdf"));
        SheetFile[] svg = [.. InOrder.Select(name => SheetFile.OfSvg(Path.Combine(folder, $"drill-{name}.svg")))];
        Assert.Equal(svg.Length, pdf.Length);
        foreach ((SheetFile one, SheetFile other) in svg.Zip(pdf))
        {
            Assert.Equal(215.9, other.Width, Printed);
            Assert.Equal(279.4, other.Height, Printed);
            Assert.Equal(50, other.ScaleBar, Printed);
            Assert.Equal(4, other.Circles.Length);
            Alike(one.Circles, other.Circles);
        }
    }

    [Fact]
    public void A_strip_larger_than_a_page_is_split_and_every_hole_is_whole_on_one_page()
    {
        GapDesign design = Wide();
        string folder = Sheets(design);
        SheetFile[] pages = [.. Directory.GetFiles(folder, "drill-guide-tube-as-drawn-*.svg").Order().Select(SheetFile.OfSvg)];
        Assert.Equal(6, pages.Length);
        HoleTemplate wall = Assert.Single(HoleTemplate.Of(design));
        Assert.All(pages, page => StandsWherePlanned(wall, page));
        Assert.All(Enumerable.Range(0, pages[0].Holes.Length), i => Assert.Contains(pages, p => IsWhole(p, p.Holes[i])));
        // Register marks keep their place on the strip from page to page, and each is whole on two.
        Circle[][] marks = [.. pages.Select(p => p.Circles.Except(p.Holes).Select(c => c with { X = c.X - p.Cut.Left, Y = c.Y - p.Cut.Upper }).ToArray())];
        Assert.NotEmpty(marks[0]);
        Assert.All(marks, m => Alike(marks[0], m));
        Assert.All(Enumerable.Range(0, marks[0].Length), i =>
            Assert.True(pages.Count(p => IsWhole(p, p.Circles.Except(p.Holes).ElementAt(i))) >= 2, $"mark {i} is whole on one page only"));
    }

    /// <summary>Two rings with little wall below two that run into each other: the worse are shown, and how many are not.</summary>
    [Fact]
    public void A_sheet_shows_the_worst_findings_and_counts_the_others()
    {
        GuideTube tube = TestPlans.Lighting.Tube;
        Vent Ring(int count, double station) => Bench.Hole(tube, 5, count) with { Station = Length.FromMillimeters(station) };
        GapDesign design = TestPlans.Lighting with { Vents = [Ring(10, 40), Ring(10, 80), Ring(5, 200), Ring(6, 202)] };
        Assert.Equal(["SIZ011", "SIZ011", "SIZ010", "SIZ010"], Assert.Single(HoleTemplate.Of(design)).Findings.Select(f => f.Code));
        foreach (string page in Directory.GetFiles(Sheets(design), "drill-guide-tube-as-drawn*.svg"))
        {
            string words = SheetFile.OfSvg(page).Words.Replace('\n', ' ');
            Assert.Equal(2, words.Split("leave no wall between them").Length - 1);
            Assert.Contains("TOO LITTLE WALL: and 2 more findings on this wall", words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Sheets_of_two_gaps_say_which_gap_they_are_for()
    {
        string sheets = Path.Combine(scratch.Folder, "sheets");
        Ran ran = Ran.Command([Path.Combine(PlanFiles.Folder, "three-stages.json"), "--no-figures", "--cases", "0", "--sheet", sheets]);
        Assert.Equal("", ran.Error);
        foreach ((string upper, string between) in new[] { ("second", "first to second"), ("third", "second to third") })
        {
            string[] words = SheetFile.OfSvg(Path.Combine(sheets, $"drill-{upper}-guide-tube-as-drawn.svg")).Words.Split('\n');
            Assert.Equal(2, words.Count(w => w.StartsWith($"guide tube, {between}, ", StringComparison.Ordinal)));
        }
    }

    [Theory]
    [InlineData("--sheet")]
    [InlineData("--paper", "a5")]
    public void A_bad_sheet_is_refused_in_one_line(params string[] arguments)
    {
        Ran ran = Ran.Command(arguments);
        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.StartsWith("error: ", Assert.Single(Ran.Lines(ran.Error)), StringComparison.Ordinal);
    }

    private static void StandsWherePlanned(HoleTemplate wall, SheetFile page)
    {
        double around = Math.PI * wall.OuterDiameter!.Value.Millimeters;
        Assert.Equal(around + 10, page.Cut.Right - page.Cut.Left, Printed);
        var planned = wall.Rings.SelectMany(r => r.Arcs.Select(a => (Arc: a.Millimeters, Below: (wall.GapLength - r.Station!.Value).Millimeters, Radius: 0.5 * r.Diameter.Millimeters))).ToArray();
        Assert.Equal(planned.Length, page.Holes.Length);
        foreach ((Circle hole, var place) in page.Holes.Zip(planned))
        {
            Assert.Equal(place.Below, hole.Y - page.Cut.Upper, Printed);
            Assert.Equal(place.Radius, hole.Radius, Printed);
            Assert.Equal(0, Math.IEEERemainder(hole.X - page.Holes[0].X - (place.Arc - planned[0].Arc), around), Printed);
            Assert.InRange(hole.X - page.Cut.Left, hole.Radius, around - hole.Radius);
        }
    }

    private static bool IsWhole(SheetFile page, Circle c) =>
        c.X - c.Radius >= page.Window.Left && c.X + c.Radius <= page.Window.Right && c.Y - c.Radius >= page.Window.Upper && c.Y + c.Radius <= page.Window.Lower;

    private static void Alike(Circle[] expected, Circle[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        Assert.All(expected.Zip(actual), p =>
        {
            Assert.Equal(p.First.X, p.Second.X, Printed);
            Assert.Equal(p.First.Y, p.Second.Y, Printed);
            Assert.Equal(p.First.Radius, p.Second.Radius, Printed);
        });
    }

    private string Sheets(GapDesign design, params string[] more)
    {
        string plan = scratch.Write("plan.json", TestPlans.Through(design).ToJson());
        string sheets = Path.Combine(scratch.Folder, "sheets");
        Ran ran = Ran.Command([plan, "--no-figures", "--cases", "0", "--sheet", sheets, .. more]);
        Assert.Equal("", ran.Error);
        return sheets;
    }

    /// <summary>A tube of 66 mm, 460 mm long, with holes near both ends: three rows of two pages.</summary>
    private static GapDesign Wide()
    {
        GuideTube tube = new() { Bore = Length.FromMillimeters(66), Length = Length.FromMillimeters(460) };
        return TestPlans.Lighting with
        {
            Tube = tube,
            Vents = [Bench.Hole(tube, 6, 8), Bench.Hole(tube, 4, 4) with { Station = Length.FromMillimeters(40) }],
        };
    }
}
