using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Plans.Forms;
using Staging.Core.Reviews;
using Staging.Core.Solving;

namespace Staging.Core.Plans.Records;

/// <summary>The gap between two motors as built.</summary>
internal static class GapForms
{
    public static readonly RecordForm<GuideTube> Tube = new("guideTube", "The tube between the motors.", f =>
    {
        var bore = f.Required("bore", Quantities.Length, x => x.Bore, "Inner diameter.");
        var length = f.Required("length", Quantities.Length, x => x.Length, "From the booster motor's forward end to the upper motor's nozzle plane.");
        return v => new GuideTube { Bore = bore[v], Length = length[v] };
    });

    public static readonly RecordForm<Vent> Vent = new("vent", "Holes from the guide tube to the outside, at one station.", f =>
    {
        var station = f.Required("station", Quantities.Length, x => x.Station, "Distance of the hole centres from the booster motor's forward end.");
        var holes = f.Required("holes", DischargeForms.Holes, x => x.Holes, "The holes.");
        return v => new Vent { Station = station[v], Holes = holes[v] };
    });

    public static readonly RecordForm<GapClosures> Closures = new("closures", "Mixing and heat transfer: what a one-dimensional model must be told.", f =>
    {
        var front = f.Required("frontThicknessInBores", NumberForm.Ratio, x => x.FrontThicknessInBores, "Length, in bores, over which a hole changes from drawing air to drawing products.");
        var exchange = f.Required("deadEndExchange", NumberForm.Ratio, x => x.DeadEndExchange, "Turbulent exchange with the dead end beyond the last vent.");
        var reach = f.Required("stirringReachInBores", NumberForm.Ratio, x => x.StirringReachInBores, "Depth, in bores, over which the stirring of a dead end falls by e.");
        var wall = f.Required("wallHeatTransfer", Quantities.HeatTransfer, x => x.WallHeatTransfer, "Heat transfer from the hot gas to the tube wall.");
        var emissivity = f.Required("emissivity", NumberForm.Ratio, x => x.Emissivity, "Emissivity of the products at the grain.");
        var particles = f.Required("particleEfficiency", NumberForm.Ratio, x => x.ParticleEfficiency, "Share of the heat of impinging particles that the grain takes up.");
        var provenance = f.Required("source", ProvenanceForm.Form, x => x.Source, ProvenanceForm.Meaning);
        return v => new GapClosures
        {
            FrontThicknessInBores = front[v],
            DeadEndExchange = exchange[v],
            StirringReachInBores = reach[v],
            WallHeatTransfer = wall[v],
            Emissivity = emissivity[v],
            ParticleEfficiency = particles[v],
            Source = provenance[v],
        };
    });

    public static readonly RecordForm<GapDesign> Design = new("gapDesign", "The gap as built, and what is known of the two motors.", f =>
    {
        var tube = f.Required("tube", Tube, x => x.Tube, "The tube between the motors.");
        var vents = f.Required("vents", new ListForm<Vent>(Vent), x => x.Vents, "Holes to the outside; an empty list is a closed gap.");
        var law = f.Required("dischargeLaw", DischargeForms.Law, x => x.DischargeLaw, "How the holes discharge.");
        var source = f.Required("source", BurnThroughForm.Form, x => x.Source, "What comes out of the booster.");
        var joint = f.Required("joint", JointForms.Joint, x => x.Joint, "What holds the stages together.");
        var grain = f.Required("grain", UpperGrainForm.Form, x => x.Grain, "The propellant to be lit.");
        var closures = f.Required("closures", Closures, x => x.Closures, "Mixing and heat transfer.");
        return v => new GapDesign
        {
            Tube = tube[v],
            Vents = vents[v],
            DischargeLaw = law[v],
            Source = source[v],
            Joint = joint[v],
            Grain = grain[v],
            Closures = closures[v],
        };
    });

    public static readonly RecordForm<VentLayout> Layout = new("ventLayout", "How new vents would be drilled.", f =>
    {
        var count = f.Required("holeCount", CountForm.Whole, x => x.HoleCount, "Number of equal holes round the tube.");
        var wall = f.Required("wallThickness", Quantities.Length, x => x.WallThickness, "Wall thickness of the tube.");
        var land = f.Required("land", Quantities.Length, x => x.Land, "Material left between the upper edge of the holes and the nozzle plane.");
        var drills = f.Required("drills", ChoiceForm<DrillSeries>.Words, x => x.Drills, "The drills at hand.");
        return v => new VentLayout { HoleCount = count[v], WallThickness = wall[v], Land = land[v], Drills = drills[v] };
    });

    public static readonly RecordForm<GapIgnition> Gap = new("gap", "A vented gap, run at the state of the flight at burn-through.", f =>
    {
        var design = f.Required("design", Design, x => x.Design, "The gap as built.");
        var layout = f.Required("layout", Layout, x => x.Layout, "How new vents would be drilled, for the advice of a review.");
        var pressure = f.Required("holePressureCoefficient", NumberForm.Ratio, x => x.HolePressureCoefficient, "Pressure coefficient of the body side at the holes; near 0 on a long cylinder.");
        var solver = f.Optional("solver", SolverForm.Form, x => x.Solver, SolverOptions.Default, "How the gap is integrated; the defaults when left out.");
        return v => new GapIgnition { Design = design[v], Layout = layout[v], HolePressureCoefficient = pressure[v], Solver = solver[v] };
    });
}
