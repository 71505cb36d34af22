namespace Staging.Core.Gases;

/// <summary>
/// exp(x) - 1 and ln(1 + x) without loss of digits near zero, by W. Kahan's correction (see N. J. Higham, Accuracy and
/// Stability of Numerical Algorithms, 2nd ed. 2002, section 1.14.1).
/// </summary>
internal static class NearZero
{
    /// <summary>exp(x) - 1.</summary>
    public static double Expm1(double x)
    {
        double u = Math.Exp(x);
        if (u == 1)
            return x;
        double v = u - 1;
        return v == -1 || double.IsInfinity(u) ? v : v * (x / Math.Log(u));
    }

    /// <summary>ln(1 + x).</summary>
    public static double Log1p(double x)
    {
        double u = 1 + x;
        return u == 1 ? x : double.IsInfinity(u) ? u : Math.Log(u) * (x / (u - 1));
    }
}
