using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;
using Staging.Core.Sizing;
using Staging.Core.Solving;

namespace Staging.Core.Plans.Records;

/// <summary>The gap between two motors as built.</summary>
internal static class GapCodecs
{
    private static readonly VentLayout Usual = new() { HoleCount = 1 };

    public static readonly RecordCodec<BoreStep> Step = new("boreStep", "A change of bore.", f =>
    {
        var station = f.Required("station", Quantities.Length, x => x.Station,
            "From here on, as a distance from the booster motor's forward end.");
        var bore = f.Required("bore", Quantities.Length, x => x.Bore, "Inner diameter from here on.");
        return v => new BoreStep { Station = station[v], Bore = bore[v] };
    });

    public static readonly RecordCodec<GuideTube> Tube = new("guideTube", "The tube between the motors.", f =>
    {
        var bore = f.Required("bore", Quantities.Length, x => x.Bore, "Inner diameter.");
        var length = f.Required("length", Quantities.Length, x => x.Length,
            "From the booster motor's forward end to the upper motor's nozzle plane.");
        var steps = f.Optional("steps", new ListCodec<BoreStep>(Step), x => x.Steps, [],
            "Changes of bore, rising; one bore throughout when left out.");
        return v => new GuideTube { Bore = bore[v], Length = length[v], Steps = steps[v] };
    });

    public static readonly UnionCodec<VentTarget> Target = new("ventTarget", "Where holes lead.",
    [
        new UnionCase<VentTarget, VentTarget>("outside", new("outside", "The outside.", f =>
        {
            var coefficient = f.Optional("pressureCoefficient", NumberCodec.Ratio, x => x.PressureCoefficient, 0,
                "Pressure there above that of the surroundings of the gap, over the dynamic pressure; 0 when left out.");
            return v => VentTarget.Outside(coefficient[v]);
        }), x => x.Jacket is null),
        new UnionCase<VentTarget, VentTarget>("jacket", new("intoJacket", "A jacket of this design.", f =>
        {
            var name = f.Required("name", TextCodec.NotBlank, x => x.Jacket!, "Its name.");
            return v => VentTarget.IntoJacket(name[v]);
        }), x => x.Jacket is not null),
    ]);

    public static readonly RecordCodec<Vent> Vent = new("vent", "Holes out of the guide tube, at one station.", f =>
    {
        var station = f.Required("station", Quantities.Length, x => x.Station,
            "Distance of the hole centres from the booster motor's forward end.");
        var holes = f.Required("holes", DischargeCodecs.Holes, x => x.Holes, "The holes.");
        var target = f.Optional("to", Target, x => x.To, VentTarget.Air, "Where they lead; outside when left out.");
        var axial = f.Optional("axialLength", Quantities.Length, x => x.AxialLength,
            "Length along the tube over which the holes lie, edge to edge; one ring of holes when left out.");
        return v => new Vent { Station = station[v], Holes = holes[v], To = target[v], AxialLength = axial[v] };
    });

    public static readonly RecordCodec<JacketOpening> JacketOpening = new("jacketOpening", "Holes out of a jacket.", f =>
    {
        var holes = f.Required("holes", DischargeCodecs.Holes, x => x.Holes, "The holes.");
        var target = f.Required("to", Target, x => x.To, "Where they lead.");
        var station = f.Optional("station", Quantities.Length, x => x.Station,
            "Distance of the hole centres from the booster motor's forward end, for the builder; not stated when left out.");
        return v => new JacketOpening { Holes = holes[v], To = target[v], Station = station[v] };
    });

    public static readonly RecordCodec<Jacket> Jacket = new("jacket", "A volume round the guide tube.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "Its name; unique within a design.");
        var volume = f.Required("volume", Quantities.Volume, x => x.Volume, "Free volume.");
        var wall = f.Required("wallArea", Quantities.Area, x => x.WallArea, "Wall that takes up heat.");
        var openings = f.Required("openings", new ListCodec<JacketOpening>(JacketOpening), x => x.Openings,
            "Holes out of it, through its outer wall or rearwards through a centring ring.");
        var bore = f.Optional("outerBore", Quantities.Length, x => x.OuterBore,
            "Bore of the tube that is its outer wall, for the builder; not stated when left out.");
        return v => new Jacket
        {
            Name = name[v],
            Volume = volume[v],
            WallArea = wall[v],
            Openings = openings[v],
            OuterBore = bore[v],
        };
    });

    public static readonly RecordCodec<MixingAndHeat> Closures = new("mixingAndHeat",
        "Mixing and heat transfer: what a one-dimensional model must be told.", f =>
    {
        var front = f.Required("frontThicknessInBores", NumberCodec.Ratio, x => x.FrontThicknessInBores,
            "Length, in bores, over which a hole changes from drawing air to drawing products.");
        var exchange = f.Required("deadEndExchange", NumberCodec.Ratio, x => x.DeadEndExchange,
            "Turbulent exchange with the dead end beyond the last vent.");
        var reach = f.Required("stirringReachInBores", NumberCodec.Ratio, x => x.StirringReachInBores,
            "Depth, in bores, over which the stirring of a dead end falls by e.");
        var jet = f.Required("freeJetCoreInBores", NumberCodec.Ratio, x => x.FreeJetCoreInBores,
            "Free length, in bores, that a stream crosses an opening without loss.");
        var wall = f.Required("wallHeatTransfer", Quantities.HeatTransfer, x => x.WallHeatTransfer,
            "Heat transfer from the hot gas to the tube wall.");
        var emissivity = f.Required("emissivity", NumberCodec.Ratio, x => x.Emissivity,
            "Emissivity of the products, towards grain and walls.");
        var particles = f.Required("particleEfficiency", NumberCodec.Ratio, x => x.ParticleEfficiency,
            "Share of the heat of impinging particles that the grain takes up.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new MixingAndHeat
        {
            FrontThicknessInBores = front[v],
            DeadEndExchange = exchange[v],
            StirringReachInBores = reach[v],
            FreeJetCoreInBores = jet[v],
            WallHeatTransfer = wall[v],
            Emissivity = emissivity[v],
            ParticleEfficiency = particles[v],
            Provenance = provenance[v],
        };
    })
    {
        StartsFrom = ("mixing and heat transfer",
            [new("judged", "The judged values, with reasons and ranges in the documentation.", () => MixingAndHeat.Judged)]),
    };

    public static readonly RecordCodec<GapDesign> Design = new("gapDesign", "The gap as built, and what is known of the two motors.", f =>
    {
        var tube = f.Required("tube", Tube, x => x.Tube, "The tube between the motors.");
        var vents = f.Required("vents", new ListCodec<Vent>(Vent), x => x.Vents, "Holes out of the tube; an empty list is a closed gap.");
        var jackets = f.Optional("jackets", new ListCodec<Jacket>(Jacket), x => x.Jackets, [],
            "Volumes round the tube that vents may lead into; none when left out.");
        var law = f.Required("dischargeLaw", DischargeCodecs.Law, x => x.DischargeLaw, "How the holes discharge.");
        var source = f.Required("source", SourceCodecs.Source, x => x.Source, "What comes out of the booster.");
        var joint = f.Required("joint", JointCodecs.Joint, x => x.Joint, "What holds the stages together.");
        var grain = f.Required("grain", UpperGrainCodec.Codec, x => x.Grain, "The propellant to be lit.");
        var closures = f.Required("mixingAndHeat", Closures, x => x.MixingAndHeat, "Mixing and heat transfer.");
        return v => new GapDesign
        {
            Tube = tube[v],
            Vents = vents[v],
            Jackets = jackets[v],
            DischargeLaw = law[v],
            Source = source[v],
            Joint = joint[v],
            Grain = grain[v],
            MixingAndHeat = closures[v],
        };
    })
    {
        StartsFrom = ("a gap as built",
            [new("bore18mm", "A closed gap of 18 mm bore and 120 mm length, invented and judged.", () => StartingGaps.Bore18mm.Design)]),
    };

    public static readonly RecordCodec<VentLayout> Layout = new("ventLayout", "How new vents would be drilled.", f =>
    {
        var count = f.Required("holeCount", CountCodec.Whole, x => x.HoleCount, "Number of equal holes round the tube.");
        var wall = f.Optional("wallThickness", Quantities.Length, x => x.WallThickness, Usual.WallThickness,
            "Wall thickness of the tube; 0.5 mm when left out.");
        var land = f.Optional("land", Quantities.Length, x => x.Land, Usual.Land,
            "Material left between the upper edge of the holes and the nozzle plane; 1 mm when left out.");
        var drills = f.Optional("drills", EnumCodec<DrillSeries>.Words, x => x.Drills, Usual.Drills,
            "The drills at hand; metricHalves when left out.");
        return v => new VentLayout { HoleCount = count[v], WallThickness = wall[v], Land = land[v], Drills = drills[v] };
    });

    public static readonly RecordCodec<GapIgnition> Gap = new("gap", "A vented gap, run at the state of the flight at burn-through.", f =>
    {
        var design = f.Required("design", Design, x => x.Design, "The gap as built.");
        var layout = f.Optional<VentLayout?>("layout", Layout!, x => x.Layout, null,
            "How new vents would be drilled, for the advice of a review; no advice when left out, as for motors in contact.");
        var pressure = f.Required("holePressureCoefficient", NumberCodec.Ratio, x => x.HolePressureCoefficient,
            "Pressure coefficient of the body side at the holes; near 0 on a long cylinder.");
        var model = f.Optional("model", GapModelCodec.Codec, x => x.Model, new GapModel.TwoZone(),
            "How the gas in the gap is modelled; twoZone when left out.");
        var solver = f.Optional("solver", SolverCodec.Codec, x => x.Solver, SolverOptions.ForGaps,
            "How the gap is integrated; the defaults when left out.");
        return v => new GapIgnition
        {
            Design = design[v],
            Layout = layout[v],
            HolePressureCoefficient = pressure[v],
            Model = model[v],
            Solver = solver[v]
        };
    })
    {
        StartsFromOwn = ("a gap", [new("bore18mm", "A closed gap of 18 mm bore and 120 mm length behind a long cylinder, "
            + "invented and judged; vents are for the builder to choose.", () => Bore18mm)]),
    };

    private static GapIgnition Bore18mm => new() { Design = StartingGaps.Bore18mm.Design, HolePressureCoefficient = 0 };
}
