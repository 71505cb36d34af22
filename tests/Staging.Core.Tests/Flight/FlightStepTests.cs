using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>One step, and what is read off its dense output, against what must hold for any motion.</summary>
public class FlightStepTests
{
    private const double G = 9.80665, Fast = 1024;

    /// <summary>A reach is a distance: all speeds and thrusts times a power of two, and it is as many times as far, to the last bit.</summary>
    [Fact]
    public void The_reach_grows_as_the_motion_does()
    {
        (double height, double velocity) = Pushed(1).Reach();
        (double farther, double faster) = Pushed(Fast).Reach();
        Assert.Equal((Fast * height, Fast * velocity), (farther, faster));

        static FlightStep Pushed(double times) => Stepped(
            new Propulsion { Mass0 = 1, Thrust0 = 3 * times, ThrustSlope = 50 * times }, DragSegment.Fixed(0), 0, 2 * times, 0.7);
    }

    /// <summary>Strong drag, thrust that falls, a turn within the step: no point of the dense output is farther off than the reach or outside the hull.</summary>
    [Theory]
    [InlineData(20, 0.02, 0, 0)]
    [InlineData(60, 0.05, 30, -20)]
    [InlineData(5, 0, 0, 0)]
    [InlineData(0.1, 0.3, 40, -90)]
    public void Reach_and_hull_hold_every_point(double speed, double halfArea, double thrust, double slope)
    {
        FlightStep step = Stepped(new Propulsion { Mass0 = 1, Thrust0 = thrust, ThrustSlope = slope, MassFlow = 0.2 }, DragSegment.Fixed(halfArea), 1, speed, 1.2);
        (double far, double fast) = step.Reach();
        (double lowest, double highest, double slowest, double fastest) = step.Hull();
        for (int i = 0; i <= 100; i++)
        {
            (double h, double v) = step.At(step.H * i / 100);
            Assert.InRange(Math.Abs(h - step.Height0), 0, far);
            Assert.InRange(Math.Abs(v - step.Velocity0), 0, fast);
            Assert.InRange(h, lowest - 1e-12, highest + 1e-12);
            Assert.InRange(v, slowest - 1e-12, fastest + 1e-12);
        }
    }

    /// <summary>A difference of five points is exact for the fourth degree that the dense output has.</summary>
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.6)]
    [InlineData(1)]
    public void The_slope_is_that_of_the_dense_output(double time)
    {
        const double d = 0.05;
        FlightStep step = Stepped(new Propulsion { Mass0 = 1, Thrust0 = 40, ThrustSlope = -30 }, DragSegment.Fixed(0.05), 1, 3, 1.2);
        (double climb, double acceleration) = step.SlopeAt(time);
        ((double Height, double Velocity) a, (double Height, double Velocity) b) = (step.At(time - 2 * d), step.At(time - d));
        ((double Height, double Velocity) c, (double Height, double Velocity) e) = (step.At(time + d), step.At(time + 2 * d));
        Assert.Equal((a.Height - 8 * b.Height + 8 * c.Height - e.Height) / (12 * d), climb, 1e-10);
        Assert.Equal((a.Velocity - 8 * b.Velocity + 8 * c.Velocity - e.Velocity) / (12 * d), acceleration, 1e-10);
    }

    /// <summary>Without drag v = v0 - g t, and the integral of g/v over time is ln(v0/v), however close to the turning point.</summary>
    [Theory]
    [InlineData(20, 10)]
    [InlineData(20, 0.5)]
    [InlineData(20, 0.01)]
    [InlineData(0.5, 0.001)]
    public void A_gravity_turn_coasts_by_the_logarithm_of_the_speeds(double first, double last)
    {
        double time = (first - last) / G;
        TrajectorySystem system = Coast(new Propulsion { Mass0 = 1 }, DragSegment.Fixed(0), 1);
        var step = new FlightStep();
        step.Start(0, 0, first, ref system);
        step.Advance(ref system, time);
        Assert.Equal(Math.Log(first / last), GravityTurn.Over(ref step, ref system, time), 1e-6);
    }

    private static FlightStep Stepped(Propulsion push, DragSegment line, double gravityShare, double speed, double time)
    {
        TrajectorySystem system = Coast(push, line, gravityShare);
        var step = new FlightStep();
        step.Start(0, 0, speed, ref system);
        step.Advance(ref system, time);
        return step;
    }

    private static TrajectorySystem Coast(Propulsion push, DragSegment line, double gravityShare) => new(
        new SiteColumn(Air, 0, G, double.PositiveInfinity),
        new FlightSegment { Push = push, Line = line, Rise = 1, GravityShare = gravityShare, ThrustSign = 1 },
        PhaseEvents.Rising);

    private static UniformAtmosphere Air { get; } = new()
    {
        Pressure = Pressure.FromPascals(101_325),
        Temperature = Temperature.FromKelvins(288.15),
        Density = Density.FromKilogramsPerCubicMeter(1.2),
        SoundSpeed = Speed.FromMetersPerSecond(340),
    };
}
