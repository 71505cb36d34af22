using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Tape, free motor tubes and the time after the opening on the resolved model.</summary>
public class ResolvedJointTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly FrictionJoint Coupler = Bench.Joint(5);

    [Fact]
    public void Tape_without_strength_is_the_coupler_alone()
    {
        GapRun plain = Solved(Coupler), taped = Solved(Taped(JointTape.PaperTape with { Strength = Force.Zero }));
        Assert.Equal(plain.Events.Times(), taped.Events.Times());
        Assert.Equal(plain.PeakGaugePressure, taped.PeakGaugePressure);
    }

    [Fact]
    public void Tape_that_the_gas_never_softens_adds_its_strength_to_the_breakaway_force()
    {
        JointTape cold = JointTape.PaperTape with { Strength = Force.FromNewtons(12), GasContact = HeatTransferCoefficient.Zero };
        GapRun firmer = Solved(Coupler with { BreakawayForce = Force.FromNewtons(17) }), taped = Solved(Taped(cold));
        Assert.NotNull(taped.TimeOf(GapEventKind.JointOpens));
        Assert.Equal(firmer.Events.Times(), taped.Events.Times());
    }

    [Fact]
    public void Plastic_film_lets_go_while_paper_tape_still_holds()
    {
        GapRun film = Solved(Taped(JointTape.ThinPlasticFilm)), paper = Solved(Taped(JointTape.PaperTape));
        Assert.Null(paper.TimeOf(GapEventKind.JointMoves));
        Closes(film);

        // The lumped gap warms it by the mean of its hot zone, this one by the gas at the seam, which has not yet lost heat to the tube on its way.
        Duration lumped = Bench.Gap.With(d => d with { Joint = Taped(JointTape.ThinPlasticFilm) }).Solve().TimeOf(GapEventKind.JointMoves)!.Value;
        Assert.True(film.TimeOf(GapEventKind.JointMoves)!.Value < lumped);
    }

    [Fact]
    public void Where_no_heat_is_lost_on_the_way_film_lets_go_when_the_displacement_model_says()
    {
        // The hot zone then has the temperature of its source everywhere. What is left is the air of the first cell that products must sweep out first:
        // it falls with the cell.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Joint = Taped(JointTape.ThinPlasticFilm),
            Source = d.Motor() with { OpeningTime = Duration.FromMilliseconds(5) },
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { Horizon = Duration.FromMilliseconds(12) };
        Duration lumped = gap.Solve().TimeOf(GapEventKind.JointMoves)!.Value;
        double Late(int cells) => gap.Solve(new GapModel.OneDimensional { Cells = cells }).TimeOf(GapEventKind.JointMoves)!.Value / lumped - 1;
        double coarse = Late(60), fine = Late(240);
        Assert.InRange(fine, 0, 0.02);
        Assert.True(fine < 0.6 * coarse, $"late by {coarse:P1} on 60 cells, {fine:P1} on 240");
    }

    [Fact]
    public void The_film_warms_as_the_exact_slab()
    {
        // Gas of one temperature: the far face is soft when the series says so, within what eight layers give.
        JointTape tape = JointTape.PaperTape;
        Temperature air = Temperature.FromKelvins(288), gas = Temperature.FromKelvins(1900);
        FilmParameters film = FilmToSi.ToSi(tape, air);
        double Softens(double step)
        {
            var layers = new TapeFilm(film);
            double t = 0;
            for (; film.StrengthLeft(layers.Layers) > 0; t += step)
                layers.Warm(step, gas.Kelvins);
            return t;
        }

        double exact = tape.TimeToSoften(gas, air)!.Value.Seconds;
        Assert.InRange(Softens(1e-5) / exact, 0.95, 1.02);

        // Steps from far below to far above what the layers could bear at once: substeps see to that.
        Assert.InRange(Softens(1e-3) - Softens(1e-5), 0, 1.1e-3);
        Assert.InRange(Softens(1e-5) - Softens(1e-6), -1e-6, 1.1e-5);
    }

    [Fact]
    public void A_free_motor_tube_that_weighs_as_the_booster_is_the_booster()
    {
        GapRun whole = Solved(Coupler), tube = Solved(Tube(Bench.Gap.Bodies.MassBehind.Grams, null));
        Assert.Equal(whole.Events.Times(), tube.Events.Times());
    }

    [Fact]
    public void A_lighter_motor_tube_slides_out_sooner_and_rear_passages_delay_it()
    {
        GapRun heavy = Solved(Tube(40, null)), light = Solved(Tube(15, null)), vented = Solved(Tube(15, Holes(4, 4)));
        double Opens(GapRun run) => run.TimeOf(GapEventKind.JointOpens)!.Value.Seconds;
        Assert.True(Opens(light) < Opens(heavy));
        Assert.True(Opens(vented) > Opens(light));
        Assert.True(vented.PeakGaugePressure < light.PeakGaugePressure);
        Closes(vented);

        // Rear passages and no other vent: nothing stirs the gas at the nozzle, and nothing is divided by that.
        GapRun rear = Bench.Gap.With(d => d with { Joint = Tube(15, Holes(4, 4)), Vents = [] }).Solve(Coarse);
        Assert.True(double.IsFinite(rear.PeakGrainSurface.Kelvins));
        Closes(rear);
    }

    [Fact]
    public void Passages_at_the_booster_give_the_pressure_of_the_displacement_model()
    {
        // A tube that stays, vented at the booster's end alone: one pressure, no front to speak of at the passages, no wall heat.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(100),
            Vents = [],
            Joint = StageJoint.FreeMotorTube(Bench.Joint(2000), Mass.FromGrams(20), Holes(2, 5)),
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { Horizon = Duration.FromMilliseconds(15) };
        GapRun resolved = gap.Solve(new GapModel.OneDimensional { Cells = 100 }), displaced = gap.Solve();
        foreach (double t in (double[])[3, 4, 6, 8, 10, 12, 15])
        {
            double a = resolved.At(Duration.FromMilliseconds(t)).GapPressure.Pascals, b = displaced.At(Duration.FromMilliseconds(t)).GapPressure.Pascals;
            Assert.InRange(a / b - 1, -0.01, 0.01);
        }

        Closes(resolved);
    }

    private static readonly GapProblem Weak = Bench.Gap.With(d => d with { Joint = Bench.Joint(8, 12) });
    private static readonly GapRun Ended = Weak.Solve(Coarse), Followed = (Weak with { AfterOpening = Duration.FromMilliseconds(30) }).Solve(Coarse);

    [Fact]
    public void Up_to_the_opening_nothing_changes_when_the_gap_is_followed_beyond()
    {
        Assert.IsType<GapOutcome.PushedApart>(Ended.Outcome);
        Assert.Equal(Ended.Outcome.Said(), Followed.Outcome.Said());
        Assert.Equal(Ended.Events.Times(), Followed.Events.Take(Ended.Events.Length).Times());
        Assert.Equal(Ended.PeakGrainSurface, Followed.PeakGrainSurface);
        Assert.Null(Ended.PeakGrainSurfaceAfterOpening);
        Assert.NotNull(Followed.PeakGrainSurfaceAfterOpening);
        Closes(Followed);
    }

    [Fact]
    public void Opened_the_gap_bleeds_down_to_the_outside()
    {
        Assert.Equal([GapEventKind.SourceEnded, GapEventKind.Spent], Followed.Events.Where(e => e.Time > Ended.End).Select(e => e.Kind));

        // What is left is the afterburn through a wide annulus: a few per cent, as in the lumped models.
        Assert.InRange(Followed.At(Followed.End).GapPressure.Pascals / 101325, 0.99, 1.05);
        Assert.True(Followed.At(Followed.End).JointTravel.Meters > 5 * 0.012);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_slow_source_opens_the_joint_and_parts_the_bodies_as_in_the_displacement_model(bool tabulated)
    {
        // A table that rises over 5 ms, or a chamber that opens over 5 ms: no waves to speak of; no wall heat, a thin front. The models then agree on the
        // pressure within 1 %, which is 3 % of the gauge pressure while that stands at half an atmosphere: half of that in a time of sliding, 3 % in a travel.
        GapProblem slow = Weak.With(d => d with
        {
            Source = tabulated
                ? d.Fed([0, 0.005, 0.03], [0, 0.012, 0.012], [1900, 1900, 1900])
                : d.Motor() with { OpeningTime = Duration.FromMilliseconds(5) },
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { AfterOpening = Duration.FromMilliseconds(10) };
        GapRun resolved = slow.Solve(new GapModel.OneDimensional { Cells = 100 }), lumped = slow.Solve();
        Assert.InRange(resolved.TimeOf(GapEventKind.JointOpens)!.Value / lumped.TimeOf(GapEventKind.JointOpens)!.Value, 0.985, 1.015);
        Duration end = resolved.End < lumped.End ? resolved.End : lumped.End;
        Assert.InRange(resolved.At(end).JointTravel / lumped.At(end).JointTravel, 0.97, 1.03);
        Assert.InRange(resolved.At(end).GapPressure / lumped.At(end).GapPressure, 0.99, 1.01);
        Closes(resolved);
    }

    [Fact]
    public void What_lights_only_after_parting_is_not_lit()
    {
        GapProblem early = Weak.With(d => d with { Joint = Bench.Joint(30, 3), Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(450) } });
        Assert.NotNull(early.With(d => d with { Joint = Bench.Joint(2000) }).Solve(Coarse).TimeOf(GapEventKind.Lit));
        GapRun run = (early with { AfterOpening = Duration.FromMilliseconds(100) }).Solve(Coarse);
        Assert.False(run.Outcome.IsLit);
        Assert.Null(run.TimeOf(GapEventKind.Lit));
        Assert.InRange(run.PeakGrainSurfaceAfterOpening!.Value.Kelvins, 450, 600);
        Closes(run);
    }

    private static void Closes(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    private static GapRun Solved(StageJoint joint) => Bench.Gap.With(d => d with { Joint = joint }).Solve(Coarse);

    private static StageJoint Taped(JointTape tape) => StageJoint.Taped(Coupler, tape);

    private static StageJoint Tube(double grams, VentHoles? rear) =>
        StageJoint.FreeMotorTube(Coupler, Mass.FromGrams(grams), rear);

    private static VentHoles Holes(int count, double millimetres) =>
        new() { Count = count, Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(1) };
}
