using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Motors in contact as the limit of a gap without length.</summary>
public class DirectStagingTests
{
    private static readonly GapProblem Contact = Bench.Gap.InContact(JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(15) });

    [Fact]
    public void The_shortest_legal_gap_runs()
    {
        GapRun run = Contact.Solve();
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        Assert.NotNull(run.TimeOf(GapEventKind.JointMoves));
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void Plastic_film_lets_the_motors_part_before_paper_tape_does()
    {
        GapRun film = Bench.Gap.InContact(JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(300) }).Solve();
        GapRun paper = Bench.Gap.InContact(JointTape.PaperTape with { Strength = Force.FromNewtons(300) }).Solve();
        double let = film.TimeOf(GapEventKind.JointMoves)!.Value.Seconds;
        Assert.True(paper.TimeOf(GapEventKind.JointMoves) is not { } held || held.Seconds > let);
    }

    [Fact]
    public void The_limit_of_no_length_is_approached_in_proportion()
    {
        // The volume of the tube counts against that of the recess: 5 cm3, or 20 mm of bore, so that 8 mm are short already.
        double Opens(double millimetres) => Contact
            .With(d => d with { Tube = Bench.Tube(millimetres), Grain = d.Grain with { RecessVolume = Volume.FromCubicCentimeters(5) } })
            .Solve().TimeOf(GapEventKind.JointOpens)!.Value.Seconds;
        double t8 = Opens(8), t4 = Opens(4), t2 = Opens(2), t1 = Opens(1);
        // Halving the length halves what is left: ratios of successive differences near 2, drawing nearer to it.
        double coarse = (t8 - t4) / (t4 - t2), fine = (t4 - t2) / (t2 - t1);
        Assert.InRange(fine, 1.6, 2.4);
        Assert.True(Math.Abs(fine - 2) <= Math.Abs(coarse - 2) + 0.05);
        double limit = t1 - (t2 - t1);
        Assert.InRange(t1 / limit, 0.9, 1.1);
    }
}
