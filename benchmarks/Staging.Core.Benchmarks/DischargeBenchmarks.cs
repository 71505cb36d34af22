using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>
/// Nanoseconds and bytes of one orifice evaluation: every law in the three regimes, and once with its slopes. Nothing
/// may be allocated.
/// </summary>
[MemoryDiagnoser]
[IterationTime(100), MaxIterationCount(20), MaxWarmupCount(10)]
public class DischargeBenchmarks
{
    private const int Evaluations = 64;
    private const double Upstream = 2e5;

    private static readonly Provenance Invented = new() { Source = "invented for a benchmark", How = Evidence.Invented };
    private readonly GasConstants gas = new(287, 1.4);
    private readonly OrificeSize size = new(2e-5, 3e-3, 6e-3);
    private readonly double[] blended = Pressures(0.9995);
    private readonly double[] subsonic = Pressures(0.8);
    private readonly double[] choked = Pressures(0.3);
    private IDischargeLaw law = ConstantCoefficientLaw.Ideal;

    /// <summary>The law.</summary>
    [Params("constant", "sharp edge", "Jobson", "short tube", "ISO 6358")]
    public string Law { get; set; } = "constant";

    [GlobalSetup]
    public void Prepare() => law = Law switch
    {
        "sharp edge" => SharpEdgedLaw.Perry,
        "Jobson" => new JobsonLaw { IncompressibleContraction = 0.6 },
        "short tube" => ShortTubeLaw.SquareInlet,
        "ISO 6358" => new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = 1e-8,
            CriticalRatio = 0.4,
            SubsonicIndex = 0.5,
            ReferenceArea = Area.FromSquareMillimeters(5),
            Provenance = Invented,
        },
        _ => ConstantCoefficientLaw.Ideal,
    };

    [Benchmark(OperationsPerInvoke = Evaluations, Description = "choked, p2/p1 0.3")]
    public double Choked() => Flow(choked);

    [Benchmark(OperationsPerInvoke = Evaluations, Description = "subsonic, 0.8")]
    public double Subsonic() => Flow(subsonic);

    [Benchmark(OperationsPerInvoke = Evaluations, Description = "blended near equal pressures, 0.9995")]
    public double Blended() => Flow(blended);

    [Benchmark(OperationsPerInvoke = Evaluations, Description = "subsonic, 0.8, with both slopes")]
    public double Slopes()
    {
        double sum = 0;
        var one = new OrificeSide(Upstream, 300, gas);
        foreach (double p in subsonic)
            sum += OrificeKernel.SignedSlopes(law, size, one, new OrificeSide(p, 300, gas)).ByPressureTwo_kg_per_sPa;
        return sum;
    }

    private double Flow(double[] pressures)
    {
        double sum = 0;
        var one = new OrificeSide(Upstream, 300, gas);
        foreach (double p in pressures)
            sum += OrificeKernel.SignedMassFlow(law, size, one, new OrificeSide(p, 300, gas));
        return sum;
    }

    /// <summary>Pressures a millionth apart, so that no two evaluations are the same.</summary>
    private static double[] Pressures(double ratio) => [.. Enumerable.Range(0, Evaluations).Select(i => Upstream * ratio * (1 - 1e-6 * i))];
}
