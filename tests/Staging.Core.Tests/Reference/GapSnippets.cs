using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes to describe a gap: shown in the reference, run here.</summary>
public class GapSnippets
{
    private static readonly Provenance Measured = Bench.Invented;

    [Fact]
    public void A_gap_written_out()
    {
        Provenance measured = Measured;
        #region gap-written-out
        var tube = new GuideTube { Bore = Length.FromMillimeters(18), Length = Length.FromMillimeters(200) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 2 };
        var design = new GapDesign
        {
            Tube = tube,
            Vents = [Vent.BelowNozzle(tube, holes, land: Length.FromMillimeters(2))],
            DischargeLaw = SharpEdgedLaw.Perry,
            Source = StartingGaps.Booster,
            Joint = new FrictionJoint
            {
                PressureDiameter = Length.FromMillimeters(18),
                BreakawayForce = Force.FromNewtons(20),
                SlidingForce = Force.FromNewtons(16),
                Engagement = Length.FromMillimeters(20),
                Provenance = measured,
            },
            Grain = new UpperGrain
            {
                NozzleThroatDiameter = Length.FromMillimeters(3.4),
                RecessVolume = Volume.FromCubicCentimeters(0.3),
                Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.3),
                Density = Density.FromKilogramsPerCubicMeter(1700),
                HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(1150),
                IgnitionTemperature = Temperature.FromKelvins(773),
                InitialTemperature = Temperature.FromKelvins(288.15),
                Provenance = measured,
            },
            MixingAndHeat = MixingAndHeat.Judged,
        };
        #endregion
        #region gap-problem
        var gap = new GapProblem
        {
            Design = design,
            Bodies = new SeparatingBodies
            {
                MassAhead = Mass.FromGrams(60),
                MassBehind = Mass.FromGrams(30),
                ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(16), // drag presses the stages together
            },
            Surroundings = new GasState
            {
                Gas = PerfectGas.DryAir,
                Pressure = Pressure.FromHectopascals(1013),
                Temperature = Temperature.FromKelvins(288),
            },
        };
        Console.WriteLine(gap.Solve().Outcome);
        #endregion
        Assert.Empty(gap.Check().Where(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void Walls()
    {
        GapProblem start = StartingGaps.Bore18mm;
        #region gap-walls
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        var wider = new BoreStep { Station = Length.FromMillimeters(60), Bore = Length.FromMillimeters(20) };
        GuideTube stepped = start.Design.Tube with { Steps = [wider] };
        Jacket outer = Jacket.Between(
            "outer tube",
            innerDiameter: Length.FromMillimeters(22),
            outerBore: Length.FromMillimeters(25),
            length: Length.FromMillimeters(100),
            new JacketOpening { Holes = holes, To = VentTarget.Air, Station = Length.FromMillimeters(80) });
        GapDesign nested = start.Design with
        {
            Tube = stepped,
            Vents = [Vent.BelowNozzle(stepped, holes, Length.FromMillimeters(2)) with { To = VentTarget.IntoJacket("outer tube") }],
            Jackets = [outer],
        };
        #endregion
        Assert.Empty((start with { Design = nested }).Check().Where(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void Joints()
    {
        GapProblem start = StartingGaps.Bore18mm;
        Provenance measured = Measured;
        #region gap-joints
        var coupler = new FrictionJoint
        {
            PressureDiameter = Length.FromMillimeters(18),
            BreakawayForce = Force.FromNewtons(30), // pulled with a spring balance
            SlidingForce = Force.FromNewtons(24),
            Engagement = Length.FromMillimeters(20),
            Provenance = measured,
        };
        StageJoint taped = StageJoint.Taped(coupler, JointTape.PaperTape);
        StageJoint free = StageJoint.FreeMotorTube(coupler, movingMass: Mass.FromGrams(12)); // the motor's tube slides, not the stage
        Console.WriteLine(start.With(joint: taped).Solve().Outcome);
        #endregion
        Assert.NotNull(taped.Tape);
        Assert.NotNull(free.MovingMass);
    }

    [Fact]
    public void Sources()
    {
        GapProblem start = StartingGaps.Bore18mm;
        Provenance judged = Measured;
        #region gap-sources
        var chamber = new GapSource.Booster // a chamber that empties, and pieces of web that burn
        {
            Products = BlackPowderProducts.Nominal,
            FlameTemperature = BlackPowderProducts.NominalTemperature,
            ChamberVolume = Volume.FromCubicCentimeters(5),
            ChamberPressure = Pressure.FromKilopascals(500),
            OpeningDiameter = Length.FromMillimeters(10),
            OpeningTime = Duration.FromMilliseconds(1),
            OpeningCoefficient = 0.8,
            NozzleThroatDiameter = Length.FromMillimeters(3.4),
            Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.2), Time = Duration.FromMilliseconds(25) },
            Provenance = judged,
        };
        GapSource.Motor second = chamber with
        {
            Web = new WebBurn.ByRateLaw
            {
                Mass = Mass.FromGrams(0.2),
                Thickness = Length.FromMillimeters(1),
                Rate = BurnRateLaw.Shidlovskiy,
            },
            Delay = Duration.FromMilliseconds(8), // burns through later
        };
        GapSource pair = new GapSource.Cluster { Motors = [chamber, second] };
        GapSource measured = GapSource.Tabulated.FromColumns(
            BlackPowderProducts.Nominal,
            time_s: [0, 0.002, 0.05],
            massFlow_kg_per_s: [0, 0.005, 0],
            temperature_K: [1900, 1900, 1600],
            judged);
        Console.WriteLine(start.With(source: pair).Solve().Outcome);
        #endregion
        Assert.IsType<GapSource.Cluster>(pair);
        Assert.IsType<GapSource.Tabulated>(measured);
    }

    [Fact]
    public void Estimate_of_a_burn_through()
    {
        #region burn-through-estimate
        GapSource.EndBurner motor = StartingGaps.Booster with { Rate = BurnRateLaw.BelyaevMaznev };
        BurnThroughEstimate estimate = motor.BurnThrough();
        Console.WriteLine($"a web of {estimate.WebThickness} breaks at {estimate.ChamberPressure}; pieces fly at {estimate.PieceSpeed}");
        #endregion
        Assert.InRange(estimate.PieceSpeed, estimate.SlowSpeed, estimate.FastSpeed);
    }
}
