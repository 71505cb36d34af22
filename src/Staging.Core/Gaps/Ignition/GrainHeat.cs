using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What has heated the grain face up to a moment of a run: the three fluxes then, and what each has brought.
/// </summary>
public sealed record GrainHeat
{
    /// <summary>The moment.</summary>
    public required Duration Time { get; init; }

    /// <summary>Flux from the gas stream at that moment.</summary>
    public required HeatFlux Convection { get; init; }

    /// <summary>Flux by radiation at that moment.</summary>
    public required HeatFlux Radiation { get; init; }

    /// <summary>Flux from impinging particles at that moment.</summary>
    public required HeatFlux Particles { get; init; }

    /// <summary>All flux at that moment.</summary>
    public HeatFlux Total => Convection + Radiation + Particles;

    /// <summary>Heat for each area that the gas stream has brought up to then.</summary>
    public required Irradiation ConvectionDose { get; init; }

    /// <summary>Heat for each area that radiation has brought up to then.</summary>
    public required Irradiation RadiationDose { get; init; }

    /// <summary>Heat for each area that particles have brought up to then.</summary>
    public required Irradiation ParticlesDose { get; init; }

    /// <summary>All heat for each area up to then.</summary>
    public Irradiation TotalDose => ConvectionDose + RadiationDose + ParticlesDose;

    /// <summary>Share of the gas stream in the heat brought [-].</summary>
    public double ConvectionShare => ShareOf(ConvectionDose);

    /// <summary>Share of radiation in the heat brought [-].</summary>
    public double RadiationShare => ShareOf(RadiationDose);

    /// <summary>Share of particles in the heat brought [-].</summary>
    public double ParticlesShare => ShareOf(ParticlesDose);

    private double ShareOf(Irradiation dose) =>
        TotalDose.JoulesPerSquareMeter > 0 ? dose.JoulesPerSquareMeter / TotalDose.JoulesPerSquareMeter : 0;
}
