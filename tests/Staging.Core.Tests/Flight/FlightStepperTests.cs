using System.Reflection;
using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>The stepper written out for two states against the general integrator: the same steps and the same events, bit for bit.</summary>
public class FlightStepperTests
{
    private const double G = 9.80665, Radius = 6_356_766, Scale = 100;

    [Theory]
    [InlineData(1e-5, 90)]
    [InlineData(1e-8, 90)]
    [InlineData(1e-11, 90)]
    [InlineData(1e-5, 80)]
    [InlineData(1e-8, 80)]
    [InlineData(1e-11, 80)]
    public void A_whole_flight_takes_the_same_steps_and_meets_the_same_events(double tolerance, double elevation)
    {
        // The pieces of a real flight from the guide to the canopy, flown again by both hands.
        FlightPlan plan = TestFlights.TwoStages() with
        {
            Guide = new LaunchGuide
            {
                Length = Length.FromMeters(1),
                Elevation = Angle.FromDegrees(elevation),
                FrictionCoefficient = 0.3,
                ConstantFriction = Force.FromNewtons(0.2),
            },
        };
        var site = new SiteColumn(StandardAtmosphere.Us1976, 200, G, Radius);
        Pair pair = new(Options(tolerance));
        pair.Put(plan.Flown().Main.The(FlightEventKind.LiftOff).Time.Seconds, 0, 0);
        foreach ((FlightSegment piece, double stop, bool guided) in PiecesOf(plan))
        {
            PhaseEvents watch = guided ? PhaseEvents.Guide : piece.ThrustSign > 0 ? PhaseEvents.Rising : PhaseEvents.Falling;
            pair.Run(new TrajectorySystem(site, piece, watch) { GuideHeight = Math.Sin(elevation * Math.PI / 180) }, stop);
        }

        Assert.True(pair.Steps > 50);
    }

    /// <summary>Contract 1, 2, 4: up through the ceiling and down again within a step, a touch, a near miss, an upward and a downward corner of the drag table.</summary>
    [Theory]
    [InlineData(30, 1)]
    [InlineData(45.8872, 1)]
    [InlineData(45.88715, 0.25)]
    [InlineData(45.88725, 0.25)]
    [InlineData(300, 1)]
    [InlineData(45, 1)]
    public void A_throw_meets_ceiling_top_and_corners_alike(double ceiling, double longest)
    {
        var site = new SiteColumn(new Still { Ceiling_m = ceiling }, 0, G, double.PositiveInfinity);
        foreach (DragSegment line in (ReadOnlySpan<DragSegment>)[DragSegment.Fixed(0), new DragSegment(1e-6, 1e-6, 0.02, 0.05), new DragSegment(1e-6, 1e-6, 0.03, 0.2)])
        {
            Pair pair = new(Options(1e-7, longest));
            pair.Put(0, 0, 30);
            var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = line, Rise = 1, GravityShare = 1, ThrustSign = 1 };
            for (int leg = 0; leg < 4; leg++)
                pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Rising), 20);
        }
    }

    /// <summary>Contract 3: a phase that begins on a root of its event goes on, and fires at the next.</summary>
    [Fact]
    public void A_root_at_the_start_is_no_event()
    {
        var site = new SiteColumn(new Still(), 0, G, double.PositiveInfinity);
        Pair pair = new(Options(1e-8));
        pair.Put(0, 0, 0);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1, Thrust0 = 30 }, Line = DragSegment.Fixed(0), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Guide) { GuideHeight = 5 }, 9);
        Assert.Equal([0], pair.FiredIndices);
        Assert.Equal(5, pair.Height, 6);
    }

    /// <summary>Contract 2: where a function is exactly zero at the end of a step, the step after it tells whether it crossed.</summary>
    [Fact]
    public void A_root_on_the_end_of_a_step_is_not_lost()
    {
        var site = new SiteColumn(new Still(), 0, G, double.PositiveInfinity);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1, Thrust0 = 30 }, Line = DragSegment.Fixed(0.01), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        var free = new TrajectorySystem(site, piece, PhaseEvents.Guide) { GuideHeight = 1e6 };
        var stepper = new FlightStepper(Options(1e-8, 0.25), Scale, Scale) { Velocity = 1 };
        var log = new BodyRecorder(keepTrack: true);
        stepper.Run(ref free, 9, log, TestContext.Current.CancellationToken);
        double[] end = new double[2];
        log.Track!.InStep(5, log.Track.StartOf(5), end);

        Pair pair = new(Options(1e-8, 0.25));
        pair.Put(0, 0, 1);
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Guide) { GuideHeight = end[0] }, 9);
        Assert.Equal([0], pair.FiredIndices);
        Assert.Equal(log.Track.StartOf(5), pair.Time);
    }

    /// <summary>Contract 5 and 6: a corner of the drag table a microsecond above the ground; both fire, in the order of their indices, and nothing after them.</summary>
    [Fact]
    public void Events_at_one_time_all_fire_in_order()
    {
        var site = new SiteColumn(new Still(), 0, G, double.PositiveInfinity);
        Pair pair = new(Options(1e-10) with { EventTimeTolerance = Duration.FromSeconds(1e-5) });
        pair.Put(0, 50, 0);
        double impact = Math.Sqrt(2 * G * 50);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = new DragSegment(0, 0, -1, (impact - G * 1e-6) / 340), Rise = 1, GravityShare = 1, ThrustSign = -1 };
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Falling), 9);
        Assert.Equal([0, TrajectorySystem.MachAbove], pair.FiredIndices);
    }

    /// <summary>Contract 7 and 8: a stop is met exactly, a root on it fires there, and nothing is evaluated beyond it.</summary>
    [Fact]
    public void A_stop_on_a_root_fires_at_the_stop()
    {
        var site = new SiteColumn(new Still(), 0, G, double.PositiveInfinity);
        Pair pair = new(Options(1e-8));
        pair.Put(0, 0, 2 * G);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = DragSegment.Fixed(0), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Rising), 2);
        Assert.Equal(2, pair.Time);
    }

    /// <summary>Contract 9, and the other ways to fail: not a number, too many steps.</summary>
    [Theory]
    [InlineData(double.NaN, 1_000_000)]
    [InlineData(1, 4)]
    public void Both_fail_alike(double density, int steps)
    {
        var site = new SiteColumn(new Still { Density = density }, 0, G, Radius);
        Pair pair = new(Options(1e-9) with { MaxSteps = steps });
        pair.Put(0, 100, -1);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = DragSegment.Fixed(0.05), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Falling), 100);
        Assert.NotNull(pair.Failure);
    }

    /// <summary>Air that is not a number from a height on: every step across ends there, and the reason is told.</summary>
    [Fact]
    public void Both_are_stuck_alike_where_the_air_ends()
    {
        var site = new SiteColumn(new Still { Known_m = 20 }, 0, G, double.PositiveInfinity);
        Pair pair = new(Options(1e-8));
        pair.Put(0, 0, 30);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = DragSegment.Fixed(0.001), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        pair.Run(new TrajectorySystem(site, piece, PhaseEvents.Rising), 9);
        Assert.Equal(SolverFailureKind.NonFiniteState, pair.Failure!.Kind);
        Assert.Equal(20, pair.Height, 1e-9);
    }

    /// <summary>What decides whether a step is scanned at all: no point of the dense output may lie farther off than the reach says.</summary>
    [Fact]
    public void The_dense_output_stays_within_reach()
    {
        double[] bounds = [FlightStep.B2, FlightStep.B3, FlightStep.B4, FlightStep.B5, FlightStep.B6, FlightStep.B7];
        for (int stage = 1; stage < Tsitouras54.Stages; stage++)
        {
            double[] r = Tsitouras54.DenseWeights.Slice(4 * stage, 4).ToArray();
            double most = Enumerable.Range(0, 10_001).Select(i => i * 1e-4).Max(s => Math.Abs(s * (r[0] + s * (r[1] + s * (r[2] + s * r[3])))));
            Assert.InRange(most, 0.99 * bounds[stage - 1], bounds[stage - 1]);
        }
    }

    /// <summary>A step that reaches past the turning point must not meet the kink of v |v| there: its error estimate would mean nothing.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Drag_goes_on_smoothly_past_the_turning_point(bool rising)
    {
        var site = new SiteColumn(new Still(), 0, G, double.PositiveInfinity);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 1 }, Line = DragSegment.Fixed(0.05), Rise = 1, GravityShare = 1, ThrustSign = 1 };
        var system = new TrajectorySystem(site, piece, rising ? PhaseEvents.Rising : PhaseEvents.Falling);
        double atRest = system.Acceleration(0, 10, 0);
        Assert.Equal(-G, atRest);
        Assert.Equal(rising, system.Acceleration(0, 10, 3) < atRest);
        Assert.Equal(system.Acceleration(0, 10, 3), system.Acceleration(0, 10, -3));
    }

    private static SolverOptions Options(double tolerance, double longest = 1) => new()
    {
        RelativeTolerance = tolerance,
        ScaledAbsoluteTolerance = tolerance / 100,
        LongestStep = Duration.FromSeconds(longest),
    };

    /// <summary>The pieces of a flight between its stops; corners of the drag table are left to be found.</summary>
    private static IEnumerable<(FlightSegment Piece, double Stop, bool Guided)> PiecesOf(FlightPlan plan)
    {
        BodyFlight flight = plan.Flown(new FlightOptions { Scope = FlightScope.UppermostStage }).Main;
        var log = (BodyRecorder)typeof(BodyFlight).GetField("log", BindingFlags.NonPublic | BindingFlags.Instance)!.GetValue(flight)!;
        double exit = flight.The(FlightEventKind.GuideExit).Time.Seconds, settled = flight.The(FlightEventKind.Apogee).Time.Seconds + 0.3;
        for (int i = 0; i < log.Segments.Count; i++)
        {
            FlightSegment piece = log.Segments[i];
            double stop = i + 1 < log.Segments.Count ? log.Segments[i + 1].Start : settled;
            if (!piece.Held && piece.Start < settled)
                yield return (piece, Math.Min(stop, settled) + (stop == exit ? 0.01 : 0), piece.Start < exit);
        }
    }

    /// <summary>Both hands side by side; every run is compared.</summary>
    private sealed class Pair(SolverOptions options)
    {
        private readonly Integrator<Tsitouras54> general = new(options, [Scale, Scale]);
        private readonly FlightStepper special = new(options, Scale, Scale);

        public int Steps { get; private set; }

        public double Time => special.Time;

        public double Height => special.Height;

        public SolverFailure? Failure => special.Failure;

        public IEnumerable<int> FiredIndices => special.Fired.ToArray().Select(e => e.Index);

        public void Put(double time, double height, double velocity)
        {
            general.Time = special.Time = time;
            (general.State[0], general.State[1]) = (special.Height, special.Velocity) = (height, velocity);
        }

        public void Run(TrajectorySystem system, double stop)
        {
            double start = general.Time;
            TrajectorySystem other = system;
            var log = new BodyRecorder(keepTrack: true);
            var track = new DenseTrack(2, Tsitouras54.DenseDegree);
            PhaseEnd expected = general.Run(ref system, stop, track, TestContext.Current.CancellationToken);
            PhaseEnd ours = special.Run(ref other, stop, log, TestContext.Current.CancellationToken);
            Assert.Equal(expected, ours);
            Assert.Equal(general.Failure?.Kind, special.Failure?.Kind);
            Assert.Equal(general.Fired.ToArray().Select(e => e.Index), special.Fired.ToArray().Select(e => e.Index));
            foreach ((FiredEvent a, FiredEvent b) in general.Fired.ToArray().Zip(special.Fired.ToArray()))
                Assert.Equal(a.Time, b.Time);
            Assert.Equal(track.Count, log.Track!.Count);
            for (int i = 0; i < track.Count; i++)
            {
                Assert.Equal(track.StartOf(i), log.Track.StartOf(i));
                Assert.Equal(track.LengthOf(i), log.Track.LengthOf(i));
            }

            Steps += track.Count;
            Assert.Equal(general.Statistics.AcceptedSteps, special.Statistics.AcceptedSteps);
            Assert.Equal(general.Statistics.RejectedSteps, special.Statistics.RejectedSteps);
            Assert.Equal(general.Statistics.DerivativeCalls, special.Statistics.DerivativeCalls);
            Assert.Equal(general.Time, special.Time);
            Assert.Equal(general.State[0], special.Height);
            Assert.Equal(general.State[1], special.Velocity);
            Assert.True(general.Time > start || expected != PhaseEnd.Event);
        }
    }

    private sealed record Still : IAtmosphere
    {
        public double Density { get; init; } = 1.2;

        public double Floor_m => -1e4;

        public double Ceiling_m { get; init; } = 1e5;

        public double Known_m { get; init; } = double.PositiveInfinity;

        public AirSample At(double geometricAltitude_m) => new(101_325, 288, geometricAltitude_m <= Known_m ? Density : double.NaN, 340);
    }
}
