using UnitsNet;

namespace Staging.Core.Gases;

// Filling from a supply of constant state, in closed form; time counts with the temperature T_L of the supply.
// First law for a rigid vessel: V dp/dt = gamma R T_L mdot (adiabatic) or R T_L mdot (isothermal at T_L), with the
// flow of NACA Report 1135. Choked, pressure rises evenly; subsonic, w = sqrt(1 - (p/p_L)^((gamma - 1)/gamma)) falls
// evenly, at sqrt(gamma (gamma - 1)/2).
public static partial class Vessel
{
    /// <summary>
    /// Temperature after adiabatic filling with the same gas, T2/T_L = gamma/(1 + (p1/p2) (gamma T_L/T1 - 1)).
    /// </summary>
    /// <param name="pressureRatio">p1/p2, before over after [-], 0 (evacuated) to 1.</param>
    /// <param name="temperatureRatio">T1/T_L, before over supply [-], 0.01 to 100.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>T2/T_L [-]; gamma for a vessel that was empty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double FilledTemperatureRatio(double pressureRatio, double temperatureRatio, double gamma) =>
        Argument.Gamma(gamma) / (1 + Ratio(pressureRatio, nameof(pressureRatio))
            * (gamma / Guard.In(temperatureRatio, 0.01, 100, "-", nameof(temperatureRatio)) - 1));

    /// <summary>Time to fill from one pressure to another, both over that of the supply.</summary>
    /// <param name="startRatio">p1/p_L [-], 0 to 1.</param>
    /// <param name="endRatio">p2/p_L [-], <paramref name="startRatio"/> to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature of the supply; else adiabatic.</param>
    /// <returns>t [-] in units of <see cref="TimeUnit"/> at the temperature of the supply.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double FillTime(double startRatio, double endRatio, double gamma, bool isothermal)
    {
        double start = Ratio(startRatio, nameof(startRatio));
        double end = Guard.In(endRatio, start, 1, "-", nameof(endRatio));
        double critical = IsentropicFlow.CriticalPressureRatio(gamma);
        double choked = Math.Max(0, Math.Min(end, critical) - start) / ChokedRate(gamma, isothermal);
        double subsonic = end > critical
            ? (FillingW(Math.Max(start, critical), gamma) - FillingW(end, gamma)) / SubsonicRate(gamma, isothermal)
            : 0;
        return choked + subsonic;
    }

    /// <summary>
    /// Pressure of a vessel that fills, over that of the supply: the inverse of <see cref="FillTime"/>, and 1 once it
    /// is full.
    /// </summary>
    /// <param name="time">t [-] in units of <see cref="TimeUnit"/> at the temperature of the supply, 0
    /// to 1e9.</param>
    /// <param name="startRatio">p1/p_L [-], 0 to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <param name="isothermal">Whether the walls hold the temperature of the supply; else adiabatic.</param>
    /// <returns>p/p_L [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureAfterFilling(double time, double startRatio, double gamma, bool isothermal)
    {
        double start = Ratio(startRatio, nameof(startRatio));
        double t = Checked(time);
        double critical = IsentropicFlow.CriticalPressureRatio(gamma);
        double rising = start + ChokedRate(gamma, isothermal) * t;
        if (rising <= critical)
            return rising;
        double chokedTime = Math.Max(0, critical - start) / ChokedRate(gamma, isothermal);
        double w = Math.Max(0, FillingW(Math.Max(start, critical), gamma) - SubsonicRate(gamma, isothermal) * (t - chokedTime));
        return Math.Pow((1 - w) * (1 + w), gamma / (gamma - 1));
    }

    /// <summary>
    /// State after a mass of another gas has been let into a closed vessel without heat loss or outflow, mixed:
    /// T = (m1 cv1 T1 + m cp T_in)/(m1 cv1 + m cv), p = (m1 R1 + m R) T/V.
    /// </summary>
    /// <param name="vessel">Gas in the vessel before.</param>
    /// <param name="volume">Volume of the vessel [m3], 1e-12 to 1e6.</param>
    /// <param name="gas">The gas let in.</param>
    /// <param name="mass">Mass let in [kg], 0 to 1e6.</param>
    /// <param name="temperature">Stagnation temperature of the gas let in [K], 50 to 6000.</param>
    /// <returns>The mixture at rest.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument or the resulting state outside its range.</exception>
    public static GasState Charged(GasState vessel, Volume volume, PerfectGas gas, Mass mass, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(vessel);
        ArgumentNullException.ThrowIfNull(gas);
        double V = Guard.In(volume, 1e-12, 1e6, nameof(volume)).CubicMeters;
        double m = Guard.In(mass, 0, 1e6, nameof(mass)).Kilograms;
        double T_in = Guard.In(temperature, 50, 6000, nameof(temperature)).Kelvins;
        double T1 = vessel.Temperature.Kelvins;
        double m1 = vessel.Pressure.Pascals * V / (vessel.Gas.Constants.R * T1);
        double mcv = m1 * vessel.Gas.Constants.Cv + m * gas.Constants.Cv;
        double mR = m1 * vessel.Gas.Constants.R + m * gas.Constants.R;
        double T = (m1 * vessel.Gas.Constants.Cv * T1 + m * gas.Constants.Cp * T_in) / mcv;
        var mixture = new GasMixture
        {
            Name = $"{vessel.Gas.Name} with {gas.Name}",
            Shares = [(vessel.Gas, m1 / (m1 + m)), (gas, m / (m1 + m))],
        };
        return new GasState
        {
            Gas = mixture.Equivalent(),
            Pressure = Pressure.FromPascals(mR * T / V),
            Temperature = Temperature.FromKelvins(T),
        };
    }

    private static double Ratio(double ratio, string name) => Guard.In(ratio, 0, 1, "-", name);

    private static double ChokedRate(double gamma, bool isothermal) => Power(gamma, isothermal) * IsentropicFlow.CriticalFlowFactor(gamma);

    private static double SubsonicRate(double gamma, bool isothermal) => Power(gamma, isothermal) * Math.Sqrt((gamma - 1) / (2 * gamma));

    private static double Power(double gamma, bool isothermal) => isothermal ? 1 : gamma;

    private static double FillingW(double pressureRatio, double gamma) =>
        Math.Sqrt(-NearZero.Expm1((gamma - 1) / gamma * Math.Log(pressureRatio)));
}
