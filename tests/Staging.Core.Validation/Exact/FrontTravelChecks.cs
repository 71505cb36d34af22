using Staging.Core.Fronts;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Validation.Exact;

/// <summary>Front travel against closed forms evaluated outside.</summary>
public class FrontTravelChecks
{
    private static readonly Provenance LiepmannRoshko = new()
    {
        Source = "Liepmann & Roshko, Elements of Gasdynamics (1957), section 3.2, evaluated in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Toro = new()
    {
        Source = "Toro, Riemann Solvers and Numerical Methods for Fluid Dynamics, chapter 4, two gases, evaluated by bisection in 40-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Taylor = new()
    {
        Source = "G. I. Taylor, Proc. R. Soc. A 223 (1954) 446-468, abstract: K = 10.1 a v* or 7.14 a U sqrt(gamma)",
        How = Evidence.FromMemory,
    };

    [Theory]
    [InlineData(1.25, 0.43999573, 1.05, 1.17093035938, 0.0813492063492)]
    [InlineData(1.25, 0.43999573, 1.2, 1.79283250975, 0.305555555556)]
    [InlineData(1.25, 0.43999573, 1.6, 4.4544340427, 0.8125)]
    [InlineData(1.25, 0.43999573, 2, 9.17374247844, 1.25)]
    [InlineData(1.25, 0.43999573, 3, 38.0529869284, 2.22222222222)]
    [InlineData(1.4, 1, 1.1, 1.56124439818, 0.159090909091)]
    [InlineData(1.4, 1, 1.4, 4.95770081406, 0.571428571429)]
    [InlineData(1.4, 1, 2.5, 145.342080355, 1.75)]
    public void Contact_surface_of_a_shock_tube(double g4, double a14, double Ms, double p41, double u2)
    {
        GasState air = Air();
        double a1 = air.SoundSpeed.MetersPerSecond, a4 = a1 / a14;
        var driver = new GasState
        {
            Gas = Gas(g4, a4 * a4 / (g4 * 2000)),
            Pressure = p41 * air.Pressure,
            Temperature = Temperature.FromKelvins(2000),
        };
        ShockTubeFront front = ShockTubeFront.Between(driver, air);
        string at = $"gamma4 {g4}, p4/p1 {p41:G6}";
        Tolerance within = Tolerance.Relative(a14 == 1 ? 1e-10 : 2e-7, a14 == 1 ? "p4/p1 given to twelve digits" : "speed ratio given to eight digits, enters to a power of ten");
        Verify($"contact speed over a1, {at}", "-", u2, front.ContactSpeed.MetersPerSecond / a1, within, LiepmannRoshko);
        Verify($"shock Mach number, {at}", "-", Ms, front.ShockMach, within, LiepmannRoshko);
        Assert.Equal(250 / (front.ContactSpeed.MetersPerSecond), front.ArrivalAt(Length.FromMillimeters(250))!.Value.Milliseconds, 1e-9);
    }

    /// <summary>Taylor writes the resistance as tau = gamma rho U^2/2, so that the friction factor is four times his gamma.</summary>
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.032)]
    public void Dispersion_in_a_turbulent_pipe(double f) =>
        Verify($"dispersion over radius and mean speed, friction factor {f}", "-", 7.14 * Math.Sqrt(f / 4),
            (FrontMixing.Judged with { FrictionFactor = f }).DispersionAt(Length.FromMillimeters(18), Speed.FromMetersPerSecond(20)).SquareMetersPerSecond / (0.009 * 20),
            Tolerance.Relative(0.005 / 7.14, "half a unit of the last digit of 7.14"), Taylor);

    [Theory]
    [InlineData(300e3, 216977.022101726, 197.249661228049, 478.639597504831)]
    [InlineData(1000e3, 477290.922533558, 441.114973494909, 695.774234926377)]
    public void Hot_gas_let_into_air(double driverPressure, double star, double contact, double shock)
    {
        // Driver 2000 K, gamma 1.25, 34.75 g/mol; air 101325 Pa, 288.15 K, whose density the reference has as 1.22497814345127 kg/m3.
        const double molar = 8.31446261815324;
        var air = new GasState
        {
            Gas = Gas(1.4, 101325 / (1.22497814345127 * 288.15)),
            Pressure = Pressure.FromPascals(101325),
            Temperature = Temperature.FromKelvins(288.15),
        };
        var driver = new GasState
        {
            Gas = Gas(1.25, molar / 0.03475),
            Pressure = Pressure.FromPascals(driverPressure),
            Temperature = Temperature.FromKelvins(2000),
        };
        ShockTubeFront front = ShockTubeFront.Between(driver, air);
        string at = $"burn-through gas of {driverPressure / 1e3:0} kPa into air";
        Tolerance within = Tolerance.Relative(1e-12, "reference to fifteen digits, densities to round-off");
        Verify($"{at}: pressure at the front", "Pa", star, front.Pressure.Pascals, within, Toro);
        Verify($"{at}: speed of the front", "m/s", contact, front.ContactSpeed.MetersPerSecond, within, Toro);
        Verify($"{at}: speed of the shock", "m/s", shock, front.ShockSpeed.MetersPerSecond, within, Toro);
    }

    [Fact]
    public void Column_that_cools_on_its_way()
    {
        // mdot = 4 g/s, R = 150, cp = 1350 (gamma 1.125), 1900 K, wall 300 K, 200 W/(m2 K), 20 mm, 1 bar; evaluated apart from this library
        // by a Runge-Kutta integration in 32-digit arithmetic of dT/dt = -4 h R/(D cp p) T (T - Tw), dx/dt = mdot R T/(p A).
        var front = new DisplacementFront
        {
            Path = new FrontPath
            {
                Bore = Length.FromMillimeters(20),
                Air = Air() with { Pressure = Pressure.FromPascals(1e5) },
                WallTemperature = Temperature.FromKelvins(300),
                WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(200),
            },
            Products = Gas(1.125, 150),
            SourceTemperature = Temperature.FromKelvins(1900),
            MassFlow = MassFlow.FromGramsPerSecond(4),
        };
        var source = new Provenance { Source = "Energy balance of a parcel in a duct, integrated apart in 32-digit arithmetic", How = Evidence.ComputedFromFormula };
        Tolerance within = Tolerance.Relative(1e-11, "closed form against an integration to twelve digits or more");
        Duration t = Duration.FromMilliseconds(10);
        Verify("station of the front after 10 ms", "m", 0.276568524921895, front.TravelAt(t).Meters, within, source);
        Verify("temperature of the front after 10 ms", "K", 1140.63261873227, front.FrontTemperatureAt(t).Kelvins, within, source);
    }

    private static GasState Air() => new() { Gas = PerfectGas.DryAir, Pressure = Pressure.FromPascals(101325), Temperature = Temperature.FromKelvins(288.15) };

    private static PerfectGas Gas(double gamma, double R) => new()
    {
        Name = "check gas",
        GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(R),
        HeatCapacityRatio = gamma,
        Provenance = new Provenance { Source = "Given with the check", How = Evidence.ComputedFromFormula },
    };

    private static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Fronts", quantity, unit, expected, ours, within, source);
}
