using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Pieces of a web thrown up a whole gap.</summary>
public class ResolvedPiecesTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };

    [Fact]
    public void Ledgers_close_to_round_off_while_the_joint_slides_and_opens()
    {
        GapProblem loose = ThrownGaps.Gap.With(d => d with { Vents = [], Joint = Bench.Joint(8) }) with { AfterOpening = Duration.FromMilliseconds(3) };
        GapRun run = loose.Solve(Coarse);
        Assert.NotNull(run.TimeOf(GapEventKind.JointOpens));
        run.Closes();
        loose.With(d => d with { Source = ThrownGaps.Strong }).Solve(Coarse).Closes();
        ThrownGaps.At(0).Solve(Coarse).Closes();
        ThrownGaps.Gap.With(d => d with { Source = new GapSource.Cluster { Motors = [ThrownGaps.Motor, ThrownGaps.Strong with { Delay = Duration.FromMilliseconds(1.7) }] } })
            .Solve(Coarse).Closes();
    }

    /// <summary>Fresh faces that catch behind a wide open joint blow the gas out faster than sound: it leaves as it comes.</summary>
    [Fact]
    public void A_blast_through_an_open_joint_keeps_gas_in_every_cell()
    {
        GapSource.EndBurner fierce = ThrownGaps.Motor with { Rate = ThrownGaps.Rate(200, 0.24), FreshFaceDelay = Duration.FromMilliseconds(10) };
        GapRun run = (ThrownGaps.Gap.With(d => d with { Source = fierce, Joint = Bench.Joint(8) }) with { AfterOpening = Duration.FromMilliseconds(20) }).Solve(Coarse);
        Assert.Null(run.Failure);
        Assert.True(run.TimeOf(GapEventKind.JointOpens) < fierce.FreshFaceDelay);
        Assert.True(run.End > 1.2 * fierce.FreshFaceDelay);
        run.Closes();
    }

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(150)]
    public void They_come_to_the_nozzle_when_their_speed_says_and_the_source_ends_with_the_last_of_them(double speed)
    {
        GapRun run = ThrownGaps.At(speed).Solve(Coarse);
        Assert.Equal(0.25 / speed, run.TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Seconds, 1e-15);
        Assert.True(run.TimeOf(GapEventKind.SourceEnded) > run.TimeOf(GapEventKind.PiecesAtNozzle));
        Assert.Equal(1, run.Ledger.Burnt / ThrownGaps.Motor.BurnThrough().PieceMass, 1e-12);
    }

    [Fact]
    public void Pieces_that_stay_at_the_booster_do_not_arrive()
    {
        GapRun run = ThrownGaps.At(0).Solve(Coarse);
        Assert.Null(run.TimeOf(GapEventKind.PiecesAtNozzle));
        Assert.NotNull(run.TimeOf(GapEventKind.SourceEnded));
    }

    /// <summary>
    /// No speed is the source at the booster: what plates of the same mass flow, burning in the same chamber behind a wide opening, give. Compared once
    /// the chamber has blown down and the hole passes products. What is left: the booster's nozzle draws on the flame here, and on the tube there.
    /// </summary>
    [Fact]
    public void Without_speed_they_are_a_source_at_the_booster()
    {
        GapSource.EndBurner still = ThrownGaps.Motor with { PieceSpeed = Speed.Zero, NozzleThroatDiameter = Length.FromMillimeters(2), Rate = ThrownGaps.Rate(15, 0), FreshFaceDelay = Duration.FromSeconds(1) };
        BurnThroughEstimate broken = still.BurnThrough();
        Assert.Null(broken.Ring);

        // Faces pi R^2 at the rate r burn the mass M as plates of thickness h do if M 2/h = rho pi R^2.
        double thickness = 2 * broken.PieceMass.Kilograms / (1700 * Math.PI * 36e-6);
        var booster = new GapSource.Booster
        {
            Products = still.Products,
            FlameTemperature = still.FlameTemperature,
            ChamberVolume = broken.ChamberVolume,
            ChamberPressure = broken.ChamberPressure,
            OpeningDiameter = broken.OpeningDiameter,
            OpeningTime = broken.OpeningTime,
            OpeningCoefficient = still.OpeningCoefficient,
            NozzleThroatDiameter = still.NozzleThroatDiameter,
            Web = Bench.Plates(broken.PieceMass.Grams, 1e3 * thickness, 15, 0),
            Provenance = Bench.Invented,
        };
        GapProblem gap = ThrownGaps.Gap.With(d => d with { Source = still }) with { Horizon = Duration.FromMilliseconds(40) };
        GapRun pieces = gap.Solve(Coarse), plates = gap.With(d => d with { Source = booster }).Solve(Coarse);
        foreach (double t in (double[])[20, 25, 30, 35, 40])
        {
            GapSnapshot a = pieces.At(Duration.FromMilliseconds(t)), b = plates.At(Duration.FromMilliseconds(t));
            Assert.InRange((a.GapPressure.Pascals - 101325) / (b.GapPressure.Pascals - 101325) - 1, -0.01, 0.01);
        }
    }

    /// <summary>The shorter the tube, the less it matters how fast they fly.</summary>
    [Fact]
    public void In_a_short_tube_their_speed_does_not_matter()
    {
        double last = double.PositiveInfinity;
        foreach (double length in (double[])[80, 20, 5])
        {
            GapProblem Short(double speed) => ThrownGaps.At(speed).With(d => d with
            {
                Tube = Bench.Tube(length),
                Vents = [Bench.Hole(Bench.Tube(80), 2) with { Station = Length.FromMillimeters(0.5 * length) }],
            }) with
            { Horizon = Duration.FromMilliseconds(15) };
            var twenty = new GapModel.OneDimensional { Cells = 20 };
            GapRun slow = Short(15).Solve(twenty), fast = Short(120).Solve(twenty);
            double difference = Enumerable.Range(2, 13).Max(t =>
                Math.Abs(slow.At(Duration.FromMilliseconds(t)).GapPressure / fast.At(Duration.FromMilliseconds(t)).GapPressure - 1));
            Assert.True(difference < last, $"{length} mm: {difference:E2} after {last:E2}");
            last = difference;
        }

        Assert.InRange(last, 0, 0.005);
    }

    /// <summary>Openings wider than a piece lose what flies past them: all of the ring and, of what is then unburnt of the pieces, the share kept.</summary>
    [Fact]
    public void What_is_given_is_the_ring_and_what_no_opening_has_lost()
    {
        GapSource.EndBurner motor = ThrownGaps.Strong with
        {
            Rate = ThrownGaps.Rate(12, 0),
            RadialCracks = 20,
            PieceSpeed = Speed.FromMetersPerSecond(40),
            FreshFaceDelay = Duration.FromMilliseconds(1.234),
        };
        GapProblem gap = ThrownGaps.Gap.With(d => d with { Source = motor, Vents = [Bench.Hole(d.Tube, 6, 2) with { Station = Length.FromMillimeters(80) }] });
        BurnThroughEstimate broken = motor.BurnThrough();
        PieceParameters pieces = GapToSi.ToSi(gap).Chambers[0].Pieces!;
        Assert.InRange(pieces.Kept, 0.01, 0.99);
        Assert.True(broken.RingMass > broken.PieceMass);
        double before = pieces.Burning<Real>(1, 0) * pieces.FreshAt + pieces.Burning<Real>(1, 1) * (pieces.LostAt - pieces.FreshAt);
        Assert.True(pieces.FreshAt < pieces.LostAt && before < pieces.Mass, "some are left to be lost");
        GapRun run = gap.Solve(Coarse);
        run.Closes();
        Assert.NotNull(run.TimeOf(GapEventKind.SourceEnded));
        double expected = broken.RingMass.Kilograms + before + pieces.Kept * (pieces.Mass - before);
        Assert.Equal(1, run.Ledger.Burnt.Kilograms / expected, 1e-12);
    }

    /// <summary>
    /// A short tube and a slow source, products that differ from air in temperature only, no heat loss: one pressure everywhere, whatever mixes. The lumped model then says the same. Observed:
    /// 0.3 % in the peak.
    /// </summary>
    [Theory]
    [InlineData(3, 40)]
    [InlineData(10, 40)]
    [InlineData(3, 60)]
    public void Where_both_apply_the_lumped_model_agrees(double speed, double length)
    {
        GapProblem gap = ThrownGaps.Gap.With(d => d with
        {
            Tube = Bench.Tube(length),
            Vents = [Bench.Hole(Bench.Tube(length), 5)],
            Source = ThrownGaps.Motor with
            {
                Products = Bench.Adiabatic.Motor().Products,
                PieceSpeed = Speed.FromMetersPerSecond(speed),
                FreshFaceDelay = Duration.FromMilliseconds(6),
            },
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        });
        GapRun resolved = gap.Solve(Coarse), lumped = gap.Solve();
        Assert.Equal(1, resolved.PeakGaugePressure / lumped.PeakGaugePressure, 0.01);
        Assert.Equal(1, resolved.TimeOf(GapEventKind.SourceEnded)!.Value / lumped.TimeOf(GapEventKind.SourceEnded)!.Value, 0.01);
        Assert.Equal(lumped.TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Seconds, resolved.TimeOf(GapEventKind.PiecesAtNozzle)!.Value.Seconds, 1e-6);
    }

    [Fact]
    public void A_step_with_pieces_and_a_ring_allocates_nothing()
    {
        GapProblem gap = ThrownGaps.With(m => m with { Strength = Pressure.FromMegapascals(100) });
        Assert.Equal(0, ResolvedSteps.Allocated(gap, Coarse, JointPhase.Held, acceleration: 0));
    }
}
