using Staging.Core.Gaps;
using Staging.Core.Plans.Forms;

namespace Staging.Core.Plans.Records;

/// <summary>The gas of a booster motor that burns through.</summary>
internal static class BurnThroughForm
{
    public static readonly RecordForm<BurnThroughSource> Form = new("burnThroughSource", "Hot gas from a booster motor that has burnt through.", f =>
    {
        var products = f.Required("products", GasForms.Products, x => x.Products, "Products of combustion.");
        var flame = f.Required("flameTemperature", Quantities.Temperature, x => x.FlameTemperature, "Temperature of the products in the chamber.");
        var volume = f.Required("chamberVolume", Quantities.Volume, x => x.ChamberVolume, "Free volume of the chamber at burn-through.");
        var pressure = f.Required("chamberPressure", Quantities.Pressure, x => x.ChamberPressure, "Absolute chamber pressure at burn-through.");
        var opening = f.Required("openingDiameter", Quantities.Length, x => x.OpeningDiameter, "Diameter of the forward opening once fully open.");
        var openingTime = f.Required("openingTime", Quantities.Duration, x => x.OpeningTime, "Time in which the opening grows to its full size.");
        var coefficient = f.Required("openingCoefficient", NumberForm.Ratio, x => x.OpeningCoefficient, "Discharge coefficient of the forward opening.");
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter, "Throat diameter of the booster's nozzle; 0 is plugged.");
        var fragments = f.Required("fragmentMass", Quantities.Mass, x => x.FragmentMass, "Propellant that burns as fragments after burn-through.");
        var burnTime = f.Required("fragmentBurnTime", Quantities.Duration, x => x.FragmentBurnTime, "Time over which the fragments burn.");
        var provenance = f.Required("source", ProvenanceForm.Form, x => x.Source, ProvenanceForm.Meaning);
        return v => new BurnThroughSource
        {
            Products = products[v],
            FlameTemperature = flame[v],
            ChamberVolume = volume[v],
            ChamberPressure = pressure[v],
            OpeningDiameter = opening[v],
            OpeningTime = openingTime[v],
            OpeningCoefficient = coefficient[v],
            NozzleThroatDiameter = throat[v],
            FragmentMass = fragments[v],
            FragmentBurnTime = burnTime[v],
            Source = provenance[v],
        };
    });
}
