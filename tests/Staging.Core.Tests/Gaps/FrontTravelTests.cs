using Staging.Core.Fronts;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Front travel read from a run.</summary>
public class FrontTravelTests
{
    private static readonly GapRun Run = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(60) }).Solve();

    private static readonly FrontTravel Travel = Run.FrontTravel(FrontMixing.Judged);

    [Fact]
    public void The_front_stands_at_a_station_when_it_arrives_there()
    {
        foreach (double mm in (double[])[20, 80, 150, 240])
        {
            Duration arrival = Travel.ArrivalAt(Length.FromMillimeters(mm))!.Value;
            // Located to 1 ns; the front moves at less than 300 m/s.
            Assert.Equal(mm, Run.At(arrival).Front.Millimeters, 1e-3 * 0.3);
        }

        Assert.Null(Travel.ArrivalAt(Length.FromMeters(5)));
    }

    [Fact]
    public void Arrivals_come_in_the_order_of_their_stations()
    {
        double before = 0;
        for (double mm = 10; mm < 245; mm += 10)
        {
            double t = Travel.ArrivalAt(Length.FromMillimeters(mm))!.Value.Seconds;
            Assert.True(t > before);
            before = t;
        }
    }

    [Fact]
    public void Speeds_add_up_to_the_way()
    {
        (ReadOnlyMemory<double> time, ReadOnlyMemory<double> front, ReadOnlyMemory<double> speed, _, _) = Travel.Sample(Duration.FromMicroseconds(5));
        double way = 0;
        for (int i = 1; i < time.Length; i++)
            way += 0.5 * (speed.Span[i] + speed.Span[i - 1]) * (time.Span[i] - time.Span[i - 1]);
        // Trapezoids over 5 microseconds and speeds from a difference over 10.
        Assert.Equal(front.Span[^1] - front.Span[0], way, 1e-4);
    }

    [Fact]
    public void The_wall_takes_what_the_ledger_says_it_takes()
    {
        // Energy that left = vents + nozzle + wall + work; without vents, nozzle and joint only the wall is left, of tube and dead end.
        GapRun closed = Bench.Gap.With(d => d with
        {
            Vents = [],
            Joint = Bench.Joint(2000),
            Source = d.Motor() with { NozzleThroatDiameter = Length.Zero },
            Grain = d.Grain with { RecessVolume = Volume.FromCubicMillimeters(1) },
        }).Solve();
        FrontTravel travel = closed.FrontTravel(FrontMixing.Judged);
        double wall = travel.HeatLostBy(closed.End).Joules, energyOut = EnergyOut(closed);
        // The bottom of the bore beyond the last vent counts as dead end: pi/4 D^2 times the flux, less than its value at flame temperature throughout.
        double bottom = new WallExchange(200, 0.5, 288.15).Coefficient<Real>(1990, 1).Value * Math.PI / 4 * 0.018 * 0.018 * 1700 * closed.End.Seconds;
        Assert.InRange(energyOut - wall, -1e-3 * wall, bottom);
        Assert.InRange(travel.ShareLostBy(closed.End), 0.05, 0.95);
    }

    /// <summary>A sliding joint lengthens the first bore: its wall takes heat too, and what else has left is work on the joint.</summary>
    [Theory]
    [InlineData(24)]
    [InlineData(14)]
    public void In_a_stepped_bore_wall_and_joint_take_what_the_ledger_says(double second)
    {
        GapRun closed = (Bench.Gap with
        {
            Bodies = Bench.Gap.Bodies with { MassAhead = Mass.FromKilograms(1), MassBehind = Mass.FromKilograms(1) },
            Horizon = Duration.FromMilliseconds(25),
        }).With(d => d with
        {
            Tube = d.Tube with { Steps = [new BoreStep { Station = Length.FromMillimeters(125), Bore = Length.FromMillimeters(second) }] },
            Vents = [],
            Joint = Bench.Joint(1, engagement: 100),
            Source = d.Motor() with { NozzleThroatDiameter = Length.Zero },
            Grain = d.Grain with { RecessVolume = Volume.FromCubicMillimeters(1) },
        }).Solve();
        GapColumns course = closed.Sample(Duration.FromMicroseconds(10));
        ReadOnlySpan<double> pressure = course[GapChannel.GapPressure].Span, slid = course[GapChannel.JointTravel].Span;
        double work = 0, area = Math.PI / 4 * 0.018 * 0.018;
        for (int i = 1; i < slid.Length; i++)
            work += 0.5 * (pressure[i] + pressure[i - 1]) * area * (slid[i] - slid[i - 1]);
        Assert.InRange(slid[^1], 0.01, 0.1);
        double wall = closed.FrontTravel(FrontMixing.Judged).HeatLostBy(closed.End).Joules, left = EnergyOut(closed) - work - wall;
        double bottom = new WallExchange(200, 0.5, 288.15).Coefficient<Real>(1990, 1).Value * Math.PI / 4e6 * second * second * 1700 * closed.End.Seconds;
        Assert.InRange(left, -1e-3 * wall, bottom);
    }

    [Fact]
    public void A_longer_way_loses_more_and_mixes_more()
    {
        (ReadOnlyMemory<double> time, ReadOnlyMemory<double> front, _, ReadOnlyMemory<double> thickness, ReadOnlyMemory<double> heat) = Travel.Sample(Duration.FromMilliseconds(0.5));
        for (int i = 1; i < time.Length; i++)
        {
            Assert.True(heat.Span[i] >= heat.Span[i - 1]);
            Assert.Equal(front.Span[i] >= front.Span[i - 1], thickness.Span[i] >= thickness.Span[i - 1]);
        }

        Assert.Equal(heat.Span[^1], Travel.HeatLostBy(Run.End).Joules, 1e-6 * heat.Span[^1]);
    }

    private static double EnergyOut(GapRun run)
    {
        var course = (LumpedHistory)run.Course;
        double[] y = new double[course.Parameters.StateCount];
        course.Track.At(run.End.Seconds, y);
        return y[StateLayout.EnergyOut];
    }
}
