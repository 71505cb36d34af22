using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Reviews;
using Staging.Core.Solving;
using UnitsNet;
using UnitsNet.Units;

namespace Staging.Core.Tests.Properties;

/// <summary>
/// Random plans in which every value is legal on its own: every case of every union, every optional key there or not, every unit. They need
/// not hang together, and stand for nothing real.
/// </summary>
public static class PlanCases
{
    private static readonly Gen<string> Names = Gen.Elements(
        "booster", "sustainer", "a \"quoted\" name", "back\\slash", "tab\tand line\nbreak", "18 mm < 24 mm & more", "h\u00f6her", "\u6f22\u5b57", "\ud83d\ude80 up", "null", "$.name");

    private static readonly Gen<Provenance> Sources =
        from source in Names
        from locator in Gen.OneOf(Gen.Constant<string?>(null), Names.Select(n => (string?)n))
        from how in Gen.Elements(Enum.GetValues<Evidence>())
        select new Provenance { Source = source, Locator = locator, How = how };

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
            Gas = new PerfectGas { Name = name + " gas", GasConstant = gasConstant, HeatCapacityRatio = gamma, Source = source },
            GasMassFraction = share,
            ParticleHeatCapacity = particles,
            Source = source,
        };

    private static readonly Gen<BurnThroughSource> Burnings =
        from products in Products
        from flame in Temperatures(800, 3500)
        from volume in Volumes(1e-8, 0.01)
        from pressure in Pressures(1e4, 2e7)
        from opening in Lengths(5e-4, 0.2)
        from openingTime in Durations(1e-6, 1)
        from coefficient in Number(0.3, 1)
        from throat in Lengths(0, 0.1)
        from fragments in Masses(0, 0.1)
        from burnTime in Durations(1e-4, 10)
        from source in Sources
        select new BurnThroughSource
        {
            Products = products,
            FlameTemperature = flame,
            ChamberVolume = volume,
            ChamberPressure = pressure,
            OpeningDiameter = opening,
            OpeningTime = openingTime,
            OpeningCoefficient = coefficient,
            NozzleThroatDiameter = throat,
            FragmentMass = fragments,
            FragmentBurnTime = burnTime,
            Source = source,
        };

    private static readonly Gen<GapSource> BoosterMotors = Gen.OneOf(
        Burnings.Select(b => (GapSource)b),
        from motor in Burnings
        from mass in Masses(0, 0.1)
        from thickness in Lengths(1e-5, 0.02)
        from rate in Gen.Elements(Speed.FromMillimetersPerSecond(12.5), Speed.FromMetersPerSecond(0.02))
        from exponent in Number(0, 1)
        from source in Sources
        select (GapSource)new GapSource.Fragments
        {
            Chamber = motor.Chamber,
            Mass = mass,
            Thickness = thickness,
            Rate = new BurnRateLaw { RateAtOneAtmosphere = rate, PressureExponent = exponent, Source = source },
            Source = source,
        });

    private static readonly Gen<GapSource> GapSources = Gen.OneOf(
        BoosterMotors,
        from gas in Products
        from flow in Number(0, 10)
        from temperature in Number(250, 3500)
        from source in Sources
        select (GapSource)new GapSource.Tabulated { Gas = gas, Feed = FeedTable.FromColumns([0, 0.5, 1], [0, flow, 0], [300, temperature, 300]), Source = source },
        from first in BoosterMotors
        from second in BoosterMotors
        from delay in Durations(0, 10)
        select (GapSource)new GapSource.Cluster { Motors = [new ClusterMotor { Source = first, Delay = default }, new ClusterMotor { Source = second, Delay = delay }] });

    private static readonly Gen<VentTarget> Targets = Gen.OneOf(
        Gen.Constant(VentTarget.Air),
        Number(-1.5, 1).Select(c => (VentTarget)new VentTarget.Outside { PressureCoefficient = c }),
        Names.Select(VentTarget.Jacket));

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
            Source = source,
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
        select (Func<FrictionJoint, StageJoint>)(coupler => new StageJoint.Taped
        {
            Coupler = coupler,
            Tape = JointTape.PaperTape with
            {
                Thickness = thickness,
                SofteningTemperature = soft,
                GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(contact),
            },
        }),
        from grams in Number(1, 1000)
        from passages in Passages
        from wake in Number(-0.3, 0.3)
        select (Func<FrictionJoint, StageJoint>)(coupler => new StageJoint.FreeMotorTube
        {
            Coupler = coupler,
            MovingMass = Mass.FromGrams(grams),
            RearPassages = passages,
            RearPressureCoefficient = wake,
        }));

    private static readonly Gen<IDischargeLaw> Laws = Gen.OneOf(
        Number(0.9, 1.18).Select(x => (IDischargeLaw)new SharpEdgedLaw { EdgeFactor = x }),
        from x in Number(0.1, 1)
        from s in Sources
        select (IDischargeLaw)new ConstantCoefficientLaw { Coefficient = x, Source = s },
        Number(0.5, 0.9).Select(x => (IDischargeLaw)new JobsonLaw { IncompressibleContraction = x }),
        Gen.Constant<IDischargeLaw>(ShortTubeLaw.SquareInlet),
        from c in Number(1e-13, 1e-5)
        from b in Number(0, 0.7)
        from m in Number(0.4, 1)
        from s in Sources
        select (IDischargeLaw)new SonicConductanceLaw { SonicConductance_m3_per_sPa = c, CriticalRatio = b, SubsonicIndex = m, ReferenceArea = Area.FromSquareMillimeters(20), Source = s });

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
        select new Jacket { Name = name, Volume = volume, WallArea = wall, Openings = [.. vents.Select(v => new JacketOpening { Holes = v.Holes, To = v.To })] };

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
            Joint = joint(new FrictionJoint { PressureDiameter = bore, BreakawayForce = force, SlidingForce = force, Engagement = engagement, Source = source }),
            Grain = grain,
            Closures = GapClosures.Judged with { Emissivity = share, ParticleEfficiency = 1 - share, Source = source },
        };

    private static readonly Gen<GapIgnition> Gaps =
        from design in Designs
        from count in Gen.Choose(1, 100)
        from wall in Lengths(1e-5, 0.05)
        from land in Lengths(0, 1)
        from drills in Gen.Elements(Enum.GetValues<DrillSeries>())
        from coefficient in Number(-1.5, 1)
        from model in Gen.Elements<GapModel>(
            new GapModel.Displacement(),
            new GapModel.Stirred(),
            new GapModel.Resolved(),
            new GapModel.Resolved { Cells = 77, CourantNumber = 0.6, ProfileTimes = [Duration.FromMicroseconds(300), Duration.FromMilliseconds(2)] })
        from solver in Gen.Elements(SolverOptions.Default, SolverOptions.Default with { RelativeTolerance = 1e-6, MostSteps = 1000, LongestStep = Duration.FromMilliseconds(2) })
        select new GapIgnition
        {
            Design = design,
            Layout = new VentLayout { HoleCount = count, WallThickness = wall, Land = land, Drills = drills },
            HolePressureCoefficient = coefficient,
            Model = model,
            Solver = solver,
        };

    private static readonly Gen<ElectronicsGuards> Guards =
        from all in Gen.Elements(true, false)
        from speed in Number(0, 5000)
        from height in Lengths(0, 200_000)
        from time in Durations(0, 1000)
        from tilt in Gen.Elements(Angle.FromDegrees(30), Angle.FromRadians(0.5))
        select all
            ? new ElectronicsGuards { LeastSpeed = Speed.FromMetersPerSecond(speed), LeastHeight = height, GreatestHeight = height, Earliest = time, Latest = time, GreatestTilt = tilt }
            : ElectronicsGuards.None;

    private static readonly Gen<StageIgnition> Ignitions = Gen.OneOf(
        Gen.Constant<StageIgnition>(new StageIgnition.AtLaunch()),
        Durations(0, 10).Select(t => (StageIgnition)new StageIgnition.ByContact { Lag = t }),
        Gaps.Select(g => (StageIgnition)new StageIgnition.ByGap { Gap = g }),
        from start in Gen.Elements(Enum.GetValues<TimerStart>())
        from timer in Durations(0, 1000)
        from lag in Durations(0, 10)
        from guards in Guards
        from separation in Gen.OneOf(
            Durations(0, 1000).Select(t => (SeparationRule)new SeparationRule.AfterBurnout { Lag = t }),
            Gen.Constant<SeparationRule>(new SeparationRule.AtIgnition()))
        select (StageIgnition)new StageIgnition.ByElectronics { From = start, Timer = timer, IgniterLag = lag, Guards = guards, Separation = separation });

    private static readonly Gen<DeploymentTrigger> Triggers = Gen.OneOf(
        Durations(0, 100).Select(t => (DeploymentTrigger)new DeploymentTrigger.AtSeparation { Lag = t }),
        Gen.Constant<DeploymentTrigger>(new DeploymentTrigger.ByMotorDelay()),
        Durations(0, 100).Select(t => (DeploymentTrigger)new DeploymentTrigger.AtApogee { Lag = t }));

    private static readonly Gen<Recovery> Recoveries =
        from area in Areas(1e-4, 100)
        from trigger in Triggers
        from recovery in Gen.Elements<Recovery>(
            new Recovery.Parachute { DragArea = area, Deployment = trigger },
            new Recovery.Streamer { DragArea = area, Deployment = trigger },
            new Recovery.Tumbling { DragArea = area, Deployment = trigger },
            new Recovery.Ballistic())
        select recovery;

    private static readonly Gen<DragTable> Drags =
        from area in Areas(0, 1000)
        from machs in Number(0.01, 5).ListOf(4)
        from coefficient in Number(0, 100)
        select DragTable.FromColumns(area, [0, .. machs.Order().Select((m, i) => m + i)], [coefficient, .. machs]);

    private static readonly Gen<ThrustCurve> Curves =
        from steps in Number(1e-3, 10).ListOf(5)
        from peak in Number(1, 1e7)
        let times = steps.Select((_, i) => steps.Take(i + 1).Sum()).ToArray()
        select ThrustCurve.FromColumns([0, .. times, 999], [peak, .. times, 0]);

    private static readonly Gen<MotorForwardEnd> Ends = Gen.OneOf(
        Durations(1e-3, 1000).Select(t => (MotorForwardEnd)new MotorForwardEnd.BurnsThrough { After = t }),
        Gen.Constant<MotorForwardEnd>(new MotorForwardEnd.BurnsThrough()),
        Durations(0, 100).Select(t => (MotorForwardEnd)new MotorForwardEnd.Ejects { Delay = t }),
        Gen.Constant<MotorForwardEnd>(new MotorForwardEnd.Plugged()));

    private static readonly Gen<Motor> Motors =
        from name in Names
        from curve in Curves
        from propellant in Masses(0, 10_000)
        from loaded in Masses(0, 20_000)
        from end in Ends
        from diameter in Lengths(1e-3, 2)
        from length in Lengths(1e-3, 20)
        from source in Sources
        select new Motor { Name = name, Thrust = curve, PropellantMass = propellant, LoadedMass = loaded, ForwardEnd = end, Diameter = diameter, Length = length, Provenance = source };

    private static readonly Gen<Stage> Stages =
        from name in Names
        from mass in Masses(0, 100_000)
        from motor in Motors
        from count in Gen.Choose(1, 100)
        from drag in Drags
        from burning in Gen.Elements<DragTable?>(null, drag)
        from dropped in Gen.OneOf(Gen.Constant<DragTable?>(null), Drags.Select(d => (DragTable?)d))
        from recovery in Recoveries
        from ignition in Ignitions
        select new Stage
        {
            Name = name,
            StructureMass = mass,
            Motor = motor,
            MotorCount = count,
            Drag = drag,
            DragWhileBurning = burning,
            DragWhenDropped = dropped,
            Recovery = recovery,
            Ignition = ignition,
        };

    private static readonly Gen<IAtmosphere> Atmospheres = Gen.OneOf(
        Gen.Constant<IAtmosphere>(StandardAtmosphere.Us1976),
        from elevation in Lengths(-430, 6000)
        from pressure in Pressures(40e3, 110e3)
        from temperature in Temperatures(220, 330)
        from humidity in Number(0, 1)
        select (IAtmosphere)new SiteAtmosphere(new SiteConditions { Elevation = elevation, Pressure = pressure, Temperature = temperature, RelativeHumidity = humidity }),
        from pressure in Pressures(0, 1e6)
        from temperature in Temperatures(1, 1000)
        select (IAtmosphere)new UniformAtmosphere { Pressure = pressure, Temperature = temperature, Density = Density.FromKilogramsPerCubicMeter(1.2), SoundSpeed = Speed.FromFeetPerSecond(1100) });

    private static readonly Gen<LaunchSite> Sites =
        from atmosphere in Atmospheres
        from elevation in Lengths(-500, 9000)
        from wind in Gen.Elements(Speed.FromMetersPerSecond(3), Speed.FromKilometersPerHour(10), Speed.Zero)
        from gravity in Gen.Elements(
            Gravity.Standard,
            new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.81), Radius = null },
            new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.78), Radius = Length.FromKilometers(6378) })
        select new LaunchSite { Atmosphere = atmosphere, Elevation = elevation, Wind = wind, Gravity = gravity };

    /// <summary>Whole plans of one to three stages.</summary>
    public static Arbitrary<StagingPlan> Plans() =>
        (from name in Names
         from size in Lengths(1, 100_000)
         from count in Gen.Choose(1, 3)
         from stages in Stages.ListOf(count)
         from payload in Gen.OneOf(Gen.Constant(default(Mass)), Masses(0, 100_000))
         from travel in Lengths(0.01, 100)
         from lean in Number(30, 90)
         from friction in Number(0, 2)
         from site in Sites
         select new StagingPlan
         {
             Name = name,
             SiteSize = size,
             Flight = new FlightPlan
             {
                 Stages = [.. stages],
                 Payload = payload,
                 Guide = new LaunchGuide { Length = travel, Elevation = Angle.FromDegrees(lean), FrictionCoefficient = friction, ConstantFriction = Force.FromNewtons(1) },
                 Site = site,
             },
         }).ToArbitrary();

    /// <summary>Numbers well inside a range, so that a change of unit does not round them out of it.</summary>
    private static Gen<double> Number(double low, double high) =>
        Gen.Choose(1, int.MaxValue - 1).Select(n => low + (high - low) * (1e-6 + (1 - 2e-6) * n / int.MaxValue));

    private static Gen<Length> Lengths(double low, double high) =>
        In(low, high, x => Length.FromMeters(x), (x, u) => x.ToUnit(u), LengthUnit.Meter, LengthUnit.Millimeter, LengthUnit.Centimeter, LengthUnit.Kilometer, LengthUnit.Inch, LengthUnit.Foot);

    private static Gen<Area> Areas(double low, double high) =>
        In(low, high, x => Area.FromSquareMeters(x), (x, u) => x.ToUnit(u), AreaUnit.SquareMeter, AreaUnit.SquareMillimeter, AreaUnit.SquareCentimeter, AreaUnit.SquareInch);

    private static Gen<Volume> Volumes(double low, double high) =>
        In(low, high, x => Volume.FromCubicMeters(x), (x, u) => x.ToUnit(u), VolumeUnit.CubicMeter, VolumeUnit.CubicMillimeter, VolumeUnit.CubicCentimeter, VolumeUnit.Liter);

    private static Gen<Mass> Masses(double low, double high) =>
        In(low, high, x => Mass.FromKilograms(x), (x, u) => x.ToUnit(u), MassUnit.Kilogram, MassUnit.Gram, MassUnit.Milligram, MassUnit.Ounce, MassUnit.Pound);

    private static Gen<Duration> Durations(double low, double high) =>
        In(low, high, x => Duration.FromSeconds(x), (x, u) => x.ToUnit(u), DurationUnit.Second, DurationUnit.Millisecond, DurationUnit.Microsecond, DurationUnit.Nanosecond);

    private static Gen<Pressure> Pressures(double low, double high) =>
        In(low, high, x => Pressure.FromPascals(x), (x, u) => x.ToUnit(u), PressureUnit.Pascal, PressureUnit.Kilopascal, PressureUnit.Bar, PressureUnit.PoundForcePerSquareInch);

    private static Gen<Temperature> Temperatures(double low, double high) =>
        In(low, high, x => Temperature.FromKelvins(x), (x, u) => x.ToUnit(u), TemperatureUnit.Kelvin, TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeFahrenheit);

    private static Gen<SpecificEntropy> SpecificHeat(double low, double high) =>
        In(low, high, x => SpecificEntropy.FromJoulesPerKilogramKelvin(x), (x, u) => x.ToUnit(u), SpecificEntropyUnit.JoulePerKilogramKelvin, SpecificEntropyUnit.KilojoulePerKilogramKelvin);

    private static Gen<T> In<T, TUnit>(double low, double high, Func<double, T> make, Func<T, TUnit, T> convert, params TUnit[] units) =>
        from x in Number(low, high)
        from unit in Gen.Elements(units)
        select convert(make(x), unit);
}
