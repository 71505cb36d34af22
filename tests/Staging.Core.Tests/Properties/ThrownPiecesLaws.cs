using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Gaps;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Gaps.OneDimensional;
using UnitsNet;
using static Staging.Core.Tests.Properties.QuantityCases;

namespace Staging.Core.Tests.Properties;

/// <summary>Random boosters known by their grain: whole webs and rings, pieces that stay, creep and shoot, holes that lose them.</summary>
public class ThrownPiecesLaws
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 25 };

    [Property(Arbitrary = [typeof(ThrownGap)], MaxTest = 25)]
    public void The_ledgers_close_and_no_more_burns_than_there_is(GapProblem gap)
    {
        GapRun run = gap.Solve(Coarse);
        run.Closes();
        var motor = (GapSource.EndBurner)gap.Design.Source;
        BurnThroughEstimate broken = motor.BurnThrough();
        double there = (broken.PieceMass + broken.RingMass).Kilograms;
        Assert.InRange(run.Ledger.Burnt.Kilograms, 0, there * (1 + 1e-12));
        if (run.TimeOf(GapEventKind.SourceEnded) is not null)
            Assert.InRange(run.Ledger.Burnt.Kilograms, (GapToSi.ToSi(gap).Chambers[0].Pieces!.Kept * broken.PieceMass + broken.RingMass).Kilograms * (1 - 1e-12), there * (1 + 1e-12));
    }

    [Property(Arbitrary = [typeof(ThrownGap)], MaxTest = 15)]
    public void A_faster_piece_never_arrives_later(GapProblem gap)
    {
        var motor = (GapSource.EndBurner)gap.Design.Source;
        GapRun Thrown(double factor) => gap.With(d => d with { Source = motor with { PieceSpeed = factor * motor.PieceSpeed!.Value } }).Solve(Coarse);
        if (Thrown(0.6).TimeOf(GapEventKind.PiecesAtNozzle) is { } late)
            Assert.True(Thrown(1).TimeOf(GapEventKind.PiecesAtNozzle) < late);
    }
}

/// <summary>Gaps behind such boosters.</summary>
public static class ThrownGap
{
    public static Arbitrary<GapProblem> Case() => (
        from burnt in Lengths(0.01, 0.06)
        from throat in Lengths(0.0015, 0.0032)
        from strength in Pressures(1e6, 1e8)
        from exponent in Number(0, 0.5)
        from cracks in Number(2, 20)
        from fresh in Durations(0, 0.02)
        from speed in Gen.OneOf(Gen.Constant(0.0), Number(1, 60), Number(60, 300))
        from length in Number(20, 300)
        from hole in Number(2, 8)
        from station in Number(0.1, 0.9)
        from holds in Gen.Elements(8.0, 2000.0)
        let motor = ThrownGaps.Motor with
        {
            BurntLength = burnt,
            NozzleThroatDiameter = throat,
            Strength = strength,
            Rate = ThrownGaps.Rate(15, exponent),
            RadialCracks = cracks,
            FreshFaceDelay = fresh,
            PieceSpeed = Speed.FromMetersPerSecond(speed),
        }
        let gap = ThrownGaps.Gap.With(d => d with
        {
            Source = motor,
            Tube = Bench.Tube(length),
            Vents = [Bench.Hole(Bench.Tube(300), hole) with { Station = Length.FromMillimeters(station * length) }],
            Joint = Bench.Joint(holds),
        }) with
        { Horizon = Duration.FromMilliseconds(20), AfterOpening = Duration.FromMilliseconds(2) }
        where gap.Check().All(f => f.Severity != FindingSeverity.Error)
        select gap).ToArbitrary();
}
