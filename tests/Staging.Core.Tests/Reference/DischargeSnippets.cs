using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Tests.Discharge;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes with openings: shown in the reference, run here.</summary>
public class DischargeSnippets
{
    private static readonly GasState Inside = DischargeTestGas.Air(300_000, 293), Outside = DischargeTestGas.Air(100_000, 293);

    private static readonly VentHoles Holes = new()
    {
        Diameter = Length.FromMillimeters(4),
        WallThickness = Length.FromMillimeters(1),
        Count = 2,
    };

    [Fact]
    public void Laws_beside_each_other()
    {
        GasState inside = Inside, outside = Outside;
        VentHoles holes = Holes;
        #region discharge-laws
        IDischargeLaw[] laws =
        [
            ConstantCoefficientLaw.Ideal, // no contraction: an upper bound
            ConstantCoefficientLaw.RoundedInlet,
            SharpEdgedLaw.Perry, // thin sharp wall
            new JobsonLaw { IncompressibleContraction = 0.6 }, // thin wall, from momentum
            ShortTubeLaw.SquareInlet, // wall about as thick as the hole is wide
        ];
        foreach (IDischargeLaw law in laws)
        {
            ValidityRange range = law.Validity;
            Console.WriteLine($"{Orifice.Flow(inside, outside, holes, law).MassFlow}, from {range.Basis.Source}");
        }
        #endregion
        double[] flows = [.. laws.Select(l => Orifice.Flow(inside, outside, holes, l).MassFlow.KilogramsPerSecond)];
        Assert.All(flows, f => Assert.InRange(f, 0.5 * flows[0], flows[0]));
    }

    [Fact]
    public void A_component_as_tested()
    {
        GasState inside = Inside, outside = Outside;
        VentHoles holes = Holes;
        #region sonic-conductance
        var asTested = new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = 1e-8,
            CriticalRatio = 0.35,
            SubsonicIndex = 0.5,
            ReferenceArea = Area.FromSquareMillimeters(12.6),
            Provenance = new Provenance { Source = "Invented component", How = Evidence.Invented },
        };
        var conditions = new OrificeConditions(
            upstreamPressure_Pa: 3e5, upstreamTemperature_K: 293, downstreamPressure_Pa: 1e5,
            gasConstant_J_per_kgK: 287, heatCapacityRatio: 1.4, holeDiameter_m: 0.004, wallThickness_m: 0.001);
        double flux = asTested.MassFlux_kg_per_m2s(conditions); // what a run asks a law, in SI numbers
        OrificeFlow flow = Orifice.Flow(inside, outside, holes, asTested);
        #endregion
        Assert.Equal(flux * Holes.TotalArea.SquareMeters, flow.MassFlow.KilogramsPerSecond, 1e-4 * flow.MassFlow.KilogramsPerSecond);
    }

    [Fact]
    public void Two_walls()
    {
        GasState inside = Inside, outside = Outside;
        VentHoles holes = Holes;
        #region holes-in-series
        var inner = new Opening { Holes = holes, Law = SharpEdgedLaw.Perry };
        Opening outer = inner with { Holes = holes with { Diameter = Length.FromMillimeters(6) } };
        OpeningsFlow flow = Orifice.InSeries(inside, outside, inner, outer);
        Console.WriteLine($"{flow.MassFlow}, {flow.Between[0]} between the walls");
        #endregion
        Assert.InRange(flow.Between[0].Pascals, 1e5, 3e5);
        Assert.Equal(2, flow.Members.Length);
    }

    [Fact]
    public void Drills_for_an_area()
    {
        #region drills-for-an-area
        Area total = Area.FromSquareMillimeters(Math.PI / 4 * 36); // of one hole of 6 mm
        HolePattern pattern = HolePattern.ForArea(total, 3, Length.FromMillimeters(0.5), DrillSeries.MetricTenths);
        if (pattern.Above is DrilledHoles larger)
            Console.WriteLine($"{larger.Holes.Count} holes by {larger.Drill}: {100 * larger.AreaError:F1} % more area");
        DrillSize? inches = DrillSize.Below(DrillSeries.InchFractions, pattern.Exact.Diameter);
        #endregion
        Assert.Equal("3.5 mm", pattern.Above!.Drill.Label);
        Assert.Equal(0.021, pattern.Above.AreaError, 5e-4);
        Assert.True(inches!.Diameter < pattern.Exact.Diameter);
    }

    [Fact]
    public void Flow_meters()
    {
        GasState inside = Inside;
        #region flow-meters
        var plate = new OrificePlateIso5167
        {
            PipeDiameter = Length.FromMillimeters(80),
            Bore = Length.FromMillimeters(40),
            Tappings = PressureTappings.Corner,
        };
        DynamicViscosity viscosity = DynamicViscosity.FromMicropascalSeconds(18.2);
        MeterReading read = plate.ReadGas(inside.Pressure, 0.98 * inside.Pressure, inside.Density, viscosity, isentropicExponent: 1.4);
        Console.WriteLine($"{read.MassFlow} within {100 * read.CoefficientUncertainty:F1} %");
        var nozzle = new CriticalNozzle { ThroatDiameter = Length.FromMillimeters(5), Shape = CriticalNozzleShape.Toroidal };
        MeterReading choked = nozzle.Read(inside, backPressure: 0.4 * inside.Pressure, viscosity);
        #endregion
        Assert.InRange(read.DischargeCoefficient, 0.59, 0.62);
        Assert.InRange(choked.DischargeCoefficient, 0.98, 1);
    }
}
