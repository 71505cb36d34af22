using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Motors in contact as the limit of a gap without length.</summary>
public class DirectStagingTests
{
    private static readonly GapProblem Contact = Bench.Gap.InContact(JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(15) });

    /// <summary>All models; the resolved one with cells of a tenth of a millimetre.</summary>
    public static TheoryData<GapModel> Models => [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 24 }];

    [Fact]
    public void The_shortest_legal_gap_runs()
    {
        GapRun parted = (Contact with { AfterOpening = Duration.Zero }).Solve(), followed = Contact.Solve();
        Assert.IsNotType<GapOutcome.NotSolved>(parted.Outcome);
        Assert.NotNull(parted.TimeOf(GapEventKind.JointMoves));
        Assert.InRange(parted.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        // The stiff method beyond the opening conserves what is linear in the state to its round-off.
        Assert.InRange(followed.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(followed.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void What_pushes_taped_motors_apart_names_the_tape()
    {
        GapProblem dark = (Contact with { AfterOpening = Duration.Zero }).With(d => d with { MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = 0 } });
        Assert.Contains("0.0 N and tape of 15.0 N", Assert.IsType<GapOutcome.PushedApart>(dark.Solve().Outcome).Cause, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_of_the_bore_jackets_and_leak_stay_behind()
    {
        GapDesign design = Bench.Design;
        var jacket = new Jacket { Name = "outer tube", Volume = Volume.FromCubicCentimeters(10), WallArea = Area.FromSquareCentimeters(60), Openings = [] };
        GapDesign nested = design with
        {
            Joint = design.Joint.Coupler with { LeakArea = Area.FromSquareMillimeters(20) },
            Tube = design.Tube with { Steps = [new BoreStep { Station = Length.FromMillimeters(100), Bore = Length.FromMillimeters(24) }] },
            Vents = [design.Vents[0] with { To = VentTarget.IntoJacket("outer tube") }],
            Jackets = [jacket],
        };
        GapProblem contact = (Bench.Gap with { Design = nested }).InContact(JointTape.PaperTape);
        ImmutableArray<ModelFinding> findings = contact.Check();
        Assert.DoesNotContain(findings, f => f.Severity == FindingSeverity.Error || f.Code == "GAP026");
        Assert.Equal(Bench.Gap.InContact(JointTape.PaperTape).Solve().Outcome.Said(), contact.Solve().Outcome.Said());
    }

    [Fact]
    public void Plastic_film_lets_the_motors_part_before_paper_tape_does()
    {
        // Stronger than the pressure, which tears either tape at once where it can: the heat has to do it.
        GapRun film = Bench.Gap.InContact(JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(300) }).Solve();
        GapRun paper = Bench.Gap.InContact(JointTape.PaperTape with { Strength = Force.FromNewtons(300) }).Solve();
        double let = film.TimeOf(GapEventKind.JointMoves)!.Value.Seconds;
        Assert.True(paper.TimeOf(GapEventKind.JointMoves) is not { } held || held.Seconds > let);
    }

    [Fact]
    public void At_the_judged_strength_pressure_tears_either_tape_at_once()
    {
        double Moves(JointTape tape) => StartingGaps.Bore18mm.InContact(tape).Solve().TimeOf(GapEventKind.JointMoves)!.Value.Milliseconds;
        double film = Moves(JointTape.ThinPlasticFilm), paper = Moves(JointTape.PaperTape);
        Assert.InRange(film, 0, 0.5);
        Assert.Equal(paper, film, 0.01);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void Whether_the_grain_lights_hangs_on_the_heat_that_it_takes_from_particles(GapModel model)
    {
        // The judged range of the efficiency from end to end, with the judged film.
        GapRun min = In(0.03).Solve(model), judged = In(0.25).Solve(model), most = In(0.6).Solve(model);
        Assert.False(min.Outcome.IsLit);
        Assert.True(most.TimeOf(GapEventKind.Lit) < judged.TimeOf(GapEventKind.Lit));
        Assert.True(judged.TimeOf(GapEventKind.Lit) < judged.TimeOf(GapEventKind.JointOpens));
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void The_models_agree_on_the_moment_of_lighting(GapModel model)
    {
        // The pocket is as good as stirred in all of them; the resolved one counts its steps' mean flow.
        double lit = In(0.25).Solve().TimeOf(GapEventKind.Lit)!.Value.Milliseconds;
        Assert.Equal(lit, In(0.25).Solve(model).TimeOf(GapEventKind.Lit)!.Value.Milliseconds, 0.02 * lit);
    }

    [Fact]
    public void Lit_before_parting_and_just_after_are_told_apart()
    {
        GapRun before = In(0.25).Solve(), after = In(0.1).Solve();
        var first = Assert.IsType<GapOutcome.Lit>(before.Outcome);
        var late = Assert.IsType<GapOutcome.Lit>(after.Outcome);
        Assert.True(first.MarginToSeparation > Duration.Zero);
        Assert.True(late.MarginToSeparation < Duration.Zero);
        Assert.DoesNotContain("had opened", first.Cause, StringComparison.Ordinal);
        Assert.Contains("had opened", late.Cause, StringComparison.Ordinal);
        // The core of a jet as hot as the products: some three diameters of the opening of 10 mm.
        Assert.InRange(after.At(late.Time).JointTravel.Millimeters, 1, 33);
        Assert.True(late.SurfaceMargin > TemperatureDelta.Zero);
        Assert.IsType<GapOutcome.PushedApart>((In(0.1) with { AfterOpening = Duration.Zero }).Solve().Outcome);
    }

    [Fact]
    public void What_lights_beyond_the_core_of_the_jet_is_not_lit()
    {
        GapRun cold = In(0.05).Solve();
        double guided = cold.PeakGrainSurface.Kelvins, later = cold.PeakGrainSurfaceAfterOpening!.Value.Kelvins;
        Assert.True(later > guided + 2);
        GapProblem between = In(0.05).With(d => d with { Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(0.5 * (guided + later)) } });
        Assert.IsType<GapOutcome.PushedApart>(between.Solve().Outcome);
    }

    [Fact]
    public void Sealed_motors_hear_the_jet_and_not_the_error_of_the_integrator()
    {
        // Chamber and pocket stay within tens of pascals of each other, and the flow between them is the root of that difference.
        GapProblem sealedOff = In(0.25) with { AfterOpening = Duration.Zero };
        sealedOff = sealedOff.With(d => d with { Joint = d.Joint.Coupler with { BreakawayForce = Force.FromNewtons(2000) } });
        GapRun loose = sealedOff.Solve(), tight = sealedOff.Solve(options: new SolverOptions { RelativeTolerance = 1e-10 });
        foreach (double ms in (double[])[0.3, 2, 8, 20])
            Assert.Equal(tight.At(Duration.FromMilliseconds(ms)).GrainSurface.Kelvins, loose.At(Duration.FromMilliseconds(ms)).GrainSurface.Kelvins, 0.1);
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

    /// <summary>The upper motor of the starting gap and a booster with a stated pulse in contact under thin plastic film, with an efficiency of the particles.</summary>
    private static GapProblem In(double particleEfficiency) => StartingGaps.Bore18mm
        .With(d => d with { Source = Bench.Design.Source, MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = particleEfficiency } })
        .InContact(JointTape.ThinPlasticFilm);
}
