namespace Staging.Core.Gaps;

/// <summary>
/// Surface temperature of a semi-infinite solid under a changing heat flux, marched without keeping the history.
/// Duhamel's integral theta(t) = 1/e * integral of q(s)/sqrt(pi (t - s)) ds, e = sqrt(k rho c)
/// (Carslaw and Jaeger, Conduction of Heat in Solids, 1959, section 2.9), with the kernel written as a sum of exponentials:
/// 1/sqrt(pi t) = (2/pi) * integral of exp(-s^2 t) ds over s from 0 to infinity, trapezoidal in ln s.
/// Each exponential is marched exactly for a flux that changes linearly over the step.
/// </summary>
/// <remarks>The kernel is good to 1e-6 relative for times from a tenth of the step to 10 s. The modes start at rest.</remarks>
internal sealed class HeatedSurface
{
    /// <summary>Spacing of the modes in ln s; the trapezoidal error is of order exp(-pi^2/(2 spacing)) = 3e-9.</summary>
    private const double Spacing = 0.25;

    /// <summary>Slowest mode resolved on its own: exp(-s^2 t) stays within 1e-3 of one over 10 s; slower modes are lumped.</summary>
    private static readonly double SlowestLog = Math.Log(0.01);

    private readonly double inverseEffusivity;
    private readonly double instant;
    private readonly double lag;
    private readonly double[] rate;
    private readonly double[] weight;
    private readonly double[] mode;
    private readonly double[] decay;
    private readonly double[] oldFlux;
    private readonly double[] newFlux;
    private double step = double.NaN;

    /// <summary>A surface at rest.</summary>
    /// <param name="effusivity">Thermal effusivity sqrt(k rho c) [W s^0.5/(m2 K)].</param>
    /// <param name="shortestStep">Shortest step that will be taken [s]: sets the fastest mode.</param>
    public HeatedSurface(double effusivity, double shortestStep)
    {
        inverseEffusivity = 1 / effusivity;

        // exp(-s^2 t) has fallen to 1e-7 of itself at s^2 t = 16 for t a tenth of the shortest step.
        double fastestLog = 0.5 * Math.Log(16 / (0.1 * shortestStep));
        int resolved = (int)Math.Ceiling((fastestLog - SlowestLog) / Spacing) + 1;
        int n = resolved + 1;
        rate = new double[n];
        weight = new double[n];
        mode = new double[n];
        decay = new double[n];
        oldFlux = new double[n];
        newFlux = new double[n];
        for (int i = 0; i < resolved; i++)
        {
            double s = Math.Exp(SlowestLog + i * Spacing);
            rate[i] = s * s;
            weight[i] = 2 / Math.PI * Spacing * s;
        }

        // All slower modes together: a geometric series of weights at a rate that is as good as zero.
        double slowest = Math.Exp(SlowestLog - Spacing);
        weight[^1] = 2 / Math.PI * Spacing * slowest / (1 - Math.Exp(-Spacing));

        // All faster modes follow the flux at once, q/rate - (dq/dt)/rate^2 each: two more geometric series.
        double fastest = Math.Exp(SlowestLog + resolved * Spacing);
        instant = 2 / Math.PI * Spacing / (fastest * (1 - Math.Exp(-Spacing)));
        lag = 2 / Math.PI * Spacing / (fastest * fastest * fastest * (1 - Math.Exp(-3 * Spacing)));
    }

    /// <summary>Rise of the surface temperature above its initial value [K].</summary>
    public double Rise { get; private set; }

    /// <summary>Heat flux at the present time [W/m2].</summary>
    public double Flux { get; private set; }

    /// <summary>Rise for each unit of flux at the end of the step prepared by <see cref="Settle"/> [K m2/W].</summary>
    public double Gain { get; private set; }

    /// <summary>Sets the flux at the start, before any step [W/m2].</summary>
    public void Start(double flux) => Flux = flux;

    /// <summary>
    /// The part of the rise after a step of size <paramref name="h"/> [s] that does not depend on the flux at its end [K];
    /// the whole rise is this plus <see cref="Gain"/> times that flux. Nothing is advanced.
    /// </summary>
    public double Settle(double h)
    {
        if (h != step)
            Prepare(h);
        double sum = lag / h * Flux;
        for (int i = 0; i < mode.Length; i++)
            sum += weight[i] * (decay[i] * mode[i] + oldFlux[i] * Flux);
        return inverseEffusivity * sum;
    }

    /// <summary>Takes the step given to <see cref="Settle"/>, over which the flux changes linearly to <paramref name="flux"/> [W/m2].</summary>
    public void Advance(double flux)
    {
        double sum = 0;
        for (int i = 0; i < mode.Length; i++)
        {
            mode[i] = decay[i] * mode[i] + oldFlux[i] * Flux + newFlux[i] * flux;
            sum += weight[i] * mode[i];
        }

        Rise = inverseEffusivity * (sum + instant * flux - lag * (flux - Flux) / step);
        Flux = flux;
    }

    /// <summary>Exact integrals over a step h of exp(-lambda (h - s)), split into the shares of the old and the new flux.</summary>
    private void Prepare(double h)
    {
        double gain = instant - lag / h;
        for (int i = 0; i < rate.Length; i++)
        {
            double x = rate[i] * h;
            double e = Math.Exp(-x);
            double whole = x < 1e-3 ? h * (1 - x / 2 + x * x / 6) : (1 - e) / rate[i];
            double late = x < 1e-3 ? h * (0.5 - x / 6 + x * x / 24) : (1 - (1 - e) / x) / rate[i];
            decay[i] = e;
            newFlux[i] = late;
            oldFlux[i] = whole - late;
            gain += weight[i] * late;
        }

        Gain = inverseEffusivity * gain;
        step = h;
    }
}
