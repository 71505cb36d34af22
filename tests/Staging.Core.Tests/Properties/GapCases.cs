using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using UnitsNet;
using static Staging.Core.Tests.Properties.QuantityCases;

namespace Staging.Core.Tests.Properties;

/// <summary>Random gaps in which every value is legal on its own: every kind of source, joint, vent and law. They need not hang together, and stand for nothing real.</summary>
internal static class GapCases
{
    private static readonly Gen<DustyGas> Products =
        from name in Names
        from gasConstant in SpecificHeat(10, 5000)
        from gamma in Number(1.01, 5.0 / 3)
        from share in Number(0.2, 1)
        from particles in SpecificHeat(100, 5000)
        from source in Sources
        select new DustyGas
        {
            Name = name,
            Gas = new PerfectGas { Name = name + " gas", GasConstant = gasConstant, HeatCapacityRatio = gamma, Provenance = source },
            GasMassFraction = share,
            ParticleHeatCapacity = particles,
            Provenance = source,
        };

    private static readonly Gen<WebBurn> Webs = Gen.OneOf(
        from mass in Masses(0, 0.1)
        from time in Durations(1e-4, 10)
        select (WebBurn)new WebBurn.OverTime { Mass = mass, Time = time },
        from mass in Masses(0, 0.1)
        from thickness in Lengths(1e-5, 0.02)
        from rate in Gen.Elements(Speed.FromMillimetersPerSecond(12.5), Speed.FromMetersPerSecond(0.02))
        from exponent in Number(0, 1)
        from source in Sources
        select (WebBurn)new WebBurn.ByRateLaw
        {
            Mass = mass,
            Thickness = thickness,
            Rate = new BurnRateLaw { RateAtOneAtmosphere = rate, PressureExponent = exponent, Provenance = source },
        });

    private static readonly Gen<GapSource.Booster> Boosters =
        from products in Products
        from flame in Temperatures(800, 3500)
        from volume in Volumes(1e-8, 0.01)
        from pressure in Pressures(1e4, 2e7)
        from opening in Lengths(5e-4, 0.2)
        from openingTime in Durations(1e-6, 1)
        from coefficient in Number(0.3, 1)
        from throat in Lengths(0, 0.1)
        from web in Webs
        from delay in Durations(0, 10)
        from source in Sources
        select new GapSource.Booster
        {
            Products = products,
            FlameTemperature = flame,
            ChamberVolume = volume,
            ChamberPressure = pressure,
            OpeningDiameter = opening,
            OpeningTime = openingTime,
            OpeningCoefficient = coefficient,
            NozzleThroatDiameter = throat,
            Web = web,
            Delay = delay,
            Provenance = source,
        };

    /// <summary>Motors known by their grain; not each has a chamber pressure that breaks a web.</summary>
    public static readonly Gen<GapSource.EndBurner> EndBurners =
        from products in Products
        from flame in Temperatures(800, 3500)
        from diameter in Lengths(0.003, 0.15)
        from burnt in Lengths(0.003, 0.5)
        from throat in Lengths(3e-4, 0.1)
        from density in Number(500, 3000)
        from rate in Number(1e-4, 1)
        from exponent in Number(0, 0.9)
        from strength in Pressures(2e5, 1e8)
        from plate in Gen.OneOf(Gen.Constant(1.0), Number(0.5, 1.5))
        from cracks in Gen.OneOf(Gen.Constant(4.0), Number(1, 20))
        from share in Gen.OneOf(Gen.Constant(0.5), Number(0, 1))
        from speed in Gen.OneOf(Gen.Constant<Speed?>(null), Gen.Elements<Speed?>(Speed.Zero, Speed.FromKilometersPerHour(100), Speed.FromMetersPerSecond(40)))
        from fresh in Durations(0, 10)
        from coefficient in Number(0.3, 1)
        from delay in Gen.OneOf(Gen.Constant(default(Duration)), Durations(0, 10))
        from source in Sources
        select new GapSource.EndBurner
        {
            Products = products,
            FlameTemperature = flame,
            GrainDiameter = diameter,
            BurntLength = burnt,
            NozzleThroatDiameter = throat,
            Density = Density.FromKilogramsPerCubicMeter(density),
            Rate = new BurnRateLaw { RateAtOneAtmosphere = Speed.FromMetersPerSecond(rate), PressureExponent = exponent, Provenance = source },
            Strength = strength,
            PlateFactor = plate,
            RadialCracks = cracks,
            SpeedShare = share,
            PieceSpeed = speed,
            FreshFaceDelay = fresh,
            OpeningCoefficient = coefficient,
            Delay = delay,
            Provenance = source,
        };

    private static readonly Gen<GapSource> GapSources = Gen.OneOf(
        Boosters.Select(b => (GapSource)b),
        EndBurners.Select(b => (GapSource)b),
        from gas in Products
        from flow in Number(0, 10)
        from temperature in Number(250, 3500)
        from source in Sources
        select (GapSource)GapSource.Tabulated.FromColumns(gas, [0, 0.5, 1], [0, flow, 0], [300, temperature, 300], source),
        from first in Boosters
        from second in Gen.OneOf(Boosters.Select(b => (GapSource.Motor)b), EndBurners.Select(b => (GapSource.Motor)b))
        select (GapSource)new GapSource.Cluster { Motors = [first, second] });

    private static readonly Gen<VentTarget> Targets = Gen.OneOf(
        Gen.Constant(VentTarget.Air),
        Number(-1.5, 1).Select(c => VentTarget.Outside(c)),
        Names.Select(VentTarget.IntoJacket));

    private static readonly Gen<UpperGrain> Grains =
        from throat in Lengths(5e-4, 0.1)
        from recess in Volumes(1e-9, 1e-4)
        from conductivity in Number(0.05, 2)
        from density in Gen.Elements(Density.FromKilogramsPerCubicMeter(1700), Density.FromGramsPerCubicCentimeter(1.75))
        from heat in SpecificHeat(300, 3000)
        from ignition in Temperatures(450, 1200)
        from initial in Temperatures(220, 350)
        from source in Sources
        select new UpperGrain
        {
            NozzleThroatDiameter = throat,
            RecessVolume = recess,
            Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity),
            Density = density,
            HeatCapacity = heat,
            IgnitionTemperature = ignition,
            InitialTemperature = initial,
            Provenance = source,
        };

    private static readonly Gen<VentHoles?> Passages =
        from there in Gen.Elements(false, true)
        from diameter in Lengths(1e-4, 0.1)
        from wall in Lengths(1e-5, 0.05)
        from count in Gen.Choose(1, 100)
        select there ? new VentHoles { Diameter = diameter, WallThickness = wall, Count = count } : null;

    /// <summary>The kinds of joint, each round a coupler.</summary>
    private static readonly Gen<Func<FrictionJoint, StageJoint>> Joints = Gen.OneOf(
        Gen.Constant<Func<FrictionJoint, StageJoint>>(coupler => coupler),
        from thickness in Lengths(1e-5, 5e-3)
        from soft in Temperatures(320, 1200)
        from contact in Number(0, 20_000)
        select (Func<FrictionJoint, StageJoint>)(coupler => StageJoint.Taped(coupler, JointTape.PaperTape with
        {
            Thickness = thickness,
            SofteningTemperature = soft,
            GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(contact),
        })),
        from grams in Number(1, 1000)
        from passages in Passages
        from wake in Number(-0.3, 0.3)
        select (Func<FrictionJoint, StageJoint>)(coupler => StageJoint.FreeMotorTube(coupler, Mass.FromGrams(grams), passages, wake)));

    private static readonly Gen<IDischargeLaw> Laws = Gen.OneOf(
        Number(0.9, 1.18).Select(x => (IDischargeLaw)new SharpEdgedLaw { EdgeFactor = x }),
        from x in Number(0.1, 1)
        from s in Sources
        select (IDischargeLaw)new ConstantCoefficientLaw { Coefficient = x, Provenance = s },
        Number(0.5, 0.9).Select(x => (IDischargeLaw)new JobsonLaw { IncompressibleContraction = x }),
        Gen.Constant<IDischargeLaw>(ShortTubeLaw.SquareInlet),
        from c in Number(1e-13, 1e-5)
        from b in Number(0, 0.7)
        from m in Number(0.4, 1)
        from s in Sources
        select (IDischargeLaw)new SonicConductanceLaw { SonicConductance_m3_per_sPa = c, CriticalRatio = b, SubsonicIndex = m, ReferenceArea = Area.FromSquareMillimeters(20), Provenance = s });

    private static readonly Gen<Vent> Vents =
        from station in Lengths(0, 5)
        from diameter in Lengths(1e-4, 0.1)
        from wall in Lengths(1e-5, 0.05)
        from count in Gen.Choose(1, 1000)
        from target in Targets
        from axial in Gen.OneOf(Gen.Constant<Length?>(null), Lengths(1e-4, 5).Select(x => (Length?)x))
        select new Vent { Station = station, Holes = new VentHoles { Diameter = diameter, WallThickness = wall, Count = count }, To = target, AxialLength = axial };

    private static readonly Gen<Jacket> Jackets =
        from name in Names
        from volume in Volumes(1e-9, 1)
        from wall in Areas(0, 10)
        from vents in Vents.ListOf(2)
        from bore in Gen.OneOf(Gen.Constant<Length?>(null), Lengths(0.002, 0.5).Select(x => (Length?)x))
        from placed in Gen.Elements(false, true)
        select new Jacket
        {
            Name = name,
            Volume = volume,
            WallArea = wall,
            OuterBore = bore,
            Openings = [.. vents.Select(v => new JacketOpening { Holes = v.Holes, To = v.To, Station = placed ? v.Station : null })],
        };

    private static readonly Gen<GapDesign> Designs =
        from bore in Lengths(0.002, 0.2)
        from length in Lengths(0.001, 5)
        from vents in Vents.ListOf(3)
        from law in Laws
        from jackets in Gen.OneOf(Gen.Constant(Array.Empty<Jacket>()), Jackets.ListOf(2).Select(x => x.ToArray()))
        from step in Gen.OneOf(Gen.Constant<BoreStep?>(null), from x in Lengths(0, 5) from d in Lengths(0.002, 0.2) select (BoreStep?)new BoreStep { Station = x, Bore = d })
        from burning in GapSources
        from force in Gen.Elements(Force.FromNewtons(20), Force.FromKilonewtons(0.1), Force.FromPoundsForce(5))
        from engagement in Lengths(5e-4, 0.5)
        from leak in Gen.OneOf(Gen.Constant(Area.Zero), Areas(0, 2e-4))
        from joint in Joints
        from grain in Grains
        from share in Number(0, 1)
        from source in Sources
        select new GapDesign
        {
            Tube = new GuideTube { Bore = bore, Length = length, Steps = step is null ? [] : [step] },
            Vents = [.. vents],
            Jackets = [.. jackets],
            DischargeLaw = law,
            Source = burning,
            Joint = joint(new FrictionJoint { PressureDiameter = bore, BreakawayForce = force, SlidingForce = force, Engagement = engagement, LeakArea = leak, Provenance = source }),
            Grain = grain,
            MixingAndHeat = MixingAndHeat.Judged with { Emissivity = share, ParticleEfficiency = 1 - share, Provenance = source },
        };

    /// <summary>Designs that have some of their parts from the starting gap of the library.</summary>
    private static readonly Gen<GapDesign> NearTheStartingGap =
        from design in Designs
        from own in Gen.Elements(true, false).ListOf(6)
        from conductivity in Number(0.15, 0.7)
        let start = StartingGaps.Bore18mm.Design
        select start with
        {
            Tube = own[0] ? design.Tube : start.Tube,
            Vents = own[1] ? design.Vents : [],
            Jackets = own[1] ? design.Jackets : [],
            Source = own[2] ? design.Source : start.Source,
            Joint = own[3] ? design.Joint : start.Joint,
            Grain = own[4] ? design.Grain : start.Grain with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity) },
            MixingAndHeat = own[5] ? design.MixingAndHeat : start.MixingAndHeat,
        };

    public static readonly Gen<GapIgnition> Gaps =
        from design in Gen.OneOf(Designs, NearTheStartingGap)
        from hasLayout in Gen.Elements(true, true, false)
        from count in Gen.Choose(1, 100)
        from wall in Lengths(1e-5, 0.05)
        from land in Lengths(0, 1)
        from drills in Gen.Elements(Enum.GetValues<DrillSeries>())
        from coefficient in Number(-1.5, 1)
        from model in Gen.Elements<GapModel>(
            new GapModel.TwoZone(),
            new GapModel.WellStirred(),
            new GapModel.OneDimensional(),
            new GapModel.OneDimensional { Cells = 77, CourantNumber = 0.6, ProfileTimes = [Duration.FromMicroseconds(300), Duration.FromMilliseconds(2)] })
        from solver in Gen.Elements(SolverOptions.Default, SolverOptions.Default with { RelativeTolerance = 1e-6, MaxSteps = 1000, LongestStep = Duration.FromMilliseconds(2) })
        select new GapIgnition
        {
            Design = design,
            Layout = !hasLayout ? null : new VentLayout { HoleCount = count, WallThickness = wall, Land = land, Drills = drills },
            HolePressureCoefficient = coefficient,
            Model = model,
            Solver = solver,
        };
}
