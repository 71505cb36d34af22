using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Published;

public class GasFlowChecks
{
    private static readonly Provenance CengelCimbala = Seen("Cengel & Cimbala, Fluid Mechanics, examples 12-6 and 12-8, printed in a public companion notebook");
    private static readonly Provenance Balmer = Seen("Balmer, Modern Engineering Thermodynamics, example 16.12, printed in a public companion notebook");
    private static readonly Provenance BalmerTyre = Seen("Balmer, Modern Engineering Thermodynamics, example 16.8, printed in a public companion notebook");
    private static readonly Provenance Toro = Seen("Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, tables 4.2 and 4.3, as quoted in two public test files");
    private static readonly Provenance Murugaperumal = Seen("Murugaperumal, Gas Dynamics and Jet Propulsion, example 1.39, printed in a public companion notebook");
    private static readonly Provenance Us1976 = Seen("US Standard Atmosphere 1976, five-digit table of a public archive");

    [Fact]
    public void Textbook_tables_of_isentropic_flow()
    {
        Verify("printed p/p0 at M 1", "-", 0.5283, IsentropicFlow.PressureRatio(1, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed T/T0 at M 1", "-", 0.8333, IsentropicFlow.TemperatureRatio(1, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed rho/rho0 at M 1", "-", 0.6339, IsentropicFlow.DensityRatio(1, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed p/p0 at M 2", "-", 0.1278, IsentropicFlow.PressureRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed T/T0 at M 2", "-", 0.5556, IsentropicFlow.TemperatureRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed rho/rho0 at M 2", "-", 0.2300, IsentropicFlow.DensityRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed A/A* at M 2", "-", 1.6875, IsentropicFlow.AreaRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
    }

    [Fact]
    public void Textbook_tables_of_the_normal_shock()
    {
        Verify("printed shock M2 at M1 2", "-", 0.5774, NormalShock.DownstreamMach(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed shock p02/p01 at M1 2", "-", 0.7209, NormalShock.StagnationPressureRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed shock p2/p1 at M1 2", "-", 4.5000, NormalShock.PressureRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed shock T2/T1 at M1 2", "-", 1.6875, NormalShock.TemperatureRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed shock rho2/rho1 at M1 2", "-", 2.6667, NormalShock.DensityRatio(2, 1.4), Tolerance.Printed(4), CengelCimbala);
        Verify("printed shock M2 at M1 5", "-", 0.415, NormalShock.DownstreamMach(5, 1.4), Tolerance.Printed(3), Balmer);
        Verify("printed shock p2/p1 at M1 5", "-", 29.00, NormalShock.PressureRatio(5, 1.4), Tolerance.Printed(2), Balmer);
        Verify("printed shock p02/p01 at M1 5", "-", 0.06172, NormalShock.StagnationPressureRatio(5, 1.4), Tolerance.Printed(5), Balmer);
        Verify("printed Pitot p02/p1 at M1 5", "-", 32.654, NormalShock.PitotRatio(5, 1.4), Tolerance.FixedAmount(1e-3, "one unit of the last printed digit: the table was computed from rounded ratios (exact 32.65347)"), Balmer);
        Verify("printed shock T2/T1 at M1 5", "-", 5.800, NormalShock.TemperatureRatio(5, 1.4), Tolerance.Printed(3), Balmer);
    }

    [Theory]
    [InlineData(1, 1, 0, 1, 0.125, 0, 0.1, 0.30313, 5, 0.92745, 5, 0.42632, 5, 0.26557, 5)]
    [InlineData(2, 1, -2, 0.4, 1, 2, 0.4, 0.00189, 5, 0, 5, 0.02185, 5, 0.02185, 5)]
    [InlineData(3, 1, 0, 1000, 1, 0, 0.01, 460.894, 3, 19.5975, 4, 0.57506, 5, 5.99924, 5)]
    [InlineData(4, 1, 0, 0.01, 1, 0, 100, 46.0950, 4, -6.19633, 5, 5.99242, 5, 0.57511, 5)]
    public void Toros_test_problems(
        int test, double rhoL, double uL, double pL, double rhoR, double uR, double pR,
        double p, int pDigits, double u, int uDigits, double starL, int starLDigits, double starR, int starRDigits)
    {
        RiemannSolution s = RiemannProblem.Solve(new FlowState(rhoL, uL, pL, 1.4), new FlowState(rhoR, uR, pR, 1.4));
        Verify($"printed Toro test {test}: p*", "-", p, s.StarPressure, Tolerance.Printed(pDigits), Toro);
        Verify($"printed Toro test {test}: u*", "-", u, s.ContactSpeed, Tolerance.Printed(uDigits), Toro);
        Verify($"printed Toro test {test}: density left of contact", "-", starL, s.LeftStarDensity, Tolerance.Printed(starLDigits), Toro);
        Verify($"printed Toro test {test}: density right of contact", "-", starR, s.RightStarDensity, Tolerance.Printed(starRDigits), Toro);
    }

    [Fact]
    public void Toros_fifth_test_problem()
    {
        RiemannSolution s = RiemannProblem.Solve(new FlowState(5.99924, 19.5975, 460.894, 1.4), new FlowState(5.99242, -6.19633, 46.0950, 1.4));
        Tolerance rounded = Tolerance.Relative(1e-5, "the printed star values were not computed from the printed, rounded states; they differ from their exact solution by 4e-6");
        Verify("printed Toro test 5: p*", "-", 1691.64, s.StarPressure, rounded, Toro);
        Verify("printed Toro test 5: u*", "-", 8.68975, s.ContactSpeed, rounded, Toro);
        Verify("printed Toro test 5: density left of contact", "-", 14.2823, s.LeftStarDensity, rounded, Toro);
        Verify("printed Toro test 5: density right of contact", "-", 31.0426, s.RightStarDensity, rounded, Toro);
    }

    [Fact]
    public void A_five_cubic_metre_vessel_from_40_to_2_bar()
    {
        var gas = new PerfectGas
        {
            Name = "air of the example",
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(287),
            HeatCapacityRatio = 1.4,
            Provenance = Murugaperumal,
        };
        Duration unit = Vessel.TimeUnit(Volume.FromCubicMeters(5), Area.FromSquareCentimeters(10), gas, Temperature.FromKelvins(333));
        double t = unit.Seconds * Vessel.ChokedTime(2.0 / 40, 1.4, isothermal: true);
        Verify("printed isothermal blowdown time", "s", 70.76, t, Tolerance.Printed(2), Murugaperumal);
    }

    [Fact]
    public void A_punctured_tyre()
    {
        var gas = new PerfectGas
        {
            Name = "air of the example",
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(287.05),
            HeatCapacityRatio = 1.4,
            Provenance = BalmerTyre,
        };
        Area hole = Area.FromSquareInches(Math.PI / 4 * 0.0938 * 0.0938);
        Duration unit = Vessel.TimeUnit(Volume.FromCubicFeet(1), hole, gas, Temperature.FromDegreesFahrenheit(70));
        double tau = unit.Seconds / IsentropicFlow.CriticalFlowFactor(1.4);
        Verify("printed time constant of the tyre", "s", 31.95, tau, Tolerance.Relative(1.5e-3, "the example uses rounded constants in inch units; exact 31.92"), BalmerTyre);
        double t = unit.Seconds * Vessel.ChokedTime(27.8 / 50, 1.4, isothermal: true);
        Verify("printed choked time of the tyre", "s", 18.7, t, Tolerance.Printed(1), BalmerTyre);
    }

    [Theory]
    [InlineData(-2000, 1.8515e-5)]
    [InlineData(0, 1.7894e-5)]
    [InlineData(2000, 1.7260e-5)]
    [InlineData(12000, 1.4216e-5)]
    public void Printed_viscosity_of_air(double z, double mu)
    {
        double T = StandardAtmosphere.Us1976.At(z).Temperature_K;
        Verify($"printed viscosity of air at {z} m", "Pa s", mu, AirTransport.Viscosity(T), Tolerance.Printed(9), Us1976);
    }

    private static Provenance Seen(string source) => new() { Source = source, How = Evidence.SeenInSource };
}
