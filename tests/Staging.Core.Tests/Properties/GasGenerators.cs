using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Properties;

/// <summary>A Mach number of each kind with a ratio of heat capacities.</summary>
public sealed record FlowCase(double Subsonic, double Supersonic, double Gamma);

/// <summary>A Riemann problem of two gases.</summary>
public sealed record RiemannCase(FlowState Left, FlowState Right);

/// <summary>Two altitudes, the lower first, and the weather at a site [m, Pa, K, -].</summary>
public sealed record AltitudeCase(double Lower, double Upper, double Elevation, double Pressure, double Temperature, double Humidity);

/// <summary>Two pressures of a vessel over the pressure outside, and gamma.</summary>
public sealed record VesselCase(double Start, double Fraction, double Gamma, double Friction);

public static class GasGenerators
{
    public static Arbitrary<FlowCase> FlowCases() => (
        from subsonic in Even(1e-4, 1)
        from supersonic in Log(1, 50)
        from gamma in Even(1.05, 5.0 / 3)
        select new FlowCase(subsonic, supersonic, gamma)).ToArbitrary();

    public static Arbitrary<RiemannCase> RiemannCases() => (
        from left in State()
        from right in State()
        select new RiemannCase(left, right)).ToArbitrary();

    public static Arbitrary<AltitudeCase> AltitudeCases() => (
        from a in Even(-1000, 86_000)
        from b in Even(-1000, 86_000)
        from elevation in Even(-400, 4000)
        from weather in Even(0.97, 1.03)
        from temperature in Even(245, 318)
        from humidity in Even(0, 1)
        select new AltitudeCase(
            Math.Min(a, b), Math.Max(a, b), elevation, weather * StandardAtmosphere.Us1976.At(elevation).Pressure_Pa, temperature, humidity)).ToArbitrary();

    public static Arbitrary<VesselCase> VesselCases() => (
        from start in Log(1.0001, 300)
        from fraction in Even(0, 1)
        from gamma in Even(1.05, 5.0 / 3)
        from friction in Log(1e-3, 1e3)
        select new VesselCase(start, fraction, gamma, friction)).ToArbitrary();

    private static Gen<FlowState> State() =>
        from rho in Log(1e-3, 1e3)
        from u in Even(-3, 3)
        from p in Log(1e-5, 1e5)
        from gamma in Even(1.05, 5.0 / 3)
        select new FlowState(rho, u * Math.Sqrt(gamma * p / rho), p, gamma);

    private static Gen<double> Even(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);

    private static Gen<double> Log(double low, double high) => Even(Math.Log(low), Math.Log(high)).Select(Math.Exp);
}
