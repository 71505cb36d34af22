using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What has heated the grain face up to a moment of a run: the three fluxes then, and what each has brought.
/// </summary>
/// <remarks>Immutable; may be read from any thread. Made by <see cref="GapRun.HeatAt"/>.</remarks>
public sealed class GrainHeat
{
    /// <summary>Longest step of the trapezoidal rule over the fluxes [s]: as fine as the surface is marched.</summary>
    private const double Fine_s = 20e-6;

    internal GrainHeat(GapHistory course, Duration time)
    {
        double t = time.Seconds, convection = 0, radiation = 0, particles = 0;
        int n = Math.Max(1, (int)Math.Ceiling(t / Fine_s));
        GapReading now = default;
        for (int i = 0; i <= n; i++)
        {
            now = course.At(t * i / n);
            double weight = (i == 0 || i == n ? 0.5 : 1) * t / n;
            convection += weight * now[GapChannel.Convection];
            radiation += weight * now[GapChannel.Radiation];
            particles += weight * now[GapChannel.Particles];
        }

        Time = time;
        Convection = HeatFlux.FromWattsPerSquareMeter(now[GapChannel.Convection]);
        Radiation = HeatFlux.FromWattsPerSquareMeter(now[GapChannel.Radiation]);
        Particles = HeatFlux.FromWattsPerSquareMeter(now[GapChannel.Particles]);
        ConvectionDose = Irradiation.FromJoulesPerSquareMeter(convection);
        RadiationDose = Irradiation.FromJoulesPerSquareMeter(radiation);
        ParticlesDose = Irradiation.FromJoulesPerSquareMeter(particles);
    }

    /// <summary>The moment.</summary>
    public Duration Time { get; }

    /// <summary>Flux from the gas stream at that moment.</summary>
    public HeatFlux Convection { get; }

    /// <summary>Flux by radiation at that moment.</summary>
    public HeatFlux Radiation { get; }

    /// <summary>Flux from impinging particles at that moment.</summary>
    public HeatFlux Particles { get; }

    /// <summary>All flux at that moment.</summary>
    public HeatFlux Total => Convection + Radiation + Particles;

    /// <summary>Heat for each area that the gas stream has brought up to then.</summary>
    public Irradiation ConvectionDose { get; }

    /// <summary>Heat for each area that radiation has brought up to then.</summary>
    public Irradiation RadiationDose { get; }

    /// <summary>Heat for each area that particles have brought up to then.</summary>
    public Irradiation ParticlesDose { get; }

    /// <summary>All heat for each area up to then.</summary>
    public Irradiation TotalDose => ConvectionDose + RadiationDose + ParticlesDose;

    /// <summary>Share of the gas stream in the heat brought [-].</summary>
    public double ConvectionShare => ShareOf(ConvectionDose);

    /// <summary>Share of radiation in the heat brought [-].</summary>
    public double RadiationShare => ShareOf(RadiationDose);

    /// <summary>Share of particles in the heat brought [-].</summary>
    public double ParticlesShare => ShareOf(ParticlesDose);

    /// <summary>The heat brought and whose it is.</summary>
    /// <returns>One line.</returns>
    public override string ToString() => Invariant.Text($"Up to {Time.Milliseconds:F2} ms {TotalDose.JoulesPerSquareMeter / 1e3:F1} kJ/m2: "
        + $"gas stream {ConvectionShare:P0}, radiation {RadiationShare:P0}, particles {ParticlesShare:P0}.");

    private double ShareOf(Irradiation dose) =>
        TotalDose.JoulesPerSquareMeter > 0 ? dose.JoulesPerSquareMeter / TotalDose.JoulesPerSquareMeter : 0;
}
