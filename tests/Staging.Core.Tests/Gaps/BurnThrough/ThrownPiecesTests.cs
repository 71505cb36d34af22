using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>Pieces of a web in both lumped models: how long they burn, where, and what of them is lost.</summary>
public class ThrownPiecesTests
{
    private static readonly GapModel[] Models = [new GapModel.TwoZone(), new GapModel.WellStirred()];

    [Fact]
    public void Old_faces_alone_burn_at_one_rate_until_the_mass_is_gone()
    {
        BurnThroughEstimate e = Grains.Whole.Steady().BurnThrough();
        double end = e.PieceMass.Kilograms / (1700 * 0.020 * Math.PI * 36e-6);
        Burns(Grains.Whole.Steady().Fresh(10_000), e.PieceMass, end);
    }

    [Fact]
    public void Fresh_faces_that_burn_at_once_burn_by_all_their_area()
    {
        BurnThroughEstimate e = Grains.Whole.Steady().BurnThrough();
        double end = e.PieceMass.Kilograms / (1700 * 0.020 * (Math.PI * 36e-6 + e.FreshFaces));
        Burns(Grains.Whole.Steady().Fresh(0), e.PieceMass, end);
    }

    [Fact]
    public void Fresh_faces_join_when_they_are_told_to()
    {
        BurnThroughEstimate e = Grains.Whole.Steady().BurnThrough();
        double old = 1700 * 0.020 * Math.PI * 36e-6, all = old + 1700 * 0.020 * e.FreshFaces, at = 0.011;
        Burns(Grains.Whole.Steady().Fresh(11), e.PieceMass, at + (e.PieceMass.Kilograms - old * at) / all);
    }

    [Fact]
    public void A_delay_shifts_all_of_it()
    {
        GapSource.EndBurner now = Grains.Whole.Steady().At(40).Fresh(5), late = now with { Delay = Duration.FromMilliseconds(7) };
        GapRun a = Grains.Of(now).Solve(), b = Grains.Of(late).Solve();
        foreach (GapEventKind kind in (GapEventKind[])[GapEventKind.PiecesAtNozzle, GapEventKind.ProductsAtNozzle, GapEventKind.SourceEnded])
            Assert.Equal(a.TimeOf(kind)!.Value.Milliseconds + 7, b.TimeOf(kind)!.Value.Milliseconds, 1e-3);
        Assert.InRange(b.PeakGaugePressure / a.PeakGaugePressure - 1, -1e-5, 1e-5);
    }

    [Fact]
    public void A_ring_burns_through_its_growth_and_gives_its_mass()
    {
        GapSource.EndBurner motor = (Grains.Capped with { Strength = Pressure.FromMegapascals(30), NozzleThroatDiameter = Length.FromMillimeters(2.4) }).Steady().Fresh(0);
        BurnThroughEstimate e = motor.BurnThrough();
        Assert.True(e.RingMass > e.PieceMass);
        Burns(motor, e.PieceMass + e.RingMass, e.Ring!.End / 0.020);
    }

    [Fact]
    public void Pieces_come_to_the_nozzle_plane_after_their_way()
    {
        foreach (GapModel model in Models)
            Assert.Equal(250 / 40.0, Grains.Of(Grains.Whole.At(40)).Solve(model).TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Milliseconds, 1e-6);
    }

    /// <summary>What lights the grain is told by what came first: burning pieces that are there already, or the gas that outran them.</summary>
    [Theory]
    [InlineData(120, IgnitionPath.Pieces)]
    [InlineData(4, IgnitionPath.Gas)]
    public void Pieces_have_lit_it_only_where_they_came_before(double speed, IgnitionPath path)
    {
        GapSource.EndBurner motor = StartingGaps.Booster with { PieceSpeed = Speed.FromMetersPerSecond(speed), FreshFaceDelay = Duration.Zero };
        GapRun run = StartingGaps.Bore18mm.With(source: motor, breakaway: Force.FromNewtons(2000), vents: [Bench.Hole(StartingGaps.Bore18mm.Design.Tube, 6, 2)]).Solve();
        GapOutcome.Lit lit = Assert.IsType<GapOutcome.Lit>(run.Outcome);
        Assert.Equal(path == IgnitionPath.Pieces, run.TimeOf(GapEventKind.PiecesAtNozzle)!.Value < lit.Time);
        Assert.Equal(path, lit.Path);
    }

    [Fact]
    public void Pieces_without_speed_stay_at_the_booster_as_those_of_almost_none_do()
    {
        foreach (GapModel model in Models)
        {
            GapRun still = Grains.Of(Grains.Whole.At(0)).Solve(model, SolverOptions.Default),
                almost = Grains.Of(Grains.Whole.At(1e-3)).Solve(model, SolverOptions.Default);
            Assert.Null(still.TimeOf(GapEventKind.PiecesAtNozzle));
            Assert.InRange(almost.PeakGaugePressure / still.PeakGaugePressure - 1, -1e-7, 1e-7);
            Assert.InRange(almost.PeakGrainSurface.Kelvins / still.PeakGrainSurface.Kelvins - 1, -1e-6, 1e-6);
        }
    }

    [Fact]
    public void Pieces_that_burn_out_on_their_way_never_arrive_as_fire()
    {
        foreach (GapModel model in Models)
        {
            GapRun run = Grains.Of(Grains.Whole.Fresh(0).At(1)).Solve(model);
            Assert.NotNull(run.TimeOf(GapEventKind.SourceEnded));
            Assert.Null(run.TimeOf(GapEventKind.PiecesAtNozzle));
        }
    }

    [Fact]
    public void Pieces_that_arrive_after_the_horizon_leave_the_ledger_closed()
    {
        foreach (GapModel model in Models)
        {
            GapRun run = (Grains.Of(Grains.Whole.At(20)) with { Horizon = Duration.FromMilliseconds(6) }).Solve(model);
            Assert.Null(run.TimeOf(GapEventKind.PiecesAtNozzle));
            Closed(run);
        }
    }

    [Fact]
    public void A_joint_that_opens_while_pieces_burn_is_followed_on()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Source = Grains.Whole.Fresh(0).At(30), Joint = Bench.Joint(1, 2) }) with { AfterOpening = Duration.FromMilliseconds(40) };
        foreach (GapModel model in Models)
        {
            GapRun run = gap.Solve(model);
            Assert.NotNull(run.TimeOf(GapEventKind.JointOpens));
            Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
            Closed(run);
        }
    }

    [Fact]
    public void In_a_tube_that_is_hardly_there_the_speed_does_not_matter()
    {
        // The pieces spend L/v on their way: what that changes goes with it.
        foreach (GapModel model in Models)
        {
            double Changed(double millimetres)
            {
                double At(double speed) => Grains.Of(Grains.Whole.Steady().Fresh(0).At(speed))
                    .With(d => d with { Tube = Bench.Tube(millimetres), Vents = [Holes(0.8 * millimetres, 0.2 * millimetres, 4)] })
                    .Solve(model).PeakGaugePressure.Pascals;
                return Math.Abs(At(100) / At(10) - 1);
            }

            double longer = Changed(16), tiny = Changed(1);
            Assert.InRange(tiny, 0, 1e-3);
            Assert.True(tiny <= longer + 1e-6, $"{longer:E2} at 16 mm, {tiny:E2} at 1 mm");
        }
    }

    [Fact]
    public void An_open_side_loses_its_share_of_what_has_not_burnt_yet()
    {
        GapSource.EndBurner motor = Grains.Whole.Steady().Fresh(10_000).At(40);
        GapProblem gap = Grains.Of(motor).With(d => d with { Vents = [Bench.Hole(d.Tube, 8, 6)] });
        BurnThroughEstimate e = motor.BurnThrough();
        var losses = new PieceLosses(gap.Design, e.PieceSize.Meters);
        double mass = e.PieceMass.Kilograms, rate = 1700 * 0.020 * Math.PI * 36e-6, before = rate * losses.Station / 40;
        Assert.InRange(losses.Kept, 0.1, 0.95);
        foreach (GapModel model in Models)
        {
            GapRun run = gap.Solve(model);
            Assert.InRange(run.Ledger.Burnt.Kilograms / (before + losses.Kept * (mass - before)) - 1, -1e-6, 1e-6);
            Closed(run);
        }
    }

    [Fact]
    public void Two_motors_in_a_doubled_gap_are_one_in_a_single_one()
    {
        // Areas and volumes double, lengths along the tube stay; no wall, whose share would change. What is left is the slab of air that the first products
        // of the two-zone model mix into: a thousandth of a bore, so 3e-5 more of the tube.
        double root = Math.Sqrt(2);
        GapProblem one = Grains.Of(Grains.Capped.At(60)).With(d => d with { MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 } });
        GapProblem two = one.With(d => d with
        {
            Tube = d.Tube with { Bore = root * d.Tube.Bore },
            Vents = [d.Vents[0] with { Holes = d.Vents[0].Holes with { Count = 2 } }],
            Source = new GapSource.Cluster { Motors = [Grains.Capped.At(60), Grains.Capped.At(60)] },
            Grain = d.Grain with { RecessVolume = 2 * d.Grain.RecessVolume },
            MixingAndHeat = d.MixingAndHeat with
            {
                FrontThicknessInBores = d.MixingAndHeat.FrontThicknessInBores / root,
                StirringReachInBores = d.MixingAndHeat.StirringReachInBores / root,
            },
        });
        foreach (GapModel model in Models)
        {
            GapRun a = one.Solve(model), b = two.Solve(model);
            Assert.InRange(b.PeakGaugePressure / a.PeakGaugePressure - 1, -5e-5, 5e-5);
            foreach (GapEventKind kind in (GapEventKind[])[GapEventKind.PiecesAtNozzle, GapEventKind.ProductsAtNozzle, GapEventKind.SourceEnded])
                Assert.InRange(b.TimeOf(kind)!.Value / a.TimeOf(kind)!.Value - 1, -1e-4, 1e-4);
            Assert.InRange(b.Ledger.Burnt / a.Ledger.Burnt - 2, -1e-6, 1e-6);
        }
    }

    [Fact]
    public void A_second_motor_that_breaks_after_the_horizon_does_nothing()
    {
        GapSource late = new GapSource.Cluster { Motors = [Grains.Whole.At(50), Grains.Capped with { Delay = Duration.FromSeconds(1) }] };
        GapRun one = Grains.Of(Grains.Whole.At(50)).Solve(), two = Grains.Of(late).Solve();
        Assert.InRange(two.PeakGaugePressure / one.PeakGaugePressure - 1, -1e-6, 1e-6);
        Assert.Equal(one.TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Seconds, two.TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Seconds, 1e-9);
    }

    private static Vent Holes(double station, double diameter, int count) => new()
    {
        Station = Length.FromMillimeters(station),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count },
    };

    /// <summary>A motor in a gap whose holes no piece fits through gives so much, all by a time [s], wherever its pieces are.</summary>
    private static void Burns(GapSource.EndBurner motor, Mass mass, double end)
    {
        foreach (GapModel model in Models)
        {
            foreach (double speed in (double[])[0, 15, 120])
            {
                GapRun run = Grains.Of(motor.At(speed)).With(d => d with { Vents = [Holes(245, 1.5, 16)] }).Solve(model);
                Assert.Equal(end, run.TimeOf(GapEventKind.SourceEnded)!.Value.Seconds, 1e-7);
                Assert.InRange(run.Ledger.Burnt / mass - 1, -1e-6, 1e-6);
                Closed(run);
            }
        }
    }

    private static void Closed(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }
}
