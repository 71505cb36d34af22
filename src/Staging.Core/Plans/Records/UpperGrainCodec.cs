using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>The propellant of the upper motor that must be lit.</summary>
internal static class UpperGrainCodec
{
    public static readonly RecordCodec<UpperGrain> Codec = new("upperGrain",
        "The face of the upper motor's propellant, seen through its nozzle.", f =>
    {
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter,
            "Throat diameter of the upper motor's nozzle.");
        var recess = f.Required("recessVolume", Quantities.Volume, x => x.RecessVolume, "Free volume behind the nozzle plane.");
        var conductivity = f.Required("conductivity", Quantities.Conductivity, x => x.Conductivity,
            "Thermal conductivity of the pressed grain.");
        var density = f.Required("density", Quantities.Density, x => x.Density, "Density of the pressed grain.");
        var heatCapacity = f.Required("heatCapacity", Quantities.SpecificHeat, x => x.HeatCapacity, "Heat capacity of the grain.");
        var ignition = f.Required("ignitionTemperature", Quantities.Temperature, x => x.IgnitionTemperature,
            "Surface temperature at which the grain counts as lit.");
        var initial = f.Required("initialTemperature", Quantities.Temperature, x => x.InitialTemperature,
            "Temperature of the grain before the gas arrives.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new UpperGrain
        {
            NozzleThroatDiameter = throat[v],
            RecessVolume = recess[v],
            Conductivity = conductivity[v],
            Density = density[v],
            HeatCapacity = heatCapacity[v],
            IgnitionTemperature = ignition[v],
            InitialTemperature = initial[v],
            Provenance = provenance[v],
        };
    })
    {
        StartsFrom = ("a grain to be lit",
            [new("bore18mm", "The invented upper motor of the gap of that name; judged.", () => StartingGaps.Bore18mm.Design.Grain)]),
    };
}
