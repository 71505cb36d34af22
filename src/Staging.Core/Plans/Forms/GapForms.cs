using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Reviews;

namespace Staging.Core.Plans.Forms;

/// <summary>The gap between two stages, part by part.</summary>
internal static class GapForms
{
    private static readonly RecordForm<GuideTube> Tube = new("guide tube", k =>
    {
        var bore = k.Needs("bore", Quantities.Length, x => x.Bore);
        var length = k.Needs("length", Quantities.Length, x => x.Length);
        return v => new GuideTube { Bore = bore(v), Length = length(v) };
    });

    private static readonly RecordForm<VentHoles> Holes = new("vent holes", k =>
    {
        var diameter = k.Needs("diameter", Quantities.Length, x => x.Diameter);
        var wall = k.Needs("wallThickness", Quantities.Length, x => x.WallThickness);
        var count = k.Needs("count", CountForm.Whole, x => x.Count);
        return v => new VentHoles { Diameter = diameter(v), WallThickness = wall(v), Count = count(v) };
    });

    private static readonly RecordForm<Vent> Vent = new("vent", k =>
    {
        var station = k.Needs("station", Quantities.Length, x => x.Station);
        var holes = k.Needs("holes", Holes, x => x.Holes);
        return v => new Vent { Station = station(v), Holes = holes(v) };
    });

    private static readonly UnionForm<IDischargeLaw> Law = new("a discharge law",
    [
        new UnionCase<IDischargeLaw, SharpEdgedLaw>("sharpEdged", new("sharp-edged law", k =>
        {
            var edge = k.Needs("edgeFactor", NumberForm.Ratio, x => x.EdgeFactor);
            return v => new SharpEdgedLaw { EdgeFactor = edge(v) };
        })),
        new UnionCase<IDischargeLaw, ConstantCoefficientLaw>("constantCoefficient", new("constant-coefficient law", k =>
        {
            var coefficient = k.Needs("coefficient", NumberForm.Ratio, x => x.Coefficient);
            var source = k.Needs("source", SharedForms.Provenance, x => x.Source);
            return v => new ConstantCoefficientLaw { Coefficient = coefficient(v), Source = source(v) };
        })),
        new UnionCase<IDischargeLaw, JobsonLaw>("jobson", new("law of Jobson", k =>
        {
            var contraction = k.Needs("incompressibleContraction", NumberForm.Ratio, x => x.IncompressibleContraction);
            return v => new JobsonLaw { IncompressibleContraction = contraction(v) };
        })),
        new UnionCase<IDischargeLaw, ShortTubeLaw>("shortTube", new("short-tube law", _ => _ => ShortTubeLaw.SquareInlet)),
    ]);

    private static readonly RecordForm<BurnThroughSource> Source = new("burn-through source", k =>
    {
        var products = k.Needs("products", SharedForms.DustyGas, x => x.Products);
        var flame = k.Needs("flameTemperature", Quantities.Temperature, x => x.FlameTemperature);
        var volume = k.Needs("chamberVolume", Quantities.Volume, x => x.ChamberVolume);
        var pressure = k.Needs("chamberPressure", Quantities.Pressure, x => x.ChamberPressure);
        var opening = k.Needs("openingDiameter", Quantities.Length, x => x.OpeningDiameter);
        var openingTime = k.Needs("openingTime", Quantities.Duration, x => x.OpeningTime);
        var openingCoefficient = k.Needs("openingCoefficient", NumberForm.Ratio, x => x.OpeningCoefficient);
        var throat = k.Needs("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter);
        var fragments = k.Needs("fragmentMass", Quantities.Mass, x => x.FragmentMass);
        var burnTime = k.Needs("fragmentBurnTime", Quantities.Duration, x => x.FragmentBurnTime);
        var source = k.Needs("source", SharedForms.Provenance, x => x.Source);
        return v => new BurnThroughSource
        {
            Products = products(v), FlameTemperature = flame(v), ChamberVolume = volume(v), ChamberPressure = pressure(v),
            OpeningDiameter = opening(v), OpeningTime = openingTime(v), OpeningCoefficient = openingCoefficient(v),
            NozzleThroatDiameter = throat(v), FragmentMass = fragments(v), FragmentBurnTime = burnTime(v), Source = source(v),
        };
    });

    private static readonly RecordForm<FrictionJoint> Joint = new("friction joint", k =>
    {
        var diameter = k.Needs("pressureDiameter", Quantities.Length, x => x.PressureDiameter);
        var breakaway = k.Needs("breakawayForce", Quantities.Force, x => x.BreakawayForce);
        var sliding = k.Needs("slidingForce", Quantities.Force, x => x.SlidingForce);
        var engagement = k.Needs("engagement", Quantities.Length, x => x.Engagement);
        var source = k.Needs("source", SharedForms.Provenance, x => x.Source);
        return v => new FrictionJoint
        {
            PressureDiameter = diameter(v), BreakawayForce = breakaway(v), SlidingForce = sliding(v), Engagement = engagement(v), Source = source(v),
        };
    });

    private static readonly RecordForm<UpperGrain> Grain = new("upper grain", k =>
    {
        var throat = k.Needs("nozzleThroatDiameter", Quantities.Length, x => x.NozzleThroatDiameter);
        var recess = k.Needs("recessVolume", Quantities.Volume, x => x.RecessVolume);
        var conductivity = k.Needs("conductivity", Quantities.Conductivity, x => x.Conductivity);
        var density = k.Needs("density", Quantities.Density, x => x.Density);
        var heat = k.Needs("heatCapacity", Quantities.SpecificHeat, x => x.HeatCapacity);
        var ignition = k.Needs("ignitionTemperature", Quantities.Temperature, x => x.IgnitionTemperature);
        var initial = k.Needs("initialTemperature", Quantities.Temperature, x => x.InitialTemperature);
        var source = k.Needs("source", SharedForms.Provenance, x => x.Source);
        return v => new UpperGrain
        {
            NozzleThroatDiameter = throat(v), RecessVolume = recess(v), Conductivity = conductivity(v), Density = density(v), HeatCapacity = heat(v),
            IgnitionTemperature = ignition(v), InitialTemperature = initial(v), Source = source(v),
        };
    });

    private static readonly RecordForm<GapClosures> Closures = new("gap closures", k =>
    {
        var front = k.Needs("frontThicknessInBores", NumberForm.Ratio, x => x.FrontThicknessInBores);
        var deadEnd = k.Needs("deadEndExchange", NumberForm.Ratio, x => x.DeadEndExchange);
        var reach = k.Needs("stirringReachInBores", NumberForm.Ratio, x => x.StirringReachInBores);
        var wall = k.Needs("wallHeatTransfer", Quantities.HeatTransfer, x => x.WallHeatTransfer);
        var emissivity = k.Needs("emissivity", NumberForm.Ratio, x => x.Emissivity);
        var particles = k.Needs("particleEfficiency", NumberForm.Ratio, x => x.ParticleEfficiency);
        var source = k.Needs("source", SharedForms.Provenance, x => x.Source);
        return v => new GapClosures
        {
            FrontThicknessInBores = front(v), DeadEndExchange = deadEnd(v), StirringReachInBores = reach(v), WallHeatTransfer = wall(v),
            Emissivity = emissivity(v), ParticleEfficiency = particles(v), Source = source(v),
        };
    });

    private static readonly RecordForm<GapDesign> Design = new("gap design", k =>
    {
        var tube = k.Needs("tube", Tube, x => x.Tube);
        var vents = k.Needs("vents", new ListForm<Vent>(Vent), x => x.Vents);
        var law = k.Needs("dischargeLaw", Law, x => x.DischargeLaw);
        var source = k.Needs("source", Source, x => x.Source);
        var joint = k.Needs("joint", Joint, x => x.Joint);
        var grain = k.Needs("grain", Grain, x => x.Grain);
        var closures = k.Needs("closures", Closures, x => x.Closures);
        return v => new GapDesign
        {
            Tube = tube(v), Vents = vents(v), DischargeLaw = law(v), Source = source(v), Joint = joint(v), Grain = grain(v), Closures = closures(v),
        };
    });

    private static readonly RecordForm<VentLayout> Layout = new("vent layout", k =>
    {
        var count = k.Needs("holeCount", CountForm.Whole, x => x.HoleCount);
        var wall = k.Needs("wallThickness", Quantities.Length, x => x.WallThickness);
        var land = k.Needs("land", Quantities.Length, x => x.Land);
        var drills = k.Needs("drills", ChoiceForm<DrillSeries>.Words, x => x.Drills);
        return v => new VentLayout { HoleCount = count(v), WallThickness = wall(v), Land = land(v), Drills = drills(v) };
    });

    /// <summary>The gap with all its parts, as a stage holds it.</summary>
    public static RecordForm<GapIgnition> Gap { get; } = new("gap", k =>
    {
        var design = k.Needs("design", Design, x => x.Design);
        var layout = k.Needs("layout", Layout, x => x.Layout);
        var hole = k.Needs("holePressureCoefficient", NumberForm.Ratio, x => x.HolePressureCoefficient);
        var solver = k.Or("solver", SolverForms.Options, x => x.Solver, Solving.SolverOptions.Default);
        return v => new GapIgnition { Design = design(v), Layout = layout(v), HolePressureCoefficient = hole(v), Solver = solver(v) };
    });
}
