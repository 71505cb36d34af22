namespace Staging.Core.Validation.Twin;

/// <summary>
/// A perfect gas whose heat capacity at constant pressure is piecewise linear in temperature, with enthalpy and entropy integrated
/// exactly. Only the study of constant heat capacities uses it.
/// </summary>
internal sealed class HeatTable(double R, double[] T, double[] cp)
{
    /// <summary>NASA seven-coefficient fits of N2, O2, Ar and CO2 at 300 to 2400 K, mixed to dry air [J/(kg K)].</summary>
    private static readonly double[] AirCp =
        [1004.846, 1014.212, 1029.943, 1050.518, 1098.672, 1140.719, 1171.472, 1197.367, 1208.690, 1219.032, 1237.053, 1251.974, 1264.294, 1274.471];

    /// <summary>The same fits for CO2 0.493, N2 0.329, CO 0.125, H2S 0.0265, H2 0.022, CH4 0.004 by mole, 35.4421 g/mol [J/(kg K)].</summary>
    private static readonly double[] ProductCp =
        [938.89, 999.45, 1052.45, 1099.27, 1177.86, 1238.16, 1278.74, 1312.08, 1326.33, 1339.14, 1360.84, 1378.04, 1391.50, 1401.96];

    private static readonly double[] Grid = [300, 400, 500, 600, 800, 1000, 1200, 1400, 1500, 1600, 1800, 2000, 2200, 2400];

    public double R { get; } = R;

    public static HeatTable Air() => new(8314.46261815324 / 28.9644, Grid, AirCp);

    /// <summary>Products with a gas mass fraction f and particles of constant heat capacity c_s.</summary>
    public static HeatTable Products(double f, double c_s) =>
        new(f * 8314.46261815324 / 35.4421, Grid, [.. ProductCp.Select(cp => f * cp + (1 - f) * c_s)]);

    /// <summary>The same gas with the heat capacity it has at one temperature.</summary>
    public HeatTable FrozenAt(double at) => new(R, [300, 2400], [Cp(at), Cp(at)]);

    /// <summary>Heat capacity [J/(kg K)]; beyond the table the outermost slope goes on.</summary>
    public double Cp(double at)
    {
        int i = Piece(at);
        return cp[i] + (cp[i + 1] - cp[i]) * (at - T[i]) / (T[i + 1] - T[i]);
    }

    public double Gamma(double at) => 1 / (1 - R / Cp(at));

    /// <summary>h(b) - h(a) [J/kg].</summary>
    public double Enthalpy(double a, double b) => Sum(a, b, static (c0, slope, t0, t1) => c0 * (t1 - t0) + slope / 2 * (t1 * t1 - t0 * t0));

    /// <summary>Integral of cp/T from a to b [J/(kg K)].</summary>
    public double Entropy(double a, double b) => Sum(a, b, static (c0, slope, t0, t1) => c0 * Math.Log(t1 / t0) + slope * (t1 - t0));

    /// <summary>Temperature after an isentropic change of pressure by a ratio.</summary>
    public double Isentrope(double from, double pressureRatio) =>
        Bisect(150, 2600, t => Entropy(from, t) - R * Math.Log(pressureRatio));

    /// <summary>Mass flux over p0 [s/m] of an ideal nozzle from rest at T0 to a pressure ratio, choked where it must be.</summary>
    public double Flux(double T0, double pressureRatio)
    {
        double throat = Bisect(0.5 * T0, T0, t => Gamma(t) * R * t - 2 * Enthalpy(t, T0));
        double t = Math.Max(throat, Isentrope(T0, pressureRatio));
        return Math.Exp(Entropy(T0, t) / R) / (R * t) * Math.Sqrt(2 * Math.Max(0, Enthalpy(t, T0)));
    }

    /// <summary>Root of a rising function.</summary>
    public static double Bisect(double low, double high, Func<double, double> f)
    {
        for (int i = 0; i < 80; i++)
        {
            double middle = 0.5 * (low + high);
            if (f(middle) < 0)
                low = middle;
            else
                high = middle;
        }

        return 0.5 * (low + high);
    }

    private int Piece(double at)
    {
        int i = 0;
        while (i < T.Length - 2 && at > T[i + 1])
            i++;
        return i;
    }

    private double Sum(double a, double b, Func<double, double, double, double, double> piece)
    {
        if (a > b)
            return -Sum(b, a, piece);
        double sum = 0;
        for (double from = a; from < b;)
        {
            int i = Piece(Math.BitIncrement(from));
            double to = i == T.Length - 2 ? b : Math.Min(b, T[i + 1]);
            double slope = (cp[i + 1] - cp[i]) / (T[i + 1] - T[i]);
            sum += piece(cp[i] - slope * T[i], slope, from, to);
            from = to;
        }

        return sum;
    }
}
