using Staging.Core.Gases;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Gases and combustion products.</summary>
internal static class GasCodecs
{
    public static readonly RecordCodec<PerfectGas> Gas = new("gas", "A calorically perfect gas.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "Name for messages.");
        var gasConstant = f.Required("gasConstant", Quantities.SpecificHeat, x => x.GasConstant,
            "Specific gas constant: 8314.46 J/(kmol K) over the molar mass.");
        var ratio = f.Required("heatCapacityRatio", NumberCodec.Ratio, x => x.HeatCapacityRatio, "Ratio of heat capacities gamma.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new PerfectGas
        {
            Name = name[v],
            GasConstant = gasConstant[v],
            HeatCapacityRatio = ratio[v],
            Provenance = provenance[v]
        };
    });

    public static readonly RecordCodec<DustyGas> Products = new("products", "Combustion products: gas and particles in equilibrium.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "Name for messages.");
        var gas = f.Required("gas", Gas, x => x.Gas, "The gas alone.");
        var share = f.Required("gasMassFraction", NumberCodec.Ratio, x => x.GasMassFraction,
            "Share of the gas in the mass of gas and particles.");
        var particles = f.Required("particleHeatCapacity", Quantities.SpecificHeat, x => x.ParticleHeatCapacity,
            "Heat capacity of the particle material.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new DustyGas
        {
            Name = name[v],
            Gas = gas[v],
            GasMassFraction = share[v],
            ParticleHeatCapacity = particles[v],
            Provenance = provenance[v]
        };
    })
    {
        StartsFrom = ("products of combustion",
            [new("blackPowder", "Products of black powder by chemical equilibrium, nominal.", () => BlackPowderProducts.Nominal)]),
    };
}
