using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// The marched grain surface of whole gap runs against Duhamel's integral taken directly over the flux history of the same run: a second
/// implementation that shares nothing with the sum of exponentials.
/// </summary>
public class DuhamelTwin
{
    [Theory]
    [InlineData(120, 4, 4)]
    [InlineData(250, 5, 4)]
    [InlineData(250, 6, 1)]
    [InlineData(60, 3, 2)]
    public void Surface_along_a_run(double length, double diameter, int count)
    {
        GapRun run = Problem(length, diameter, count).Solve();
        UpperGrain grain = run.Problem.Design.Grain;
        double e = Math.Sqrt(grain.Conductivity.WattsPerMeterKelvin * grain.Density.KilogramsPerCubicMeter * grain.HeatCapacity.JoulesPerKilogramKelvin);
        double end = run.End.Seconds, worst = 0;
        for (int k = 1; k <= 8; k++)
        {
            // On the marks of the march, where its temperature is not interpolated.
            double t = Math.Floor(k * end / 8 / Mark) * Mark;
            double ours = (run.At(Duration.FromSeconds(t)).GrainSurface - grain.InitialTemperature).Kelvins;
            double direct = Direct(s => Flux(run, s), t) / e;
            // The march takes the flux as linear between marks h apart: it errs by h^2/12 q'' on the mean. 1e-6 is its kernel.
            double linear = Direct(s => Mark * Mark / 12 * Math.Abs(Curvature(run, s, end)), t) / e;
            double allowed = 2 * linear + 1e-6 * direct + 1e-6;
            Assert.InRange(ours - direct, -allowed, allowed);
            worst = Math.Max(worst, Math.Abs(ours - direct));
        }

        // What that comes to, over the greatest rise: h^2/(12 tau^2) for a flux that comes up within tau, 8e-6 for 2 ms; twice that for its foot.
        Assert.InRange(worst / (run.PeakGrainSurface - grain.InitialTemperature).Kelvins, 0, 1.6e-5);
    }

    /// <summary>Interval of the march [s].</summary>
    private const double Mark = IgnitionTracker.Interval;

    /// <summary>1/sqrt(pi) times the integral of q(s)/sqrt(t - s): with u = sqrt(t - s) a smooth integrand, by Simpson's rule on 4000 pieces.</summary>
    private static double Direct(Func<double, double> q, double t)
    {
        const int n = 4000;
        double h = Math.Sqrt(t) / n, sum = 0;
        for (int i = 0; i <= n; i++)
        {
            double u = i * h;
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * q(Math.Max(0, t - u * u));
        }

        return 2 / Math.Sqrt(Math.PI) * sum * h / 3;
    }

    private static double Flux(GapRun run, double s)
    {
        GapSnapshot now = run.At(Duration.FromSeconds(s));
        return now.Convection.WattsPerSquareMeter + now.Radiation.WattsPerSquareMeter + now.Particles.WattsPerSquareMeter;
    }

    private static double Curvature(GapRun run, double s, double end)
    {
        double at = Math.Clamp(s, Mark, end - Mark);
        return (Flux(run, at + Mark) - 2 * Flux(run, at) + Flux(run, at - Mark)) / (Mark * Mark);
    }

    private static GapProblem Problem(double length, double diameter, int count)
    {
        // A pulse: pieces that arrive, and faces that take fire, make corners in the flux that no march of marks can follow to second order.
        GapProblem start = StartingGaps.Bore18mm.With(source: GapRk4Twin.Booster);
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(length) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(diameter), WallThickness = Length.FromMillimeters(0.5), Count = count };
        return start with { Design = start.Design with { Tube = tube, Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))] } };
    }
}
