using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>A tube whose bore changes on the way.</summary>
public class SteppedBoreTests
{
    [Fact]
    public void Steps_of_the_same_bore_change_nothing()
    {
        GapProblem stepped = Bench.Gap.With(d => d with { Tube = d.Tube with { Steps = [Step(60, 18), Step(130, 18)] } });
        GapRun a = Bench.Gap.Solve(options: SolverOptions.Default), b = stepped.Solve(options: SolverOptions.Default);
        Assert.InRange(b.PeakGaugePressure / a.PeakGaugePressure - 1, -1e-9, 1e-9);
        Assert.InRange(b.TimeOf(GapEventKind.FrontAtLastVent)!.Value / a.TimeOf(GapEventKind.FrontAtLastVent)!.Value - 1, -1e-8, 1e-8);
    }

    /// <summary>The slab that the first products mix into is a part of the tube, wherever the bore steps.</summary>
    [Theory]
    [InlineData(0.001)]
    [InlineData(0.01)]
    [InlineData(1)]
    public void Behind_a_step_at_the_very_start_there_is_air_ahead_of_the_front(double millimetres)
    {
        GapProblem stepped = Bench.Gap.With(d => d with { Tube = d.Tube with { Bore = Length.FromMillimeters(200), Steps = [Step(millimetres, 6)] } });
        GapParameters p = GapToSi.ToSi(stepped);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        Assert.InRange(y[StateLayout.Cold + 1], 1e-9, double.MaxValue);
        Assert.True(new GapSystem(p, new GapPhase(JointPhase.Held, 0, 1, -1)).Holds(y));
        Assert.Null(Bench.SolvedThoughImpossible(stepped).Failure);
    }

    [Fact]
    public void Volume_and_bore_follow_the_pieces()
    {
        GuideTube tube = Bench.Tube(200) with { Steps = [Step(100, 12), Step(150, 24)] };
        double expected = Math.PI / 4 * (18 * 18 * 100 + 12 * 12 * 50 + 24 * 24 * 50);
        Assert.Equal(expected, tube.Volume.CubicMillimeters, 1e-6);
        Assert.Equal(18, tube.BoreBelow(Length.FromMillimeters(100)).Millimeters, 1e-9);
        Assert.Equal(12, tube.BoreBelow(Length.FromMillimeters(101)).Millimeters, 1e-9);
        Assert.Equal(24, tube.BoreBelow(Length.FromMillimeters(200)).Millimeters, 1e-9);
    }

    [Fact]
    public void Behind_very_large_vents_the_front_fills_the_profile_by_displacement()
    {
        // At constant pressure gamma/(gamma-1) p V = enthalpy that came in; the station follows from V piece by piece. A feed brings no chamber. The
        // pressure is the outside one but for some 1e-6, which the vents need to pass the air.
        GuideTube tube = Bench.Tube(2000) with { Steps = [Step(300, 30), Step(500, 10)] };
        GapProblem gap = Bench.Adiabatic.With(d => d with
        {
            Tube = tube,
            Vents = [new Vent { Station = Length.FromMillimeters(1940), Holes = new() { Diameter = Length.FromMillimeters(25), WallThickness = Length.FromMillimeters(0.5), Count = 1000 } }],
            Source = d.Fed([0, 0.1], [1e-3, 1e-3], [1900, 1900]),
            Joint = Bench.Joint(2000),
        }) with
        { Horizon = Duration.FromMilliseconds(60) };
        GapRun run = Bench.SolvedThoughImpossible(gap, options: new SolverOptions { RelativeTolerance = 1e-9 });
        double cp = gap.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double a1 = Math.PI / 4 * 18e-3 * 18e-3, a2 = Math.PI / 4 * 30e-3 * 30e-3, a3 = Math.PI / 4 * 10e-3 * 10e-3;
        var passed = new HashSet<int>();
        for (double t = 2e-3; t < 60e-3; t += 3e-3)
        {
            double pressure = run.At(Duration.FromSeconds(t)).GapPressure.Pascals;
            double volume = 0.018e-3 * a1 + 0.4 / (1.4 * pressure) * 1e-3 * t * cp * 1900;
            double expected = volume < 0.3 * a1 ? volume / a1 : volume < 0.3 * a1 + 0.2 * a2 ? 0.3 + (volume - 0.3 * a1) / a2 : 0.5 + (volume - 0.3 * a1 - 0.2 * a2) / a3;
            passed.Add(expected < 0.3 ? 1 : expected < 0.5 ? 2 : 3);
            Assert.InRange(run.At(Duration.FromSeconds(t)).Front.Meters / expected - 1, -2e-6, 2e-6);
        }

        Assert.Equal(3, passed.Count);
    }

    [Fact]
    public void A_station_is_found_back_from_its_volume()
    {
        BoreProfile profile = (Bench.Tube(200) with { Steps = [Step(50, 12), Step(150, 24)] }).Profile;
        for (double x = -0.02; x < 0.25; x += 0.003)
            Assert.Equal(x, profile.StationOf<Real>(profile.VolumeTo(x)), 1e-14);
    }

    [Theory]
    [InlineData(100, 90)]
    [InlineData(100, 250)]
    public void Steps_must_rise_within_the_tube(double first, double second)
    {
        GapProblem gap = Bench.Gap.With(d => d with { Tube = d.Tube with { Steps = [Step(first, 12), Step(second, 18)] } });
        Assert.Contains(gap.Check(), f => f.Code == "GAP020" && f.Path == "Tube.Steps[1].Station");
    }

    private static BoreStep Step(double station, double bore) => new() { Station = Length.FromMillimeters(station), Bore = Length.FromMillimeters(bore) };
}
