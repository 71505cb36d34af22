using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Where the hot gas of a gap comes from.</summary>
internal static class SourceCodecs
{
    public static readonly RecordCodec<BoosterChamber> Chamber = new("boosterChamber", "The chamber of a booster motor at burn-through.",
        f =>
    {
        var products = f.Required("products", GasCodecs.Products, x => x.Products, "Products of combustion.");
        var flame = f.Required("flameTemperature", Quantities.Temperature, x => x.FlameTemperature,
            "Temperature of the products in the chamber.");
        var volume = f.Required("volume", Quantities.Volume, x => x.Volume, "Free volume at burn-through.");
        var pressure = f.Required("pressure", Quantities.Pressure, x => x.Pressure, "Absolute pressure at burn-through.");
        var opening = f.Required("openingDiameter", Quantities.Length, x => x.OpeningDiameter,
            "Diameter of the forward opening once fully open.");
        var openingTime = f.Required("openingTime", Quantities.Duration, x => x.OpeningTime,
            "Time in which the opening grows to its full size.");
        var coefficient = f.Required("openingCoefficient", NumberCodec.Ratio, x => x.OpeningCoefficient,
            "Discharge coefficient of the forward opening.");
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter,
            "Throat diameter of the nozzle; 0 is plugged.");
        return v => new BoosterChamber
        {
            Products = products[v],
            FlameTemperature = flame[v],
            Volume = volume[v],
            Pressure = pressure[v],
            OpeningDiameter = opening[v],
            OpeningTime = openingTime[v],
            OpeningCoefficient = coefficient[v],
            NozzleThroatDiameter = throat[v],
        };
    });

    public static readonly RecordCodec<BurnRateLaw> BurnRate = new("burnRateLaw", "How fast a burning face recedes: r = a p^n.", f =>
    {
        var rate = f.Required("rateAtOneAtmosphere", Quantities.Speed, x => x.RateAtOneAtmosphere, "Rate at 101325 Pa.");
        var exponent = f.Required("pressureExponent", NumberCodec.Ratio, x => x.PressureExponent, "Exponent n of the pressure.");
        var provenance = f.Required("provenance", ProvenanceCodec.Form, x => x.Provenance, ProvenanceCodec.Meaning);
        return v => new BurnRateLaw { RateAtOneAtmosphere = rate[v], PressureExponent = exponent[v], Provenance = provenance[v] };
    });

    private static readonly UnionCase<GapSource> Afterburn = new UnionCase<GapSource, GapSource.Afterburn>("afterburn",
        new("afterburn", "A motor whose fragments burn over a stated time.", f =>
    {
        var products = f.Required("products", GasCodecs.Products, x => x.Motor.Products, "Products of combustion.");
        var flame = f.Required("flameTemperature", Quantities.Temperature, x => x.Motor.FlameTemperature,
            "Temperature of the products in the chamber.");
        var volume = f.Required("chamberVolume", Quantities.Volume, x => x.Motor.ChamberVolume,
            "Free volume of the chamber at burn-through.");
        var pressure = f.Required("chamberPressure", Quantities.Pressure, x => x.Motor.ChamberPressure,
            "Absolute chamber pressure at burn-through.");
        var opening = f.Required("openingDiameter", Quantities.Length, x => x.Motor.OpeningDiameter,
            "Diameter of the forward opening once fully open.");
        var openingTime = f.Required("openingTime", Quantities.Duration, x => x.Motor.OpeningTime,
            "Time in which the opening grows to its full size.");
        var coefficient = f.Required("openingCoefficient", NumberCodec.Ratio, x => x.Motor.OpeningCoefficient,
            "Discharge coefficient of the forward opening.");
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.Motor.NozzleThroatDiameter,
            "Throat diameter of the booster's nozzle; 0 is plugged.");
        var fragments = f.Required("fragmentMass", Quantities.Mass, x => x.Motor.FragmentMass,
            "Propellant that burns as fragments after burn-through.");
        var burnTime = f.Required("fragmentBurnTime", Quantities.Duration, x => x.Motor.FragmentBurnTime,
            "Time over which the fragments burn.");
        var provenance = f.Required("provenance", ProvenanceCodec.Form, x => x.Motor.Provenance, ProvenanceCodec.Meaning);
        return v => new GapSource.Afterburn
        {
            Motor = new BurnThroughSource
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
                Provenance = provenance[v],
            },
        };
    }));

    private static readonly UnionCase<GapSource> Fragments = new UnionCase<GapSource, GapSource.Fragments>("fragments",
        new("fragments", "A motor whose fragments burn on both sides at a rate that follows the chamber pressure.", f =>
    {
        var chamber = f.Required("chamber", Chamber, x => x.Chamber, "The chamber that the fragments burn in.");
        var mass = f.Required("mass", Quantities.Mass, x => x.Mass, "Propellant that burns as fragments after burn-through.");
        var thickness = f.Required("thickness", Quantities.Length, x => x.Thickness, "Thickness of the fragments.");
        var rate = f.Required("rate", BurnRate, x => x.Rate, "How fast a face recedes.");
        var provenance = f.Required("provenance", ProvenanceCodec.Form, x => x.Provenance, ProvenanceCodec.Meaning);
        return v => new GapSource.Fragments
        {
            Chamber = chamber[v],
            Mass = mass[v],
            Thickness = thickness[v],
            Rate = rate[v],
            Provenance = provenance[v]
        };
    }));

    private static readonly UnionCodec<GapSource> Motor = new("boosterMotor", "One booster motor that burns through.",
        [Afterburn, Fragments]);

    private static readonly RecordCodec<ClusterMotor> InCluster = new("clusterMotor", "One motor of a cluster.", f =>
    {
        var source = f.Required("source", Motor, x => x.Source, "The motor.");
        var delay = f.Required("delay", Quantities.Duration, x => x.Delay, "How long after time zero it burns through.");
        return v => new ClusterMotor { Source = source[v], Delay = delay[v] };
    });

    private static readonly UnionCase<GapSource> Tabulated = new UnionCase<GapSource, GapSource.Tabulated>("tabulated",
        new("tabulated", "A known history of mass flow and temperature at the booster's end of the tube.", f =>
    {
        var gas = f.Required("gas", GasCodecs.Products, x => x.Gas, "The gas.");
        var time = f.Required("time_s", ColumnCodec.Numbers, x => x.Feed.Time_s,
            "Times since burn-through in seconds, rising, 0 to 10; two or more.");
        var flow = f.Required("massFlow_kg_per_s", ColumnCodec.Numbers, x => x.Feed.MassFlow_kg_per_s,
            "As many mass flows in kg/s, 0 to 10.");
        var temperature = f.Required("temperature_K", new ColumnCodec([1900, 1900]), x => x.Feed.Temperature_K,
            "As many temperatures in kelvins, 250 to 3500.");
        var provenance = f.Required("provenance", ProvenanceCodec.Form, x => x.Provenance, ProvenanceCodec.Meaning);
        return v => new GapSource.Tabulated
        {
            Gas = gas[v],
            Feed = FeedTable.FromColumns(time[v].Span, flow[v].Span, temperature[v].Span),
            Provenance = provenance[v]
        };
    }));

    private static readonly UnionCase<GapSource> Cluster = new UnionCase<GapSource, GapSource.Cluster>("cluster",
        new("cluster", "Two to eight motors that feed one gap.", f =>
    {
        var motors = f.Required("motors", new ListCodec<ClusterMotor>(InCluster, 2), x => x.Motors, "The motors.");
        return v => new GapSource.Cluster { Motors = motors[v].Items };
    }));

    public static readonly UnionCodec<GapSource> Source = new("gapSource", "Where the hot gas comes from.",
        [Afterburn, Fragments, Tabulated, Cluster]);
}
