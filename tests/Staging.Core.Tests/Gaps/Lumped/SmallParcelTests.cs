using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Lumped;

/// <summary>A volume of a thousandth or less of the gap costs no more steps than the gap does, wherever it lies.</summary>
public class SmallParcelTests
{
    private static readonly VentHoles Holes = new() { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 1 };

    [Theory]
    [InlineData(20, 1e-2)]
    [InlineData(0.1, 1e-4)]
    [InlineData(0.01, 1e-5)]
    public void A_jacket_behind_a_jacket_follows_it(double cubicCentimetres, double lag)
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(30)).With(d => d with
        {
            Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("near") }],
            Jackets =
            [
                Closed("near", 20) with { Openings = [new() { Holes = Holes, To = VentTarget.IntoJacket("far") }, new() { Holes = Holes, To = VentTarget.Air }] },
                Closed("far", cubicCentimetres),
            ],
        });
        GapRun run = gap.Solve();
        Assert.InRange(run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps, 100, 3000);
        GapSnapshot end = run.At(run.End);
        Assert.InRange(end.JacketPressures[1] / end.JacketPressures[0] - 1, -lag, lag);
    }

    /// <summary>Holes count on both of their sides: 28 mm2 that lead in from another jacket need 2.8 mm3 behind them.</summary>
    [Theory]
    [InlineData(0.0027, true)]
    [InlineData(0.0029, false)]
    public void A_jacket_needs_depth_behind_the_holes_of_another(double cubicCentimetres, bool refused)
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Jackets = [Closed("near", 20) with { Openings = [new() { Holes = Holes, To = VentTarget.IntoJacket("far") }] }, Closed("far", cubicCentimetres)],
        });
        Assert.Equal(refused, gap.Check().Any(f => f is { Code: "GAP037", Path: "Jackets[1].Volume" }));
    }

    /// <summary>A throat of 3.5 mm and an opening of 18 mm, 264 mm2 in all.</summary>
    [Theory]
    [InlineData(26, true)]
    [InlineData(27, false)]
    public void A_chamber_needs_depth_behind_throat_and_opening(double cubicMillimetres, bool refused)
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(18), ChamberVolume = Volume.FromCubicMillimeters(cubicMillimetres) },
        });
        Assert.Equal(refused, gap.Check().Any(f => f is { Code: "GAP037", Path: "Source.ChamberVolume" }));
    }

    /// <summary>Holes up to the nozzle plane leave the recess before the grain: less than a micrometre of it is none.</summary>
    [Theory]
    [InlineData(1.9, true)]
    [InlineData(2, false)]
    public void Gas_stands_before_the_grain(double cubicMillimetres, bool refused)
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Grain = d.Grain with { RecessVolume = Volume.FromCubicMillimeters(cubicMillimetres) },
            Tube = d.Tube with { Bore = Length.FromMillimeters(50) },
            Vents = [d.Vents[0] with { Station = d.Tube.Length }],
        });
        Assert.Equal(refused, gap.Check().Any(f => f is { Code: "GAP037", Path: "Grain.RecessVolume" }));
    }

    /// <summary>Square metres of wall round a thousandth of a cubic centimetre settle within nanoseconds, which the choice beforehand does not see.</summary>
    [Fact]
    public void A_phase_that_stability_binds_goes_on_implicitly()
    {
        GapProblem walled = Bench.Gap.With(d => d with
        {
            Jackets =
            [
                Closed("walled", 0.001) with { WallArea = Area.FromSquareCentimeters(1e5), Openings = [new() { Holes = Holes with { Diameter = Length.FromMillimeters(0.2) }, To = VentTarget.Air }] },
            ],
        });
        GapRun run = walled.Solve();
        Assert.Null(run.Failure);
        Assert.InRange(run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps, 100, 300);
        Assert.True(run.Statistics.JacobianCalls > 0);
        GapRun plain = Bench.Gap.Solve();
        Assert.Equal(plain.Events.Select(e => e.Kind), run.Events.Select(e => e.Kind));
        Assert.InRange(run.PeakGaugePressure / plain.PeakGaugePressure - 1, -1e-4, 1e-4);
    }

    [Fact]
    public void Errors_of_a_small_parcel_are_measured_by_its_own_content_and_of_others_by_that_of_the_gap()
    {
        GapProblem gap = Bench.Gap.With(d => d with { Jackets = [Closed("small", 0.01) with { Openings = [new() { Holes = Holes, To = VentTarget.Air }] }] });
        GapParameters p = GapToSi.ToSi(gap);
        double[] scales = GapToSi.Scales(p);
        double density = p.OutsidePressure / (p.Air.R * p.OutsideTemperature);
        Assert.Equal(density * (p.TubeVolume + p.DeadEndVolume), scales[StateLayout.Hot], 1e-15);
        Assert.Equal(100 * density * 1e-8, scales[p.Jackets[0].At], 1e-15 * 1e-6);
    }

    private static Jacket Closed(string name, double cubicCentimetres) => new()
    {
        Name = name,
        Volume = Volume.FromCubicCentimeters(cubicCentimetres),
        WallArea = Area.FromSquareCentimeters(0.1),
        Openings = [],
    };
}
