using FsCheck.Xunit;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class OutlineTests
{
    [Fact]
    public void One_answer_everywhere_is_asked_on_the_lattice_alone()
    {
        (int[] answers, int asked) = Outline.Of(40, 40, (_, _) => 3);
        Assert.All(answers, a => Assert.Equal(3, a));
        Assert.Equal(36, asked); // 0, 8, 16, 24, 32 and 39 both ways
    }

    [Fact]
    public void No_cell_is_asked_twice()
    {
        var seen = new HashSet<(int, int)>();
        (_, int asked) = Outline.Of(40, 30, (x, y) =>
        {
            Assert.True(seen.Add((x, y)));
            return Disc(x, y);
        });
        Assert.Equal(seen.Count, asked);
    }

    [Theory]
    [InlineData(40, 40, 207)]
    [InlineData(80, 80, 460)]
    [InlineData(160, 160, 1122)]
    public void The_work_grows_with_the_outline_and_not_with_the_area(int wide, int high, int pinned)
    {
        (int[] answers, int asked) = Outline.Of(wide, high, (x, y) => Disc(40.0 * x / wide, 40.0 * y / high));
        Assert.Equal(Everywhere(wide, high, (x, y) => Disc(40.0 * x / wide, 40.0 * y / high)), answers);
        Assert.Equal(pinned, asked);
    }

    [Fact]
    public void A_thin_band_between_two_other_answers_is_found()
    {
        // One cell high, and nowhere on a row of the lattice: what lies on its two sides differs.
        int Band(int x, int y) => y < 11 ? 0 : y == 11 ? 1 : 2;
        Assert.Equal(Everywhere(40, 40, Band), Outline.Of(40, 40, Band).Answers);
    }

    [Fact]
    public void A_region_without_a_point_of_the_lattice_is_missed_as_stated()
    {
        int Patch(int x, int y) => x is > 8 and < 16 && y is > 8 and < 16 ? 1 : 0;
        Assert.DoesNotContain(1, Outline.Of(40, 40, Patch).Answers);
        int Larger(int x, int y) => x is >= 8 and < 16 && y is >= 8 and < 16 ? 1 : 0;
        Assert.Equal(Everywhere(40, 40, Larger), Outline.Of(40, 40, Larger).Answers);
    }

    [Fact]
    public void The_smallest_grids_are_asked_whole()
    {
        Assert.Equal([0, 1, 2, 3], Outline.Of(2, 2, (x, y) => 2 * y + x).Answers);
        Assert.Equal([0, 0, 1, 0, 1, 1], Outline.Of(3, 2, (x, y) => x + y > 1 ? 1 : 0).Answers);
    }

    /// <summary>
    /// Of a case of a gap: for each length, vents below one edge push the stages apart, above another cool the gas,
    /// and between them, where there is a between, it lights.
    /// </summary>
    [Property]
    public void Bands_with_edges_of_any_course_are_found_exactly(int[] steps, byte wide, byte high)
    {
        int w = 2 + wide % 50, h = 2 + high % 50;
        (int Low, int High) Edges(int x)
        {
            int s = steps.Length == 0 ? 3 : steps[x % steps.Length] % 1000, t = steps.Length == 0 ? 5 : steps[(x + 1) % steps.Length] % 1000;
            return (Math.Abs(s) % h, Math.Abs(s) % h + Math.Abs(t) % 7);
        }

        int Kind(int x, int y) => y < Edges(x).Low ? 0 : y < Edges(x).High ? 1 : 2;
        (int[] answers, int asked) = Outline.Of(w, h, Kind);
        Assert.InRange(asked, 4, w * h);
        Bounded(w, h, Kind, answers);
    }

    [Property]
    public void What_only_grows_along_both_axes_is_found_exactly(int[] steps, byte wide, byte high)
    {
        int w = 2 + wide % 60, h = 2 + high % 60;
        int[] edge = new int[w];
        for (int x = 0, at = h; x < w; x++)
        {
            at -= steps.Length == 0 ? 1 : Math.Abs(steps[x % steps.Length] % 5);
            edge[x] = at;
        }

        int Kind(int x, int y) => y >= edge[x] ? 1 : 0;
        Assert.Equal(Everywhere(w, h, Kind), Outline.Of(w, h, Kind).Answers);
    }

    /// <summary>Where two neighbours differ, both are right: the line between them was asked for.</summary>
    private static void Bounded(int wide, int high, Func<int, int, int> kind, int[] answers)
    {
        for (int i = 0; i < answers.Length; i++)
        {
            bool differs = (i % wide + 1 < wide && answers[i + 1] != answers[i]) || (i / wide + 1 < high && answers[i + wide] != answers[i]);
            if (differs)
                Assert.Equal(kind(i % wide, i / wide), answers[i]);
        }
    }

    private static int Disc(double x, double y) => (x - 20) * (x - 20) + (y - 18) * (y - 18) < 150 ? 1 : 0;

    private static int[] Everywhere(int wide, int high, Func<int, int, int> kind) =>
        [.. Enumerable.Range(0, wide * high).Select(i => kind(i % wide, i / wide))];
}
