using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Lumped;

/// <summary>Air ahead of the front that the vents have taken but for less than the tolerance is no parcel any more.</summary>
public class SpentAirTests
{
    /// <summary>Thin air and a thin front half-way up the tube leave nothing ahead of it.</summary>
    private static readonly GapProblem Swept = (StartingGaps.Bore18mm with
    {
        Surroundings = StartingGaps.Bore18mm.Surroundings with { Pressure = Pressure.FromPascals(100) },
    }).With(d => d with
    {
        Tube = d.Tube with { Length = Length.FromMillimeters(180) },
        Vents = [new Vent { Station = Length.FromMillimeters(90), Holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 2 } }],
        MixingAndHeat = d.MixingAndHeat with { FrontThicknessInBores = 0.06 },
        Joint = Bench.Joint(2000),
        Source = StartingGaps.Booster with { BurntLength = Length.FromMillimeters(10), Rate = StartingGaps.Booster.Rate with { PressureExponent = 0.05 } },
    });

    [Fact]
    public void It_goes_to_the_products_and_nothing_is_lost()
    {
        GapRun run = Swept.Solve();
        Assert.Null(run.Failure);
        (double before, double after) = Ends(run, out bool isAllHot);
        Assert.True(isAllHot);
        Assert.True(before > 0);
        Assert.Equal(0, after);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    /// <summary>What it comes to does not hang on the tolerance that says when.</summary>
    [Fact]
    public void Outcome_and_peaks_are_those_of_a_finer_tolerance()
    {
        GapRun usual = Swept.Solve(), fine = Swept.Solve(options: new() { RelativeTolerance = 1e-9, ScaledAbsoluteTolerance = 1e-11 });
        Assert.Equal(fine.Outcome.GetType(), usual.Outcome.GetType());
        Assert.Equal(fine.Events.Select(e => e.Kind), usual.Events.Select(e => e.Kind));
        Assert.InRange(usual.PeakGaugePressure / fine.PeakGaugePressure - 1, -1e-4, 1e-4);
        Assert.InRange(usual.PeakGrainSurface.Kelvins / fine.PeakGrainSurface.Kelvins - 1, -1e-4, 1e-4);
    }

    /// <summary>
    /// Air that narrow fronts and thin air leave ahead of the products is gas until it goes to them: never colder than the air outside that was
    /// pressed to the highest pressure and expands back, never hotter than what heats it.
    /// </summary>
    [Theory]
    [InlineData(20, 2, 0.05)]
    [InlineData(20, 20, 0.05)]
    [InlineData(90, 20, 0.05)]
    [InlineData(90, 2, 0.06)]
    public void Until_it_goes_it_is_as_warm_as_gas_can_be(double station, int holes, double bores)
    {
        GapProblem gap = Swept.With(d => d with
        {
            Vents = [new Vent { Station = Length.FromMillimeters(station), Holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = holes } }],
            MixingAndHeat = d.MixingAndHeat with { FrontThicknessInBores = bores },
            Source = StartingGaps.Booster,
        });
        foreach (SolverOptions options in (SolverOptions[])[SolverOptions.ForGaps, new() { RelativeTolerance = 1e-4, ScaledAbsoluteTolerance = 1e-7 }])
        {
            GapRun run = Bench.SolvedThoughImpossible(gap, options: options);
            Assert.Null(run.Failure);
            var course = (LumpedHistory)run.Course;
            GapParameters p = course.Parameters;
            double expanded = p.OutsideTemperature * Math.Pow(p.OutsidePressure / (p.OutsidePressure + run.PeakGaugePressure.Pascals), 1 - 1 / p.Air.Gamma);
            var y = new double[p.StateCount];
            for (int i = 0; i < course.Track.Count; i++)
            {
                course.Track.InStep(i, course.Track.StartOf(i), y);
                var now = new GapState<Real>(p, new StateVector<Real>(y));
                if (!now.IsAllHot)
                    Assert.InRange(now.ZoneAt(StateLayout.Cold).Temperature.Value, expanded, p.Chambers[0].FlameTemperature);
            }
        }
    }

    /// <summary>A front thinner than what is left of the air is at the vent when that goes.</summary>
    [Fact]
    public void The_front_arrives_with_the_last_of_the_air()
    {
        GapProblem tube = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(2000),
            Vents = [new Vent { Station = Length.FromMillimeters(600), Holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 } }],
            MixingAndHeat = d.MixingAndHeat with { FrontThicknessInBores = 0.05 },
            Joint = Bench.Joint(2000),
        });
        GapRun coarse = tube.Solve(options: new() { RelativeTolerance = 1e-3, ScaledAbsoluteTolerance = 1e-5 }), fine = tube.Solve();
        Ends(coarse, out bool isAllHot);
        Assert.True(isAllHot);
        Assert.Equal(fine.Events.Select(e => e.Kind), coarse.Events.Select(e => e.Kind));
        double exact = fine.Events.Single(e => e.Kind == GapEventKind.FrontAtLastVent).Time.Seconds;
        Assert.Equal(exact, coarse.Events.Single(e => e.Kind == GapEventKind.FrontAtLastVent).Time.Seconds, 0.01 * exact);
    }

    [Fact]
    public void An_emptied_parcel_takes_part_in_nothing()
    {
        GapParameters p = GapToSi.ToSi(Swept);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        y.AsSpan(StateLayout.Cold, StateLayout.Parcel).Clear();
        y[StateLayout.Hot + 1] *= 1000;
        y[StateLayout.Hot + 2] *= 1100;
        var now = new GapState<Real>(p, new StateVector<Real>(y));
        Assert.Equal((1, 1), (now.ShareOfHot.Value, now.ShareOfHotAtBooster.Value));
        Assert.All(Bench.Slopes(p, y)[StateLayout.Cold..(StateLayout.Cold + StateLayout.Parcel)], slope => Assert.Equal(0, slope));
    }

    /// <summary>Energy ahead of the front at the start and at the end of a run [J].</summary>
    private static (double Before, double After) Ends(GapRun run, out bool isAllHot)
    {
        var course = (LumpedHistory)run.Course;
        double[] first = new double[course.Parameters.StateCount], last = new double[course.Parameters.StateCount];
        course.Track.At(0, first);
        course.Track.At(run.End.Seconds, last);
        isAllHot = new GapState<Real>(course.Parameters, new StateVector<Real>(last)).IsAllHot;
        return (first[StateLayout.Cold + 2], last[StateLayout.Cold + 2]);
    }
}
