using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

/// <summary>Drag that is far too strong for the mass: the motion settles in microseconds, and the flight is followed all the same.</summary>
public class StiffFlightTests
{
    private const double G = 9.80665, Density = 1.2, Thrust = 8, Burn = 60;

    private static readonly UniformAtmosphere Air = new()
    {
        Pressure = Pressure.FromPascals(101_325),
        Temperature = Temperature.FromKelvins(288),
        Density = UnitsNet.Density.FromKilogramsPerCubicMeter(Density),
        SoundSpeed = Speed.FromMetersPerSecond(340),
    };

    /// <summary>Drag settles at the rate 2 sqrt(K F/m): with 1000 m2 on 100 g some 1400 1/s, so that an explicit method needs 25 000 steps a minute.</summary>
    [Fact]
    public void Under_thrust_a_sail_climbs_at_the_speed_at_which_drag_holds_the_thrust()
    {
        FlightRun run = Sail(1000).Flown(new FlightOptions { LatestTime = Seconds(200) });
        BodyFlight flight = run.Main;
        Assert.IsNotType<FlightOutcome.NotSolved>(flight.Outcome);
        FlightState burning = flight.At(Seconds(0.5 * Burn));
        double left = Thrust - burning.Mass.Kilograms * G, settled = Math.Sqrt(left / (0.5 * Density * 1000));
        // As propellant burns the settled speed changes by a part in ten thousand of itself a second, the lag is a millisecond of that.
        Assert.InRange(burning.Velocity.MetersPerSecond / settled - 1, -1e-6, 1e-6);
        Assert.True(run.Statistics.AcceptedSteps < 5000, $"{run.Statistics.AcceptedSteps} steps");
        Assert.InRange(run.MassResidual(), -1e-12, 1e-12);
    }

    [Fact]
    public void Without_thrust_it_sinks_at_the_speed_at_which_drag_holds_the_weight()
    {
        BodyFlight flight = Sail(1000).Flown(new FlightOptions { LatestTime = Seconds(200) }).Main;
        double height = Assert.IsType<FlightOutcome.StillAloft>(flight.Outcome).Height.Meters;
        FlightState before = flight.At(Seconds(100));
        double settled = Math.Sqrt(before.Mass.Kilograms * G / (0.5 * Density * 1000));
        Assert.Equal(before.Height.Meters - 100 * settled, height, 1e-6);
        Assert.Equal(-settled, before.Velocity.MetersPerSecond, 1e-8);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    public void Both_methods_fly_the_same_way(double area)
    {
        FlightSegment segment = Segment(area);
        var site = new SiteColumn(StandardAtmosphere.Us1976, 200, G, 6_356_766);
        (double h, double v, int steps) = Flown(site, segment, implicitly: false);
        (double hImplicit, double vImplicit, int stepsImplicit) = Flown(site, segment, implicitly: true);
        Assert.Equal(h, hImplicit, 1e-6 * h);
        Assert.Equal(v, vImplicit, 1e-6 * v);
        Assert.True(stepsImplicit < steps || area < 30);
    }

    [Fact]
    public void Its_derivatives_are_those_of_the_acceleration()
    {
        var site = new SiteColumn(StandardAtmosphere.Us1976, 200, G, 6_356_766);
        FlightSegment segment = Segment(3) with { Line = new DragSegment(1.5, 0.7, 0, 2) };
        foreach ((PhaseEvents events, double v) in (ReadOnlySpan<(PhaseEvents, double)>)[(PhaseEvents.Rising, 20), (PhaseEvents.Falling, -30)])
        {
            var system = new TrajectorySystem(site, segment, events);
            double t = 7, h = 900;
            double[] y = [h, v], slope = new double[2], jacobian = new double[4], timeSlope = new double[2];
            system.Derivative(t, y, slope);
            system.Jacobian(t, y, slope, jacobian, timeSlope);
            double byHeight = (system.Acceleration(t, h + 5, v) - system.Acceleration(t, h - 5, v)) / 10;
            double bySpeed = (system.Acceleration(t, h, v + 1e-3) - system.Acceleration(t, h, v - 1e-3)) / 2e-3;
            double byTime = (system.Acceleration(t + 1e-3, h, v) - system.Acceleration(t - 1e-3, h, v)) / 2e-3;
            Assert.Equal(0, jacobian[0]);
            Assert.Equal(segment.Rise, jacobian[1]);
            Assert.Equal(byHeight, jacobian[2], 1e-4 * Math.Abs(byHeight));
            Assert.Equal(bySpeed, jacobian[3], 1e-6 * Math.Abs(bySpeed));
            Assert.Equal(byTime, timeSlope[1], 1e-6 * Math.Abs(byTime));
        }
    }

    /// <summary>A step of the implicit method is kept for the record of a flight: the same curve of height and of velocity.</summary>
    [Fact]
    public void A_step_is_recorded_as_it_was_taken()
    {
        var system = new TrajectorySystem(new SiteColumn(StandardAtmosphere.Us1976, 200, G, 6_356_766), Segment(3), PhaseEvents.Rising);
        var taken = new DenseStep(2, 0.5, [900, 40], [20, 3, -1, 0.7, 0.3, -0.2, 0.05, 0.01]);
        var recorded = FlightStep.Of(taken, ref system);
        double[] y = new double[2];
        for (double time = 2; time <= 2.5; time += 0.0625)
        {
            taken.At(time, y);
            (double height, double velocity) = recorded.At(time);
            Assert.Equal(y[0], height, 1e-12 * y[0]);
            Assert.Equal(y[1], velocity, 1e-12 * y[1]);
        }

        Assert.Equal(y[0], recorded.HeightEnd, 1e-12 * y[0]);
        Assert.Equal(y[1], recorded.VelocityEnd, 1e-12 * y[1]);
    }

    [Fact]
    public void A_flight_of_usual_drag_takes_no_implicit_step()
    {
        SolverStatistics work = TwoStages().Flown().Statistics;
        Assert.Equal(0, work.JacobianCalls);
        Assert.True(Sail(1000).Flown().Statistics.JacobianCalls > 0);
    }

    [Fact]
    public void The_steps_of_both_methods_count_together()
    {
        FlightPlan plan = Sail(1000);
        SolverStatistics whole = plan.Flown().Statistics;
        int steps = whole.AcceptedSteps + whole.RejectedSteps;
        FlightRun cut = plan.Flown(new FlightOptions { Solver = new SolverOptions { MaxSteps = steps - 1 } });
        Assert.Equal(SolverFailureKind.TooManySteps, Assert.IsType<FlightOutcome.NotSolved>(cut.Main.Outcome).Failure.Kind);
        Assert.Equal(steps - 1, cut.Statistics.AcceptedSteps + cut.Statistics.RejectedSteps);
    }

    /// <summary>One stage of 100 g under a drag area, pushed for a minute.</summary>
    private static FlightPlan Sail(double area)
    {
        FlightPlan plan = Plan(Sustainer(new StageIgnition.AtLaunch()) with
        {
            StructureMass = Mass.FromGrams(79),
            Motor = Motor(new MotorForwardEnd.Plugged(), ThrustHistory.FromColumns([0, Burn], [Thrust, Thrust])),
            Drag = DragTable.Constant(Area.FromSquareMeters(area), 1),
            Recovery = Recovery.Ballistic,
        });
        return plan with { Site = plan.Site with { Atmosphere = Air, Gravity = new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(G), Radius = null } } };
    }

    private static FlightSegment Segment(double area) => new()
    {
        Push = new Propulsion { Mass0 = 0.1, Thrust0 = 6, ThrustSlope = -0.1, MassFlow = 1e-3, HalfMassFlowSlope = -1e-5 },
        Line = DragSegment.Fixed(0.5 * area),
        Rise = 1,
        GravityShare = 1,
        ThrustSign = 1,
    };

    private static (double Height, double Velocity, int Steps) Flown(SiteColumn site, FlightSegment segment, bool implicitly)
    {
        var options = new SolverOptions { RelativeTolerance = 1e-9, ScaledAbsoluteTolerance = 1e-11 };
        var stepper = new FlightStepper(options, 100, 100) { Height = 10, Velocity = 1 };
        var stiff = new StiffFlight(options, 100, 100, stepper.Budget);
        var system = new TrajectorySystem(site, segment, PhaseEvents.Rising);
        var log = new BodyRecorder(keepTrack: true);
        log.Begin(segment, rising: true, 10, 1);
        PhaseEnd end = implicitly
            ? stiff.Run(ref system, stepper, 30, log, TestContext.Current.CancellationToken)
            : stepper.Run(ref system, 30, log, TestContext.Current.CancellationToken);
        Assert.Equal(PhaseEnd.StopTime, end);
        Assert.Equal(30, log.Track!.End);
        return (stepper.Height, stepper.Velocity, stepper.Statistics.Steps + stiff.Statistics.Steps);
    }
}
