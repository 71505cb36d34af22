using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Exact.Gas;

public class GasVesselChecks
{
    private static readonly Provenance VesselSource = new()
    {
        Source = "Mass and energy balance of a vessel with the nozzle flow of NACA Report 1135, solved in closed form or by quadrature in 25-digit arithmetic",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(1.4, 0.1, 0.904837418036, 0.870560178614, 0.961168781238)]
    [InlineData(1.4, 0.5, 0.606530659713, 0.513158118231, 0.826446280992)]
    [InlineData(1.4, 1, 0.367879441171, 0.279081647234, 0.694444444444)]
    [InlineData(1.4, 2, 0.135335283237, 0.0948645061642, 0.510204081633)]
    [InlineData(1.4, 5, 0.00673794699909, 0.0078125, 0.25)]
    [InlineData(1.25, 0.1, 0.904837418036, 0.883180926154, 0.975461057766)]
    [InlineData(1.25, 0.5, 0.606530659713, 0.545394322637, 0.885813148789)]
    [InlineData(1.25, 1, 0.367879441171, 0.307946147657, 0.79012345679)]
    [InlineData(1.25, 2, 0.135335283237, 0.1073741824, 0.64)]
    [InlineData(1.25, 5, 0.00673794699909, 0.00778872457981, 0.378698224852)]
    public void Choked_blowdown(double gamma, double tau, double isothermal, double adiabatic, double temperature)
    {
        string at = $"gamma {gamma}, t/tau {tau}";
        double t = tau / IsentropicFlow.CriticalFlowFactor(gamma);
        Verify($"isothermal blowdown p/p0, {at}", "-", isothermal, Vessel.ChokedPressureRatio(t, gamma, isothermal: true), TwelveDigits, VesselSource);
        Verify($"adiabatic blowdown p/p0, {at}", "-", adiabatic, Vessel.ChokedPressureRatio(t, gamma, isothermal: false), TwelveDigits, VesselSource);
        Verify($"adiabatic blowdown T/T0, {at}", "-", temperature, Vessel.ChokedTemperatureRatio(t, gamma, isothermal: false), TwelveDigits, VesselSource);
    }

    [Theory]
    [InlineData(1.4, 1.2, 1.01, 0.4925284662, 0.3569804391)]
    [InlineData(1.4, 1.2, 1, 0.6339666636, 0.4606244267)]
    [InlineData(1.4, 1.8, 1.01, 1.135449901, 0.8516241572)]
    [InlineData(1.4, 1.8, 1, 1.276888099, 0.9614488527)]
    [InlineData(1.4, 2, 1.01, 1.289360812, 0.9753073821)]
    [InlineData(1.4, 2, 1, 1.43079901, 1.086797607)]
    [InlineData(1.4, 5, 1.01, 2.627536127, 2.132926267)]
    [InlineData(1.4, 5, 1, 2.768974324, 2.260008655)]
    [InlineData(1.4, 10, 1.01, 3.639826674, 3.115016973)]
    [InlineData(1.4, 10, 1, 3.781264871, 3.255327304)]
    [InlineData(1.25, 1.2, 1.01, 0.4950840353, 0.4001272037)]
    [InlineData(1.25, 1.2, 1, 0.6365524615, 0.5153459862)]
    [InlineData(1.25, 1.8, 1.01, 1.153873513, 0.9549474995)]
    [InlineData(1.25, 1.8, 1, 1.29534194, 1.074934006)]
    [InlineData(1.25, 2, 1.01, 1.313980113, 1.093824478)]
    [InlineData(1.25, 2, 1, 1.455448539, 1.215081851)]
    [InlineData(1.25, 5, 1.01, 2.706382112, 2.365336434)]
    [InlineData(1.25, 5, 1, 2.847850539, 2.49822945)]
    [InlineData(1.25, 10, 1.01, 3.759693563, 3.407644587)]
    [InlineData(1.25, 10, 1, 3.901161989, 3.550075795)]
    public void Venting_to_ambient(double gamma, double start, double end, double isothermal, double adiabatic)
    {
        string at = $"gamma {gamma}, p/pa from {start} to {end}";
        Verify($"isothermal vent time, {at}", "-", isothermal, Vessel.VentTime(start, end, gamma, isothermal: true), TenDigits, VesselSource);
        Verify($"adiabatic vent time, {at}", "-", adiabatic, Vessel.VentTime(start, end, gamma, isothermal: false), TenDigits, VesselSource);
    }

    [Theory]
    [InlineData(1.4, 0, 1, 1.4)]
    [InlineData(1.4, 0, 0.5, 1.4)]
    [InlineData(1.4, 0, 0.144, 1.4)]
    [InlineData(1.4, 0.1, 1, 1.34615384615)]
    [InlineData(1.4, 0.1, 0.5, 1.18644067797)]
    [InlineData(1.4, 0.1, 0.144, 0.747774480712)]
    [InlineData(1.4, 0.5, 1, 1.16666666667)]
    [InlineData(1.4, 0.5, 0.5, 0.736842105263)]
    [InlineData(1.4, 0.5, 0.144, 0.261139896373)]
    [InlineData(1.4, 0.8, 1, 1.06060606061)]
    [InlineData(1.4, 0.8, 0.5, 0.573770491803)]
    [InlineData(1.4, 0.8, 0.144, 0.175487465181)]
    [InlineData(1.25, 0, 1, 1.25)]
    [InlineData(1.25, 0, 0.5, 1.25)]
    [InlineData(1.25, 0, 0.144, 1.25)]
    [InlineData(1.25, 0.1, 1, 1.21951219512)]
    [InlineData(1.25, 0.1, 0.5, 1.08695652174)]
    [InlineData(1.25, 0.1, 0.144, 0.706991358995)]
    [InlineData(1.25, 0.5, 1, 1.11111111111)]
    [InlineData(1.25, 0.5, 0.5, 0.714285714286)]
    [InlineData(1.25, 0.5, 0.144, 0.25824964132)]
    [InlineData(1.25, 0.8, 1, 1.04166666667)]
    [InlineData(1.25, 0.8, 0.5, 0.568181818182)]
    [InlineData(1.25, 0.8, 0.144, 0.174961119751)]
    public void Temperature_after_filling(double gamma, double p12, double T1L, double T2L) =>
        Verify($"T2/T_L after filling, gamma {gamma}, p1/p2 {p12}, T1/T_L {T1L}", "-", T2L, Vessel.FilledTemperatureRatio(p12, T1L, gamma), TwelveDigits, VesselSource);

    [Theory]
    [InlineData(1.4, 0.551083392722, 1.32260014253)]
    [InlineData(1.25, 0.674619234169, 1.51789327688)]
    public void Filling_an_evacuated_vessel(double gamma, double choked, double full)
    {
        double critical = IsentropicFlow.CriticalPressureRatio(gamma);
        Verify($"time of choked filling from vacuum, gamma {gamma}", "-", choked, Vessel.FillTime(0, critical, gamma, isothermal: false), TwelveDigits, VesselSource);
        Verify($"time of complete filling from vacuum, gamma {gamma}", "-", full, Vessel.FillTime(0, 1, gamma, isothermal: false), TwelveDigits, VesselSource);
    }

    [Theory]
    [InlineData(2, 683.638346149, 273108.592452)]
    [InlineData(10, 1441.03117194, 851512.354998)]
    public void Hot_gas_let_into_a_vessel_of_air(double milligrams, double T, double p)
    {
        PerfectGas air = PerfectGas.FromMolarMass("air", MolarMass.FromGramsPerMole(28.9644), 1.4, VesselSource);
        PerfectGas hot = PerfectGas.FromMolarMass("hot gas", MolarMass.FromGramsPerMole(34.75), 1.25, VesselSource);
        var vessel = new GasState { Gas = air, Pressure = Pressure.FromPascals(101325), Temperature = Temperature.FromKelvins(288.15) };
        GasState mixed = Vessel.Charged(vessel, Volume.FromCubicCentimeters(10), hot, Mass.FromMilligrams(milligrams), Temperature.FromKelvins(2000));
        Verify($"T of 10 cm3 air and {milligrams} mg hot gas", "K", T, mixed.Temperature.Kelvins, TwelveDigits, VesselSource);
        Verify($"p of 10 cm3 air and {milligrams} mg hot gas", "Pa", p, mixed.Pressure.Pascals, TwelveDigits, VesselSource);
    }

    [Theory]
    [InlineData(1.4, 0.05, 1.00125011163)]
    [InlineData(1.4, 0.2, 1.02002865106)]
    [InlineData(1.4, 0.5, 1.12613321613)]
    [InlineData(1.4, 1, 1.51859243233)]
    [InlineData(1.4, 1.2, 1.75880659302)]
    [InlineData(1.4, 2, 2.92085310434)]
    [InlineData(1.4, 5, 7.30213276085)]
    [InlineData(1.25, 0.05, 1.0012503125)]
    [InlineData(1.25, 0.2, 1.02008)]
    [InlineData(1.25, 0.5, 1.12812500866)]
    [InlineData(1.25, 1, 1.55000645159)]
    [InlineData(1.25, 1.2, 1.823528648)]
    [InlineData(1.25, 2, 3.03921441333)]
    [InlineData(1.25, 5, 7.59803603334)]
    public void Steady_vent(double gamma, double q, double p) =>
        Verify($"steady vented p/pa, gamma {gamma}, q {q}", "-", p, Vessel.SteadyPressureRatio(q, gamma), TwelveDigits, VesselSource);
}
