using Staging.Core.Discharge;
using Staging.Core.Gaps.Resolved;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.Resolved;

/// <summary>The chamber's opening as an end of the tube: below and above the speed of sound, shut, and run backwards.</summary>
public class ReservoirEndTests
{
    private const double Bore = 2.5e-4;
    private static readonly GasConstants Gas = new(150, 1.15);
    private static readonly GasConstants Air = new(Tubes.Air, 1.4);

    [Fact]
    public void A_shut_opening_is_a_wall()
    {
        ReservoirEnd end = Chamber(800e3, 0);
        var inside = new EndState(1.2, -30, 101325, 0, 1.4);
        Assert.Equal(new ClosedEnd().Flow(inside), end.Flow(inside));
    }

    [Fact]
    public void At_equal_pressures_and_at_rest_nothing_flows()
    {
        EndFlux flux = Chamber(101325, 0.4).Flow(new EndState(1.2, 0, 101325, 0, 1.4));
        Assert.InRange(flux.Mass, -1e-6, 1e-6);
        Assert.InRange(flux.Momentum / 101325 - 1, -1e-8, 1e-8);
    }

    [Theory]
    [InlineData(105e3)]
    [InlineData(130e3)]
    [InlineData(800e3)]
    public void Law_tube_and_filled_bore_agree_on_one_pressure(double pressure)
    {
        ReservoirEnd end = Chamber(pressure, 0.3);
        var inside = new EndState(1.2, 5, 101325, 0, 1.4);
        EndFlux flux = end.Flow(inside);
        double p = end.LastPressure, H = Gas.Cp * 1900;
        double byLaw = OrificeKernel.SignedMassFlow(
            ConstantCoefficientLaw.Ideal, end.Opening, end.Chamber, new OrificeSide(p, 1900, Gas)) / Bore;
        double u = (flux.Momentum - p) / flux.Mass, T = p * u / (flux.Mass * Gas.R);
        Assert.InRange(flux.Mass / byLaw - 1, -1e-9, 1e-9);
        Assert.InRange((Gas.Cp * T + 0.5 * u * u) / H - 1, -1e-9, 1e-9);
        Assert.InRange(u - inside.VelocityAt(p), -1e-6, 1e-6);
        Assert.Equal(flux.Mass * H, flux.Energy, 1e-9 * flux.Mass * H);
    }

    [Fact]
    public void Into_near_vacuum_the_flow_is_choked_and_no_faster_than_its_widening_allows()
    {
        ReservoirEnd end = Chamber(800e3, 0.25);
        EndFlux flux = end.Flow(new EndState(1e-5, 0, 1, 0, 1.4));
        double choked = 0.25 * 800e3 / Math.Sqrt(Gas.R * 1900) * ChokedFlow.CriticalFlowFactor(Gas.Gamma);
        double M = AreaRatio.SupersonicMach(4, Gas.Gamma), T = 1900 * IsentropicFlow.TemperatureRatio(M, Gas.Gamma);
        double u = M * Math.Sqrt(Gas.Gamma * Gas.R * T);
        Assert.InRange(flux.Mass / choked - 1, -1e-9, 1e-9);
        Assert.InRange((flux.Momentum - end.LastPressure) / flux.Mass / u - 1, -1e-9, 1e-9);
    }

    [Fact]
    public void A_tube_at_higher_pressure_runs_back_with_its_own_gas()
    {
        EndFlux flux = Chamber(101325, 0.3).Flow(new EndState(1.2, 0, 150e3, 0.25, 1.4));
        Assert.True(flux.Mass < 0);
        Assert.Equal(0.25 * flux.Mass, flux.Products, 12);
    }

    [Fact]
    public void A_long_tube_fills_until_it_holds_the_pressure_of_its_chamber()
    {
        var tube = new TubeFlow(60, 1.0 / 60, Gas, Air) { Left = Chamber(150e3, 0.3) };
        for (int i = 0; i < 60; i++)
            tube.Fill(i, 1.2, 0, 101325, 0);
        tube.Look();
        tube.RunTo(0.3);
        Assert.All(tube.Cells.Pressure[tube.Cells.First..tube.Cells.End], p => Assert.InRange(p / 150e3, 0.98, 1.02));
    }

    private static ReservoirEnd Chamber(double pressure, double openShare) => new(ConstantCoefficientLaw.Ideal, Bore)
    {
        Opening = new OrificeSize(openShare * Bore, Math.Sqrt(4 / Math.PI * openShare * Bore), 0),
        Chamber = new OrificeSide(pressure, 1900, Gas),
        ChamberFraction = 1,
    };
}
