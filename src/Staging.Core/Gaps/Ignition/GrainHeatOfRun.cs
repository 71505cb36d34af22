using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The heat at the grain face, from the course of a gap run.</summary>
public static class GrainHeatOfRun
{
    /// <summary>Longest step of the trapezoidal rule over the fluxes [s]: as fine as the surface is marched.</summary>
    private const double Fine_s = 20e-6;

    /// <summary>What has heated the grain up to the moment it was lit.</summary>
    /// <param name="run">The run.</param>
    /// <returns>Fluxes and doses; null when it was not lit.</returns>
    public static GrainHeat? HeatAtLighting(this GapRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.TimeOf(GapEventKind.Lit) is { } lit ? run.HeatAt(lit) : null;
    }

    /// <summary>What has heated the grain up to a moment.</summary>
    /// <param name="run">The run.</param>
    /// <param name="time">Time since burn-through [s], 0 to the end of the run.</param>
    /// <returns>Fluxes at that moment, and doses by the trapezoidal rule on steps of at most 20 microseconds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public static GrainHeat HeatAt(this GapRun run, Duration time)
    {
        ArgumentNullException.ThrowIfNull(run);
        double t = Guard.In(time, 0, run.End.Seconds, nameof(time)).Seconds;
        int n = Math.Max(1, (int)Math.Ceiling(t / Fine_s));
        double convection = 0, radiation = 0, particles = 0;
        GapSnapshot now = run.At(Duration.Zero);
        for (int i = 0; i <= n; i++)
        {
            now = run.At(Duration.FromSeconds(t * i / n));
            double weight = (i == 0 || i == n ? 0.5 : 1) * t / n;
            convection += weight * now.Convection.WattsPerSquareMeter;
            radiation += weight * now.Radiation.WattsPerSquareMeter;
            particles += weight * now.Particles.WattsPerSquareMeter;
        }

        return new GrainHeat
        {
            Time = time,
            Convection = now.Convection,
            Radiation = now.Radiation,
            Particles = now.Particles,
            ConvectionDose = Irradiation.FromJoulesPerSquareMeter(convection),
            RadiationDose = Irradiation.FromJoulesPerSquareMeter(radiation),
            ParticlesDose = Irradiation.FromJoulesPerSquareMeter(particles),
        };
    }
}
