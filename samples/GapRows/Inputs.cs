using Samples;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace GapRows;

/// <summary>
/// One uncertain input at a time, at either end of its published or judged range, for 250 mm and one 6 mm hole, of a
/// motor whose pulse is stated.
/// </summary>
internal static class Inputs
{
    private static readonly GapProblem Nominal = Rows.OneHole(250, 6).With(d => d with { Source = StatedPulse.Booster });

    public static IEnumerable<string> Table()
    {
        yield return "| input | nominal | range | at the low end | at the high end |";
        yield return "|---|---|---|---|---|";
        yield return $"| nothing changed | | | {Words.InShort(Nominal)} | |";
        yield return Row("fragment mass", 0.19, 0.10, 0.30, "g", m => Source(s => s with { Web = s.Web with { Mass = Mass.FromGrams(m) } }));
        yield return Row("fragment burn time", 25, 15, 40, "ms",
            ms => Source(s => s with { Web = (WebBurn.OverTime)s.Web with { Time = Duration.FromMilliseconds(ms) } }));
        yield return Row("opening diameter", 10, 6, 12, "mm", d => Source(s => s with { OpeningDiameter = Length.FromMillimeters(d) }));
        yield return Row("opening time", 1, 0.3, 3, "ms", ms => Source(s => s with { OpeningTime = Duration.FromMilliseconds(ms) }));
        yield return Row(BlackPowderProducts.GasMassFraction, f => Products(p => p with { GasMassFraction = f }));
        yield return Row(BlackPowderProducts.FlameTemperature, k => Source(s => s with { FlameTemperature = Temperature.FromKelvins(k) }));
        yield return Row(BlackPowderProducts.GasMolarMass,
            m => Products(p => p with { Gas = Gas(m, BlackPowderProducts.GasHeatCapacityRatio.Nominal) }));
        yield return Row(BlackPowderProducts.GasHeatCapacityRatio,
            g => Products(p => p with { Gas = Gas(BlackPowderProducts.GasMolarMass.Nominal, g) }));
        yield return Row(BlackPowderProducts.ParticleHeatCapacity,
            c => Products(p => p with { ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(c) }));
        yield return Row("grain ignition temperature", 773, 723, 823, "K",
            k => Grain(g => g with { IgnitionTemperature = Temperature.FromKelvins(k) }));
        yield return Row("grain conductivity", 0.3, 0.15, 0.7, "W/(m K)",
            k => Grain(g => g with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(k) }));
        yield return Row("particle efficiency", 0.25, 0.03, 0.6, "-", e => Closures(c => c with { ParticleEfficiency = e }));
        yield return Row("emissivity", 0.5, 0.2, 0.9, "-", e => Closures(c => c with { Emissivity = e }));
        yield return Row("core of a free jet", 5.5, 5, 6.2, "bores", x => Closures(c => c with { FreeJetCoreInBores = x }));
        yield return Row("wall heat transfer", 200, 100, 500, "W/(m2 K)",
            h => Closures(c => c with { WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h) }));
        yield return Row("dead-end exchange", 0.5, 0.1, 1, "-", x => Closures(c => c with { DeadEndExchange = x }));
        yield return Row("stirring reach", 1.5, 1, 2, "bores", x => Closures(c => c with { StirringReachInBores = x }));
        yield return Row("front thickness", 1, 0.5, 3, "bores", x => Closures(c => c with { FrontThicknessInBores = x }));
    }

    private static GapProblem Source(Func<GapSource.Booster, GapSource.Booster> change) =>
        Nominal.With(d => d with { Source = change((GapSource.Booster)d.Source) });

    private static GapProblem Products(Func<DustyGas, DustyGas> change) => Source(s => s with { Products = change(s.Products) });

    private static GapProblem Grain(Func<UpperGrain, UpperGrain> change) => Nominal.With(d => d with { Grain = change(d.Grain) });

    private static GapProblem Closures(Func<MixingAndHeat, MixingAndHeat> change) =>
        Nominal.With(d => d with { MixingAndHeat = change(d.MixingAndHeat) });

    private static PerfectGas Gas(double gramsPerMole, double gamma) =>
        PerfectGas.FromMolarMass("varied", MolarMass.FromGramsPerMole(gramsPerMole), gamma, BlackPowderProducts.Nominal.Provenance);

    private static string Row(Staging.Core.SourcedRange range, Func<double, GapProblem> at) =>
        Row(range.Quantity, range.Nominal, range.Min, range.Max, range.Unit, at);

    private static string Row(string input, double nominal, double low, double high, string unit, Func<double, GapProblem> at) =>
        $"| {input} | {nominal:0.###} | {low:0.###} to {high:0.###}{(unit == "-" ? "" : " " + unit)} | {Words.InShort(at(low))} | {Words.InShort(at(high))} |";
}
