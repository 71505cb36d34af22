using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>The settled descent against the full equation.</summary>
public class QuasiSteadyDescentTests
{
    private const double G = 9.80665, Radius = 6_356_766;

    [Theory]
    [InlineData(0.063, 0.05, 628, 1)]
    [InlineData(0.063, 0.05, 628, 0.75)]
    [InlineData(0.063, 0.05, 628, 6)]
    [InlineData(0.035, 0.003, 80, 1)]
    [InlineData(0.035, 0.003, 80, 0.71)]
    [InlineData(0.035, 0.003, 80, 2)]
    [InlineData(0.5, 0.8, 3000, 1.5)]
    [InlineData(0.06, 0.06, 12_000, 1)]
    public void Agrees_with_the_full_equation(double mass, double area, double height, double overSettled)
    {
        var site = new SiteColumn(StandardAtmosphere.Us1976, 100, G, Radius);
        var law = new DescentLaw(site, area / mass);
        double v0 = -Math.Sqrt(SteadyDescent.At(law, height).SpeedSquared) * overSettled;
        Assert.True(SteadyDescent.At(law, height).Settles);
        (double time, double velocity, _) = QuasiSteadyDescent.ToGround(law, 0, height, v0, new DenseTrack(2, Tsitouras54.DenseDegree));

        var piece = new FlightSegment { Push = new Propulsion { Mass0 = mass }, Line = DragSegment.Fixed(area / 2), Rise = 1, GravityShare = 1, ThrustSign = -1 };
        var system = new TrajectorySystem(site, piece, PhaseEvents.Falling);
        var full = new Integrator<Tsitouras54>(new SolverOptions { RelativeTolerance = 1e-12, ScaledAbsoluteTolerance = 1e-13 }, [100, 100]);
        full.State[0] = height;
        full.State[1] = v0;
        Assert.Equal(PhaseEnd.Event, full.Run(ref system, 1e5, cancel: TestContext.Current.CancellationToken));
        Assert.Equal(full.Time, time, (height > 11_000 ? 1e-8 : 1e-9) * full.Time + 2e-9);
        Assert.Equal(full.State[1], velocity, 1e-8 * Math.Abs(full.State[1]));
    }

    /// <summary>In air that thins exponentially, under one gravity, v^2 = g/k (1 + e + 2 e^2 + 6 e^3 + ...) with e = 1/(2 k H): the exponential integral by parts.</summary>
    [Theory]
    [InlineData(0.01)]
    [InlineData(0.05)]
    [InlineData(0.1)]
    public void In_exponential_air_the_settled_speed_is_the_series_of_the_exponential_integral(double e)
    {
        const double rho = 1.2, H = 8000, h = 300;
        double perMass = 1 / (e * rho * Math.Exp(-h / H) * H);
        var site = new SiteColumn(new Exponential(rho, H), 0, G, double.PositiveInfinity);
        Assert.Equal(2 * G * e * H * (1 + e + 2 * e * e + 6 * e * e * e), SteadyDescent.At(new DescentLaw(site, perMass), h).SpeedSquared, 1e-8 * G * e * H);
    }

    /// <summary>Opening at five times the settled speed: the record follows the full equation through the deceleration too.</summary>
    [Fact]
    public void The_record_follows_the_settling()
    {
        var site = new SiteColumn(StandardAtmosphere.Us1976, 0, G, Radius);
        var law = new DescentLaw(site, 0.05 / 0.063);
        var track = new DenseTrack(2, Tsitouras54.DenseDegree);
        double v0 = -5 * Math.Sqrt(SteadyDescent.At(law, 300).SpeedSquared);
        QuasiSteadyDescent.ToGround(law, 0, 300, v0, track);
        var piece = new FlightSegment { Push = new Propulsion { Mass0 = 0.063 }, Line = DragSegment.Fixed(0.025), Rise = 1, GravityShare = 1, ThrustSign = -1 };
        var system = new TrajectorySystem(site, piece, PhaseEvents.Falling);
        var full = new Integrator<Tsitouras54>(new SolverOptions { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-12 }, [100, 100]);
        full.State[0] = 300;
        full.State[1] = v0;
        double[] y = new double[2];
        for (double t = 0.01; t < 3; t += 0.0317)
        {
            full.Run(ref system, t, cancel: TestContext.Current.CancellationToken);
            track.At(t, y);
            Assert.Equal(full.State[0], y[0], 5e-4);
            Assert.Equal(full.State[1], y[1], 1e-3 * Math.Abs(full.State[1]));
        }
    }

    [Fact]
    public void The_recorded_course_follows_the_full_equation()
    {
        var site = new SiteColumn(StandardAtmosphere.Us1976, 0, G, Radius);
        var law = new DescentLaw(site, 0.05 / 0.063);
        var track = new DenseTrack(2, Tsitouras54.DenseDegree);
        double v0 = -Math.Sqrt(SteadyDescent.At(law, 900).SpeedSquared);
        QuasiSteadyDescent.ToGround(law, 5, 900, v0, track);
        var piece = new FlightSegment { Push = new Propulsion { Start = 5, Mass0 = 0.063 }, Line = DragSegment.Fixed(0.025), Rise = 1, GravityShare = 1, ThrustSign = -1 };
        var system = new TrajectorySystem(site, piece, PhaseEvents.Falling);
        var full = new Integrator<Tsitouras54>(new SolverOptions { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-12 }, [100, 100]) { Time = 5 };
        full.State[0] = 900;
        full.State[1] = v0;
        double[] y = new double[2];
        for (double t = 10; t < 190; t += 10)
        {
            full.Run(ref system, t, cancel: TestContext.Current.CancellationToken);
            track.At(t, y);
            Assert.Equal(full.State[0], y[0], 1e-6);
            Assert.Equal(full.State[1], y[1], 2e-8);
        }
    }

    [Fact]
    public void A_body_with_little_drag_is_not_followed_this_way()
    {
        var site = new SiteColumn(StandardAtmosphere.Us1976, 0, G, Radius);
        Assert.False(SteadyDescent.At(new DescentLaw(site, 2e-4 / 0.1), 300).Settles);
        Assert.False(SteadyDescent.At(new DescentLaw(new SiteColumn(new Vacuum(), 0, G, Radius), 1), 300).Settles);
    }

    /// <summary>In uniform air and gravity the settled speed is sqrt(g/k) at any height, whatever rounding leaves of the derivatives of density.</summary>
    [Theory]
    [InlineData(10, true)]
    [InlineData(990, true)]
    [InlineData(3e7, false)]
    public void In_uniform_air_the_settled_speed_is_exact_wherever_it_is_used(double length, bool settles)
    {
        var air = new UniformAtmosphere
        {
            Pressure = Pressure.FromPascals(101_325),
            Temperature = Temperature.FromKelvins(288),
            Density = Density.FromKilogramsPerCubicMeter(1.225),
            SoundSpeed = Speed.FromMetersPerSecond(340),
        };
        var law = new DescentLaw(new SiteColumn(air, 200, G, double.PositiveInfinity), 1 / (1.225 * length));
        for (double h = 0; h < 200_000; h += 97)
        {
            SteadyDescent at = SteadyDescent.At(law, h);
            Assert.Equal(settles, at.Settles);
            if (settles)
                Assert.Equal(2 * G * length, at.SpeedSquared, 1e-10 * G * length);
        }
    }

    private sealed record Vacuum : IAtmosphere
    {
        public double Floor_m => -1e6;

        public double Ceiling_m => 1e6;

        public AirSample At(double geometricAltitude_m) => new(0, 288, 0, 340);
    }

    private sealed record Exponential(double Density, double Height) : IAtmosphere
    {
        public double Floor_m => -1e4;

        public double Ceiling_m => 1e5;

        public AirSample At(double geometricAltitude_m) => new(101_325, 288, Density * Math.Exp(-geometricAltitude_m / Height), 340);
    }
}
