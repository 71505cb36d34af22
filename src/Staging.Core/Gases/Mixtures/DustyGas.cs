using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// A gas that carries particles at its own speed and temperature, their volume neglected. It behaves as one perfect
/// gas: R_eff = f R_g, cp_eff = f cp_g + (1 - f) c_s, gamma_eff = cp_eff/(cp_eff - R_eff).
/// </summary>
/// <remarks>
/// F. E. Marble, "Dynamics of dusty gases", Annual Review of Fluid Mechanics 2 (1970) 397-446; G. Rudinger,
/// Fundamentals of Gas-Particle Flow (1980). Equilibrium needs particles small enough to follow within the time of the
/// flow: a Stokes time rho_s d^2/(18 mu) is 0.002 ms for 1 micrometre and 0.2 ms for 10 micrometres in burn-through
/// gas, 20 ms for 100 micrometres.
/// </remarks>
public sealed record DustyGas
{
    /// <summary>Name for messages and tables.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>The carrier gas alone.</summary>
    public required PerfectGas Gas { get; init => field = Guard.NotNull(value); }

    /// <summary>Share of the gas in the mass of gas and particles f [-], 0.2 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double GasMassFraction { get; init => field = Guard.In(value, 0.2, 1); }

    /// <summary>Heat capacity of the particle material c_s [J/(kg K)], 100 to 5000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy ParticleHeatCapacity { get; init => field = Guard.In(value, 100, 5000); }

    /// <summary>Where fraction and particle heat capacity come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>Looks for a load of particles too heavy to be treated as one perfect gas.</summary>
    /// <returns>An error <c>GAS003</c> when the equivalent gas leaves the range of <see cref="PerfectGas"/>.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        (double R, double gamma) = Effective();
        if (R >= 10 && gamma >= 1.01)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Error, "GAS003", nameof(GasMassFraction),
                Invariant.Text($"{Excerpt.Of(Name)} would have a gas constant of {R:G4} J/(kg K) and a ratio of heat capacities of "
                    + $"{gamma:G4}; a perfect gas here needs at least 10 J/(kg K) and 1.01. A greater gas mass fraction would fit.")),
        ];
    }

    /// <summary>Gas and particles as one perfect gas.</summary>
    /// <returns>The equivalent gas, per kilogram of gas and particles together.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    public PerfectGas Equivalent()
    {
        InvalidModelException.ThrowOnError(Check());
        (double R, double gamma) = Effective();
        return new PerfectGas
        {
            Name = Name,
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(R),
            HeatCapacityRatio = gamma,
            Provenance = new Provenance
            {
                Source = $"Equilibrium dusty gas (Marble 1970) from {Gas.Name}; {Provenance.Source}",
                Locator = Provenance.Locator,
                How = Evidence.ComputedFromFormula,
            },
        };
    }

    /// <summary>
    /// Impetus f R_g T: the work content that closed-vessel measurements quote, p V per kilogram at temperature T.
    /// </summary>
    /// <param name="temperature">Absolute temperature [K], 50 to 6000.</param>
    /// <returns>Energy per kilogram of gas and particles.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public SpecificEnergy ImpetusAt(Temperature temperature) => SpecificEnergy.FromJoulesPerKilogram(
        GasMassFraction * Gas.Constants.R * Guard.In(temperature, 50, 6000, nameof(temperature)).Kelvins);

    private (double R, double Gamma) Effective()
    {
        double f = GasMassFraction;
        double R_eff = f * Gas.Constants.R;
        double cp_eff = f * Gas.Constants.Cp + (1 - f) * ParticleHeatCapacity.JoulesPerKilogramKelvin;
        // Particles lower the ratio: round-off may not lift it above that of the gas.
        double gamma = Gas.HeatCapacityRatio;
        return (R_eff, f == 1 ? gamma : Math.Min(cp_eff / (cp_eff - R_eff), gamma));
    }
}
