using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>A law, a gas, holes and two pressures, over the whole range that a vent sees.</summary>
public sealed record DischargeCase(
    IDischargeLaw Law, VentHoles Holes, PerfectGas Gas, double P1, double P2, double T1, double T2)
{
    internal OrificeSize Size => new(Holes);

    internal OrificeSide One => Side(P1, T1);

    internal OrificeSide Two => Side(P2, T2);

    internal OrificeSide Side(double p, double T) => new(p, T, Gas.Constants);

    internal double Flow(double p1, double p2) => OrificeKernel.SignedMassFlow(Law, Size, Side(p1, T1), Side(p2, T1));
}

/// <summary>Openings in series between two pressures.</summary>
public sealed record SeriesCase(EquatableArray<Opening> Openings, PerfectGas Gas, double P1, double P2, double T);

/// <summary>A total area, a number of holes and a wall.</summary>
public sealed record AreaCase(double Area_m2, int Count, double Wall_m, DrillSeries Drills);

public static class DischargeCases
{
    private static readonly Provenance Invented = new() { Source = "invented for a test", How = Evidence.Invented };

    public static Arbitrary<DischargeCase> Case() => (
        from law in Law
        from holes in Holes
        from gas in Gas
        from p1 in Logarithmic(1e3, 3e6)
        from ratio in Ratio
        from swap in Gen.Elements(true, false)
        from T1 in Between(200, 2500)
        from T2 in Between(200, 2500)
        select new DischargeCase(law, holes, gas, swap ? p1 * ratio : p1, swap ? p1 : p1 * ratio, T1, T2)).ToArbitrary();

    public static Arbitrary<SeriesCase> Series() => (
        from n in Gen.Choose(1, 5)
        from openings in Opening.ArrayOf(n)
        from gas in Gas
        from p1 in Logarithmic(1e4, 1e6)
        from ratio in Between(0.02, 0.999)
        from swap in Gen.Elements(true, false)
        from T in Between(250, 2000)
        select new SeriesCase([.. openings], gas, swap ? p1 * ratio : p1, swap ? p1 : p1 * ratio, T)).ToArbitrary();

    public static Arbitrary<AreaCase> Areas() => (
        from count in Gen.Choose(1, 24)
        from d in Logarithmic(6e-4, 0.012)
        from wall in Logarithmic(1e-4, 5e-3)
        from drills in Gen.Elements(DrillSeries.MetricTenths, DrillSeries.MetricHalves, DrillSeries.InchFractions)
        select new AreaCase(count * Math.PI / 4 * d * d, count, wall, drills)).ToArbitrary();

    private static Gen<IDischargeLaw> Law => Gen.OneOf(
        Between(0.1, 1).Select(cd => (IDischargeLaw)new ConstantCoefficientLaw { Coefficient = cd, Provenance = Invented }),
        Between(0.9, 1.18).Select(k => (IDischargeLaw)new SharpEdgedLaw { EdgeFactor = k }),
        Between(0.5, 0.9).Select(ci => (IDischargeLaw)new JobsonLaw { IncompressibleContraction = ci }),
        Gen.Constant((IDischargeLaw)ShortTubeLaw.SquareInlet),
        from c in Logarithmic(1e-10, 1.8e-8)
        from b in Between(0, 0.7)
        from m in Between(0.4, 1)
        select (IDischargeLaw)new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = c,
            CriticalRatio = b,
            SubsonicIndex = m,
            ReferenceArea = Area.FromSquareMillimeters(10),
            Provenance = Invented,
        });

    private static Gen<VentHoles> Holes =>
        from d in Logarithmic(5e-4, 0.02)
        from thickness in Between(0.02, 9)
        from count in Gen.Choose(1, 12)
        select new VentHoles
        {
            Diameter = Length.FromMeters(d),
            WallThickness = Length.FromMeters(Math.Clamp(thickness * d, 1e-5, 0.05)),
            Count = count,
        };

    private static Gen<Opening> Opening =>
        from law in Law
        from holes in Holes
        select new Opening { Holes = holes, Law = law };

    private static Gen<PerfectGas> Gas =>
        from R in Between(180, 600)
        from gamma in Between(1.05, 5.0 / 3)
        select new PerfectGas { Name = "test gas", GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(R), HeatCapacityRatio = gamma, Provenance = Invented };

    // Half of the cases anywhere, half within or just outside the blend near equal pressures.
    private static Gen<double> Ratio => Gen.OneOf(Between(0.001, 1), Logarithmic(1e-9, 1e-2).Select(d => 1 - d));

    private static Gen<double> Between(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);

    private static Gen<double> Logarithmic(double low, double high) => Between(Math.Log(low), Math.Log(high)).Select(Math.Exp);
}
