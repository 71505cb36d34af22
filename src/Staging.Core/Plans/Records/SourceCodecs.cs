using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;
using UnitsNet;

namespace Staging.Core.Plans.Records;

/// <summary>Where the hot gas of a gap comes from.</summary>
internal static class SourceCodecs
{
    private const string InventedBooster = "The invented booster motor of the gap of that name, known by its grain; judged.";

    public static readonly RecordCodec<BurnRateLaw> BurnRate = new("burnRateLaw", "How fast a burning face recedes: r = a p^n.", f =>
    {
        var rate = f.Required("rateAtOneAtmosphere", Quantities.Speed, x => x.RateAtOneAtmosphere, "Rate at 101325 Pa.");
        var exponent = f.Required("pressureExponent", NumberCodec.Ratio, x => x.PressureExponent, "Exponent n of the pressure.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new BurnRateLaw { RateAtOneAtmosphere = rate[v], PressureExponent = exponent[v], Provenance = provenance[v] };
    })
    {
        StartsFrom = ("a burn-rate law",
        [
            new("shidlovskiy", "The law ascribed to Shidlovskiy, 2 to 30 atm; from memory.", () => BurnRateLaw.Shidlovskiy),
            new("belyaevMaznev", "The law ascribed to Belyaev and Maznev; from memory.", () => BurnRateLaw.BelyaevMaznev),
        ]),
    };

    public static readonly UnionCodec<WebBurn> Web = new("webBurn", "How the last web of a booster burns, broken into fragments.",
    [
        new UnionCase<WebBurn, WebBurn.OverTime>("overTime", new("overTime", "Over a stated time, as a half-sine pulse.", f =>
        {
            var mass = f.Required("mass", Quantities.Mass, x => x.Mass, "Propellant that burns as fragments after burn-through.");
            var time = f.Required("time", Quantities.Duration, x => x.Time, "Time over which the fragments burn.");
            return v => new WebBurn.OverTime { Mass = mass[v], Time = time[v] };
        })),
        new UnionCase<WebBurn, WebBurn.ByRateLaw>("byRateLaw",
            new("byRateLaw", "On both sides, at a rate that follows the chamber pressure.", f =>
        {
            var mass = f.Required("mass", Quantities.Mass, x => x.Mass, "Propellant that burns as fragments after burn-through.");
            var thickness = f.Required("thickness", Quantities.Length, x => x.Thickness, "Thickness of the fragments.");
            var rate = f.Required("rate", BurnRate, x => x.Rate, "How fast a face recedes.");
            return v => new WebBurn.ByRateLaw { Mass = mass[v], Thickness = thickness[v], Rate = rate[v] };
        })),
    ]);

    public static readonly RecordCodec<GapSource.Booster> Booster = new("booster", "A booster motor that burns through.", f =>
    {
        var products = f.Required("products", GasCodecs.Products, x => x.Products, "Products of combustion.");
        var flame = f.Required("flameTemperature", Quantities.Temperature, x => x.FlameTemperature,
            "Temperature of the products in the chamber.");
        var volume = f.Required("chamberVolume", Quantities.Volume, x => x.ChamberVolume, "Free volume of the chamber at burn-through.");
        var pressure = f.Required("chamberPressure", Quantities.Pressure, x => x.ChamberPressure,
            "Absolute chamber pressure at burn-through.");
        var opening = f.Required("openingDiameter", Quantities.Length, x => x.OpeningDiameter,
            "Diameter of the forward opening once fully open.");
        var openingTime = f.Required("openingTime", Quantities.Duration, x => x.OpeningTime,
            "Time in which the opening grows to its full size.");
        var coefficient = f.Required("openingCoefficient", NumberCodec.Ratio, x => x.OpeningCoefficient,
            "Discharge coefficient of the forward opening.");
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter,
            "Throat diameter of the motor's nozzle; 0 is plugged.");
        var web = f.Required("web", Web, x => x.Web, "The propellant that is left at burn-through, and how it burns.");
        var delay = f.Optional("delay", Quantities.Duration, x => x.Delay, default(Duration),
            "How long after time zero it burns through; 0 when left out.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new GapSource.Booster
        {
            Products = products[v],
            FlameTemperature = flame[v],
            ChamberVolume = volume[v],
            ChamberPressure = pressure[v],
            OpeningDiameter = opening[v],
            OpeningTime = openingTime[v],
            OpeningCoefficient = coefficient[v],
            NozzleThroatDiameter = throat[v],
            Web = web[v],
            Delay = delay[v],
            Provenance = provenance[v],
        };
    });

    public static readonly RecordCodec<GapSource.EndBurner> EndBurner = new("endBurner", "A booster motor known by its grain.", f =>
    {
        var products = f.Required("products", GasCodecs.Products, x => x.Products, "Products of combustion.");
        var flame = f.Required("flameTemperature", Quantities.Temperature, x => x.FlameTemperature,
            "Temperature of the products of all that burns.");
        var diameter = f.Required("grainDiameter", Quantities.Length, x => x.GrainDiameter, "Diameter of the grain.");
        var burnt = f.Required("burntLength", Quantities.Length, x => x.BurntLength,
            "Length burnt at burn-through: along the axis, from where the grain was lit to the web.");
        var throat = f.Required("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter,
            "Throat diameter of the motor's nozzle; it sets the chamber pressure.");
        var density = f.Required("density", Quantities.Density, x => x.Density, "Density of the propellant.");
        var rate = f.Required("rate", BurnRate, x => x.Rate, "How fast a face recedes; exponent below 0.9.");
        var strength = f.Required("strength", Quantities.Pressure, x => x.Strength, "Modulus of rupture of the pressed propellant.");
        var plate = f.Optional("plateFactor", NumberCodec.Ratio, x => x.PlateFactor, 1.0,
            "Factor of the bending stress of the web: 0.75 clamped, 1.24 simply supported; 1 when left out.");
        var cracks = f.Optional("radialCracks", NumberCodec.Ratio, x => x.RadialCracks, 4.0,
            "Radial cracks: as many pieces; 4 when left out.");
        var share = f.Optional("speedShare", NumberCodec.Ratio, x => x.SpeedShare, 0.5,
            "Where the speed of the pieces lies between its bounds, 0 slow to 1 fast; 0.5 when left out.");
        var speed = f.Optional("pieceSpeed", Quantities.Speed, x => x.PieceSpeed,
            "A stated speed of the pieces instead, 0 keeps them at the booster; from the share when left out.");
        var fresh = f.Required("freshFaceDelay", Quantities.Duration, x => x.FreshFaceDelay,
            "Time after which the fresh faces of the pieces burn as well.");
        var coefficient = f.Required("openingCoefficient", NumberCodec.Ratio, x => x.OpeningCoefficient,
            "Discharge coefficient of the forward opening.");
        var delay = f.Optional("delay", Quantities.Duration, x => x.Delay, default(Duration),
            "How long after time zero it burns through; 0 when left out.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new GapSource.EndBurner
        {
            Products = products[v],
            FlameTemperature = flame[v],
            GrainDiameter = diameter[v],
            BurntLength = burnt[v],
            NozzleThroatDiameter = throat[v],
            Density = density[v],
            Rate = rate[v],
            Strength = strength[v],
            PlateFactor = plate[v],
            RadialCracks = cracks[v],
            SpeedShare = share[v],
            PieceSpeed = speed[v],
            FreshFaceDelay = fresh[v],
            OpeningCoefficient = coefficient[v],
            Delay = delay[v],
            Provenance = provenance[v],
        };
    });

    public static readonly UnionCodec<GapSource.Motor> Motor = new("boosterMotor", "A booster motor.",
    [
        new UnionCase<GapSource.Motor, GapSource.Booster>("booster", Booster),
        new UnionCase<GapSource.Motor, GapSource.EndBurner>("endBurner", EndBurner),
    ])
    {
        StartsFrom = ("a booster motor", [new("bore18mm", InventedBooster, () => StartingGaps.Booster)]),
    };

    public static readonly UnionCodec<GapSource> Source = new("gapSource", "Where the hot gas comes from.",
    [
        new UnionCase<GapSource, GapSource.Booster>("booster", Booster),
        new UnionCase<GapSource, GapSource.EndBurner>("endBurner", EndBurner),
        new UnionCase<GapSource, GapSource.Tabulated>("tabulated",
            new("tabulated", "A known history of mass flow and temperature at the booster's end of the tube.", f =>
        {
            var products = f.Required("products", GasCodecs.Products, x => x.Products, "The gas.");
            var time = f.Required("time_s", ColumnCodec.Numbers, x => x.Time_s,
                "Times since burn-through in seconds, rising, 0 to 10; two or more.");
            var flow = f.Required("massFlow_kg_per_s", ColumnCodec.Numbers, x => x.MassFlow_kg_per_s,
                "As many mass flows in kg/s, 0 to 10.");
            var temperature = f.Required("temperature_K", new ColumnCodec([1900, 1900]), x => x.Temperature_K,
                "As many temperatures in kelvins, 250 to 3500.");
            var provenance = ProvenanceCodec.In(f, x => x.Provenance);
            return v => GapSource.Tabulated.FromColumns(
                products[v], time[v].Span, flow[v].Span, temperature[v].Span, provenance[v]);
        })),
        new UnionCase<GapSource, GapSource.Cluster>("cluster", new("cluster", "Two to eight motors that feed one gap.", f =>
        {
            var motors = f.Required("motors", new ListCodec<GapSource.Motor>(Motor, 2), x => x.Motors, "The motors.");
            return v => new GapSource.Cluster { Motors = motors[v] };
        })),
    ])
    {
        StartsFrom = ("a source of hot gas", [new("bore18mm", InventedBooster, () => StartingGaps.Booster)]),
    };
}
