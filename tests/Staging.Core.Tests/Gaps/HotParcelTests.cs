using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Nothing draws on the products behind the front before there are any: their parcel keeps a mass, so it has a temperature.</summary>
public class HotParcelTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(4) };

    [Fact]
    public void A_front_thicker_than_its_way_to_a_wide_hole() => KeepsItsGas((Held with { DynamicPressure = Pressure.FromPascals(80) }).With(d => d with
    {
        Tube = Bench.Tube(20),
        Vents = [Hole(14, 3, 2.3), Hole(4, 6, 16) with { To = VentTarget.Outside(0.1) }],
        Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(1.5), OpeningTime = Duration.FromMilliseconds(480) },
        MixingAndHeat = d.MixingAndHeat with { FrontThicknessInBores = 4 },
    }));

    [Fact]
    public void Suction_at_wide_holes_while_the_booster_hardly_opens() => KeepsItsGas((Held with { DynamicPressure = Pressure.FromKilopascals(25) }).With(d => d with
    {
        Tube = Bench.Tube(160),
        Vents = [Hole(33, 3, 28) with { To = VentTarget.Outside(-0.2) }],
        Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(0.5), OpeningTime = Duration.FromMilliseconds(80) },
        MixingAndHeat = d.MixingAndHeat with { FrontThicknessInBores = 5 },
    }));

    [Fact]
    public void Rear_passages_far_wider_than_the_tube() => KeepsItsGas((Held with { DynamicPressure = Pressure.FromKilopascals(10) }).With(d => d with
    {
        Tube = new GuideTube { Bore = Length.FromMillimeters(3), Length = Length.FromMillimeters(1000) },
        Vents = [Hole(14, 5, 500) with { To = VentTarget.Outside(0.1) }],
        Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(0.6), OpeningTime = Duration.FromMilliseconds(0.09), NozzleThroatDiameter = Length.FromMillimeters(0.6) },
        Joint = StageJoint.FreeMotorTube(Bench.Joint(20), Mass.FromGrams(20), new VentHoles { Diameter = Length.FromMillimeters(40), WallThickness = Length.FromMillimeters(0.5), Count = 2 }),
    }));

    [Fact]
    public void A_tiny_chamber_into_which_the_gap_blows_back() => KeepsItsGas((Held with { DynamicPressure = Pressure.FromPascals(400) }).With(d =>
    {
        GapSource.Booster first = d.Motor() with
        {
            ChamberVolume = Volume.FromCubicMillimeters(11),
            ChamberPressure = Pressure.FromKilopascals(350),
            OpeningDiameter = Length.FromMillimeters(18),
            OpeningTime = Duration.FromMicroseconds(8),
            Web = d.Web() with { Mass = Mass.Zero },
        };
        return d with
        {
            Vents = [Hole(21, 3, 30) with { To = VentTarget.Outside(0.12) }],
            Source = Bench.Pair(first, d.Motor() with { OpeningDiameter = Length.FromMillimeters(2) }, 0.001),
        };
    }));

    /// <summary>The run is solved, its ledger closes, and the parcel never falls below a tenth of the slab that it began with.</summary>
    private static void KeepsItsGas(GapProblem gap)
    {
        GapRun run = Bench.SolvedThoughImpossible(gap);
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        var course = Assert.IsType<LumpedHistory>(run.Course);
        var y = new double[course.Parameters.StateCount];
        course.Track.At(0, y);
        double slab = y[StateLayout.Hot + 1];
        for (int k = 0; k <= 400; k++)
        {
            course.Track.At(run.End.Seconds * k / 400, y);
            Assert.True(y[StateLayout.Hot] + y[StateLayout.Hot + 1] > 0.1 * slab, $"{y[StateLayout.Hot] + y[StateLayout.Hot + 1]:E3} kg of {slab:E3} at {run.End.Milliseconds * k / 400:F3} ms");
            Assert.InRange(new LumpedView(course.Parameters, y).HotTemperature, 200, 2500);
        }
    }

    private static Vent Hole(double diameter, int count, double station) => new()
    {
        Station = Length.FromMillimeters(station),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count },
    };
}
