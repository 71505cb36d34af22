using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Staging.Core.Gaps;

/// <summary>
/// Surface temperature of a semi-infinite solid under a changing heat flux, marched without keeping the history.
/// Duhamel's integral theta(t) = 1/e * integral of q(s)/sqrt(pi (t - s)) ds, e = sqrt(k rho c)
/// (Carslaw and Jaeger, Conduction of Heat in Solids, 1959, section 2.9), with the kernel written as a sum of
/// exponentials: 1/sqrt(pi t) = (2/pi) * integral of exp(-s^2 t) ds over s from 0 to infinity, trapezoidal in ln s.
/// Each exponential is marched exactly for a flux that changes linearly over the step.
/// </summary>
/// <remarks>
/// The number of modes follows from an error of 1e-6 of the rise, from the first step to the longest time:
/// the trapezoidal rule errs by 2 sqrt(1/cosh(pi^2/spacing)) (transform of the integrand, |Gamma(1/2 + iy)|^2 =
/// pi/cosh(pi y)), 2e-7 here; all modes too slow to be told apart are one mode of their mean rate, 1e-7; all modes
/// faster than the step follow the flux at once, and have forgotten a jump of it to exp(-16) = 1e-7 after one step.
/// Modes carry their weights, so that a step is a few multiply-adds a lane. Four lanes are summed in one order on every
/// processor, wider or narrower, so that a run gives the same bits.
/// </remarks>
internal sealed class HeatedSurface
{
    /// <summary>Spacing of the modes in ln s.</summary>
    private const double Spacing = 0.3;

    /// <summary>
    /// s^2 times the longest time below which modes are lumped: they have fallen by half a percent at most.
    /// </summary>
    private const double Slow = 0.005;

    /// <summary>s^2 times the shortest step above which modes follow the flux at once.</summary>
    private const double Fast = 16;

    private readonly double inverseEffusivity;
    private readonly double instant;
    private readonly double lag;
    private readonly double[] rate;
    private readonly double[] weight;
    private readonly double[] mode;
    private readonly double[] decay;
    private readonly double[] oldFlux;
    private readonly double[] newFlux;
    private double oldGain;
    private double settled;
    private double step = double.NaN;

    /// <summary>A surface at rest.</summary>
    /// <param name="effusivity">Thermal effusivity sqrt(k rho c) [W s^0.5/(m2 K)].</param>
    /// <param name="shortestStep">Shortest step that will be taken [s]: sets the fastest mode.</param>
    /// <param name="longestTime">Longest time that will be marched [s]: sets the slowest mode.</param>
    public HeatedSurface(double effusivity, double shortestStep, double longestTime)
    {
        inverseEffusivity = 1 / effusivity;
        double slowestLog = 0.5 * Math.Log(Slow / longestTime), fastestLog = 0.5 * Math.Log(Fast / shortestStep);
        int resolved = (int)Math.Ceiling(Math.Max(1, (fastestLog - slowestLog) / Spacing)) + 1;
        ModeCount = resolved + 1;
        int n = (ModeCount + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;
        rate = new double[n];
        weight = new double[n];
        mode = new double[n];
        decay = new double[n];
        oldFlux = new double[n];
        newFlux = new double[n];
        const double Share = 2 / Math.PI * Spacing;
        for (int i = 0; i < resolved; i++)
        {
            double s = Math.Exp(slowestLog + i * Spacing);
            rate[i] = s * s;
            weight[i] = Share * s;
        }

        // All slower modes together: weights s and rates s^2 in geometric series; places beyond it have no weight.
        double r = Math.Exp(-Spacing), slowest = Math.Exp(slowestLog - Spacing);
        weight[resolved] = Share * slowest / (1 - r);
        rate[resolved] = slowest * slowest * (1 - r) / (1 - r * r * r);

        // All faster modes follow the flux at once, q/rate - (dq/dt)/rate^2 each: two more geometric series.
        double fastest = Math.Exp(slowestLog + resolved * Spacing);
        instant = Share / (fastest * (1 - r));
        lag = Share / (fastest * fastest * fastest * (1 - r * r * r));
    }

    /// <summary>Number of exponentials.</summary>
    public int ModeCount { get; }

    /// <summary>Rise of the surface temperature above its initial value [K].</summary>
    public double Rise { get; private set; }

    /// <summary>Heat flux at the present time [W/m2].</summary>
    public double Flux { get; private set; }

    /// <summary>Rise for each unit of flux at the end of the step prepared by <see cref="Settle"/> [K m2/W].</summary>
    public double Gain { get; private set; }

    /// <summary>Sets the flux at the start, before any step [W/m2].</summary>
    public void Start(double flux) => Flux = flux;

    /// <summary>
    /// The part of the rise after a step of size <paramref name="h"/> [s] that does not depend on the flux at its end
    /// [K]; the whole rise is this plus <see cref="Gain"/> times that flux. Nothing is advanced.
    /// </summary>
    public double Settle(double h)
    {
        if (h != step)
            Prepare(h);
        settled = inverseEffusivity * ((lag / h + oldGain) * Flux + Decayed());
        return settled;
    }

    /// <summary>
    /// Takes the step just given to <see cref="Settle"/>, over which the flux changes linearly to
    /// <paramref name="flux"/> [W/m2].
    /// </summary>
    public void Advance(double flux)
    {
        Rise = settled + Gain * flux;
        March(flux);
        Flux = flux;
    }

    private double Decayed()
    {
        ReadOnlySpan<Vector256<double>> d = Lanes(decay), m = Lanes(mode);
        Vector256<double> sum = Vector256<double>.Zero;
        for (int i = 0; i < m.Length; i++)
            sum += d[i] * m[i];
        return sum[0] + sum[1] + (sum[2] + sum[3]);
    }

    private void March(double flux)
    {
        Span<Vector256<double>> m = Lanes(mode);
        ReadOnlySpan<Vector256<double>> d = Lanes(decay), late = Lanes(newFlux), early = Lanes(oldFlux);
        for (int i = 0; i < m.Length; i++)
            m[i] = d[i] * m[i] + early[i] * Flux + late[i] * flux;
    }

    private static Span<Vector256<double>> Lanes(double[] numbers) => MemoryMarshal.Cast<double, Vector256<double>>(numbers.AsSpan());

    /// <summary>
    /// Exact integrals over a step h of exp(-lambda (h - s)), split into the shares of the old and the new flux, with
    /// the weights.
    /// </summary>
    private void Prepare(double h)
    {
        double gain = instant - lag / h, old = 0;
        for (int i = 0; i < ModeCount; i++)
        {
            double x = rate[i] * h;
            double e = Math.Exp(-x);
            double whole = x < 1e-3 ? h * (1 - x / 2 + x * x / 6) : (1 - e) / rate[i];
            double late = x < 1e-3 ? h * (0.5 - x / 6 + x * x / 24) : (1 - (1 - e) / x) / rate[i];
            decay[i] = e;
            newFlux[i] = weight[i] * late;
            oldFlux[i] = weight[i] * (whole - late);
            gain += newFlux[i];
            old += oldFlux[i];
        }

        Gain = inverseEffusivity * gain;
        oldGain = old;
        step = h;
    }
}
