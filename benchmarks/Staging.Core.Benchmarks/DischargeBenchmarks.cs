using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>Cost of one orifice evaluation by law and regime, of its slopes, and of a series solve. Nothing may be allocated.</summary>
[MemoryDiagnoser]
public class DischargeBenchmarks
{
    private const int Evaluations = 64;

    private static readonly Provenance Invented = new() { Source = "invented for a benchmark", How = Evidence.Invented };
    private readonly GasConstants gas = new(287, 1.4);
    private readonly OrificeSize size = new(2e-5, 3e-3, 6e-3);
    private readonly double[] between = new double[3];
    private readonly double[] pressures = new double[Evaluations];
    private readonly SeriesMember[] four = new SeriesMember[4];
    private IDifferentiableDischargeLaw law = ConstantCoefficientLaw.Ideal;

    /// <summary>The law.</summary>
    [Params("constant", "sharp edge", "Jobson", "short tube", "ISO 6358")]
    public string Law { get; set; } = "constant";

    /// <summary>Downstream over upstream pressure: blended, subsonic, choked.</summary>
    [Params(0.9995, 0.8, 0.3)]
    public double Ratio { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        law = Law switch
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
                Source = Invented,
            },
            _ => ConstantCoefficientLaw.Ideal,
        };
        for (int i = 0; i < Evaluations; i++)
            pressures[i] = 2e5 * Ratio * (1 - 1e-6 * i);
        Array.Fill(four, new SeriesMember(law, size));
    }

    [Benchmark(OperationsPerInvoke = Evaluations)]
    public double SignedFlow()
    {
        double sum = 0;
        var one = new OrificeSide(2e5, 300, gas);
        foreach (double p in pressures)
            sum += OrificeKernel.SignedMassFlow(law, size, one, new OrificeSide(p, 300, gas));
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Evaluations)]
    public double FlowWithSlopes()
    {
        double sum = 0;
        var one = new OrificeSide(2e5, 300, gas);
        foreach (double p in pressures)
            sum += OrificeKernel.SignedSlopes(law, size, one, new OrificeSide(p, 300, gas)).ByPressureTwo_kg_per_sPa;
        return sum;
    }

    [Benchmark]
    public double TwoInSeries() =>
        SeriesKernel.MassFlow(four.AsSpan(0, 2), new OrificeSide(2e5, 300, gas), 2e5 * Ratio, between.AsSpan(0, 1));

    [Benchmark]
    public double FourInSeries() => SeriesKernel.MassFlow(four, new OrificeSide(2e5, 300, gas), 2e5 * Ratio, between);
}
