namespace Staging.Core.Flight;

/// <summary>A drag table lowered to SI numbers: half the drag area against Mach number, D = rho v |v| * HalfArea(M).</summary>
internal sealed class DragCurve
{
    private readonly double[] mach;
    private readonly double[] value;
    private readonly double[] slope;

    public DragCurve(double referenceArea, ReadOnlySpan<double> mach, ReadOnlySpan<double> coefficient)
    {
        // A level piece below the first point, and one above the last, hold the end values without a branch of their own.
        int n = mach.Length;
        this.mach = new double[n + 1];
        value = new double[n + 1];
        slope = new double[n + 1];
        this.mach[0] = double.NegativeInfinity;
        value[0] = 0.5 * referenceArea * coefficient[0];
        for (int i = 0; i < n; i++)
        {
            this.mach[i + 1] = mach[i];
            value[i + 1] = 0.5 * referenceArea * coefficient[i];
            slope[i + 1] = i + 1 < n ? 0.5 * referenceArea * (coefficient[i + 1] - coefficient[i]) / (mach[i + 1] - mach[i]) : 0;
        }
    }

    /// <summary>Half the drag area [m2] at a Mach number; <paramref name="hint"/> remembers the piece between calls.</summary>
    public double HalfArea(double M, ref int hint)
    {
        double[] knots = mach;
        int i = hint;
        while (i + 1 < knots.Length && M >= knots[i + 1])
            i++;
        while (i > 0 && M < knots[i])
            i--;
        hint = i;
        return i == 0 ? value[0] : value[i] + slope[i] * (M - knots[i]);
    }
}
