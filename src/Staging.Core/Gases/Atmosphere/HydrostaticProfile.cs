namespace Staging.Core.Gases;

/// <summary>
/// Air in hydrostatic balance, dp/p = -(g0/(R T)) (1 - delta x_v) dH, over the layers of the US Standard Atmosphere
/// 1976 with one temperature offset at all heights and a vapour mole fraction x_v that follows a power of temperature
/// in the lowest layer. Every layer integrates in closed form.
/// </summary>
/// <remarks>
/// US Standard Atmosphere 1976, equations 18 (geopotential altitude), 23, 33a and 33b (pressure), 42 (density), 50
/// (sound).
/// </remarks>
internal sealed class HydrostaticProfile
{
    /// <summary>
    /// Standard gravity g0 [m/s2], also metres geopotential to joules per kilogram. US Standard Atmosphere 1976, Table
    /// 2.
    /// </summary>
    public const double StandardGravity = 9.80665;

    /// <summary>
    /// Effective radius of the earth r0 [m] at 45 degrees latitude. US Standard Atmosphere 1976, Table 2.
    /// </summary>
    public const double EarthRadius = 6_356_766;

    /// <summary>
    /// Gas constant of dry air R*/M0 [J/(kg K)]. US Standard Atmosphere 1976, Table 2: 8314.32 / 28.9644.
    /// </summary>
    public const double AirGasConstant = 8314.32 / 28.9644;

    /// <summary>Ratio of heat capacities of dry air [-]. US Standard Atmosphere 1976, Table 2.</summary>
    public const double AirGamma = 1.4;

    private readonly double[] base_m;
    private readonly double[] T_b;
    private readonly double[] L;
    private readonly double[] p_b;
    private readonly double[] x_b;
    private readonly double m;

    /// <summary>Balances the air around one point where pressure and temperature are known.</summary>
    /// <param name="H">Geopotential altitude of the point [m'], inside the lowest layer.</param>
    /// <param name="p">Pressure there [Pa].</param>
    /// <param name="T">Temperature there [K]; its offset from the standard is kept at all heights.</param>
    /// <param name="x">Mole fraction of water vapour there [-].</param>
    /// <param name="vapourExponent">m in x_v = x (T(H)/T)^m within the lowest layer [-]; the value at its top is kept
    /// above.</param>
    public HydrostaticProfile(double H, double p, double T, double x, double vapourExponent)
    {
        ReadOnlySpan<AtmosphereLayer> layers = AtmosphereLayer.Us1976;
        int n = layers.Length;
        (base_m, T_b, L, p_b, x_b) = (new double[n], new double[n], new double[n], new double[n], new double[n]);
        m = vapourExponent;
        double offset = T - (layers[0].BaseTemperature_K + layers[0].Gradient_K_per_m * (H - layers[0].Base_m));
        for (int i = 0; i < n; i++)
            (base_m[i], T_b[i], L[i]) = (layers[i].Base_m, layers[i].BaseTemperature_K + offset, layers[i].Gradient_K_per_m);

        x_b[0] = x == 0 ? 0 : x * Math.Pow(T_b[0] / T, m);
        p_b[0] = 1;
        p_b[0] = p / PressureIn(0, H, T);
        for (int i = 1; i < n; i++)
        {
            p_b[i] = PressureIn(i - 1, base_m[i], T_b[i]);
            x_b[i] = VapourIn(i - 1, T_b[i]);
        }
    }

    /// <summary>Geopotential altitude H = r0 z/(r0 + z) [m'] of a geometric altitude z [m].</summary>
    public static double Geopotential(double z) => EarthRadius * z / (EarthRadius + z);

    /// <summary>The air at a geometric altitude [m]; the range is the caller's business.</summary>
    public AirSample At(double z)
    {
        double H = Geopotential(z);
        int i = base_m.Length - 1;
        while (i > 0 && H < base_m[i])
            i--;
        double T = T_b[i] + L[i] * (H - base_m[i]);
        double p = PressureIn(i, H, T);
        if (x_b[0] == 0)
        {
            double RT = AirGasConstant * T;
            return new AirSample(p, T, p / RT, Math.Sqrt(AirGamma * RT));
        }

        double x = VapourIn(i, T);
        double RT_moist = AirGasConstant / (1 - MoistAir.Lightness * x) * T;
        return new AirSample(p, T, p / RT_moist, Math.Sqrt(MoistAir.Gamma(x) * RT_moist));
    }

    private double VapourIn(int i, double T) => x_b[i] == 0 ? 0 : i == 0 ? x_b[0] * Math.Pow(T / T_b[0], m) : x_b[i];

    private double PressureIn(int i, double H, double T)
    {
        double delta = MoistAir.Lightness;
        if (L[i] == 0)
            return p_b[i] * Math.Exp(-StandardGravity * (1 - delta * x_b[i]) * (H - base_m[i]) / (AirGasConstant * T_b[i]));
        double n = StandardGravity / (AirGasConstant * L[i]);
        if (x_b[i] == 0)
            return p_b[i] * Math.Pow(T_b[i] / T, n);
        if (i > 0)
            return p_b[i] * Math.Pow(T_b[i] / T, n * (1 - delta * x_b[i]));
        return p_b[0] * Math.Pow(T_b[0] / T, n) * Math.Exp(delta * x_b[0] * n / m * (Math.Pow(T / T_b[0], m) - 1));
    }
}
