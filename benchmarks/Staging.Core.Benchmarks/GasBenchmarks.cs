using BenchmarkDotNet.Attributes;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>The inner-loop functions of the Gases floor: nanoseconds and bytes a call.</summary>
[MemoryDiagnoser]
public class GasBenchmarks
{
    private readonly SiteAtmosphere site = new(new SiteConditions
    {
        Elevation = Length.FromMeters(350),
        Pressure = Pressure.FromHectopascals(975),
        Temperature = Temperature.FromKelvins(299),
        RelativeHumidity = 0.6,
    });

    // Fields, so that nothing is folded into the code.
    private FlowState hot = new(0.626919650660209, 0, 300_000, 1.25);
    private FlowState air = new(1.22497814345127, 0, 101_325, 1.4);
    private FlowState leaving = new(1.22497814345127, 1000, 101_325, 1.4);
    private double altitude = 1234.5;
    private double mach = 0.63;
    private double ratio = 0.72;
    private double area = 1.7;

    [Benchmark(Description = "isentropic p/p0 from M")]
    public double Isentropic() => IsentropicFlow.PressureRatio(mach, 1.25);

    [Benchmark(Description = "mass flow function of p/p0")]
    public double MassFlow() => IsentropicFlow.ThroatMassFlow(ratio, 1.25);

    [Benchmark(Description = "subsonic M from A/A*")]
    public double Area() => IsentropicFlow.SubsonicMach(area, 1.25);

    [Benchmark(Description = "friction tube flow at a back pressure")]
    public double Friction() => FannoFlow.TubeMassFlowFunction(ratio, 1.5, 1.25);

    [Benchmark(Description = "US 1976 sample")]
    public AirSample Standard() => StandardAtmosphere.Us1976.At(altitude);

    [Benchmark(Description = "site sample, moist")]
    public AirSample Site() => site.At(altitude);

    [Benchmark(Description = "Riemann: fan and shock, two gases")]
    public RiemannSolution FanAndShock() => RiemannProblem.Solve(hot, air);

    [Benchmark(Description = "Riemann: two fans, two gases")]
    public RiemannSolution TwoFans() => RiemannProblem.Solve(hot, leaving);

    [Benchmark(Description = "Riemann: solve and sample at x/t = 0")]
    public FlowState SolveAndSample() => RiemannProblem.Solve(hot, air).Sample(0);
}
