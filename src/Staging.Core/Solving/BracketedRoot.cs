namespace Staging.Core.Solving;

/// <summary>A function of one variable, as a struct so that root finding calls it without dispatch.</summary>
internal interface IScalarFunction
{
    double At(double x);
}

/// <summary>Root finding inside a bracket. The tolerance is a width in x; the function value never decides.</summary>
internal static class BracketedRoot
{
    private const double UnitRoundOff = 1.1102230246251565e-16;

    /// <summary>
    /// Shrinks a bracket [a, b] with a sign change to <paramref name="width"/> and returns its two ends.
    /// R. S. Anderson and A. Bjorck's false position (BIT 13 (1973) 253-264), with a bisection whenever three steps have
    /// not halved the bracket, so that the count of evaluations is bounded.
    /// </summary>
    /// <remarks>The returned ends keep the signs of the given ends; an end may be an exact zero.</remarks>
    public static (double Low, double High) Shrink<TFunction>(ref TFunction f, double a, double fa, double b, double fb, double width)
        where TFunction : IScalarFunction, allows ref struct
    {
        double least = Math.Max(width, 4 * UnitRoundOff * Math.Max(Math.Abs(a), Math.Abs(b)));
        int sinceHalved = 0;
        double target = 0.5 * (b - a);
        while (b - a > least)
        {
            double x = b - fb * (b - a) / (fb - fa);
            bool bisect = sinceHalved >= 3 || !(x > a && x < b);
            if (bisect)
                x = a + 0.5 * (b - a);
            else
                x = Math.Clamp(x, a + 0.25 * least, b - 0.25 * least);
            if (x <= a || x >= b)
                break;
            double fx = f.At(x);
            if (fx == 0)
                return (x, x);
            if (Math.Sign(fx) == Math.Sign(fb))
            {
                double shrink = 1 - fx / fb;
                fa *= bisect ? 1 : shrink > 0 ? shrink : 0.5;
                b = x;
                fb = fx;
            }
            else
            {
                double shrink = 1 - fx / fa;
                fb *= bisect ? 1 : shrink > 0 ? shrink : 0.5;
                a = x;
                fa = fx;
            }
            sinceHalved++;
            if (b - a <= target)
            {
                target = 0.5 * (b - a);
                sinceHalved = 0;
            }
        }
        return (a, b);
    }
}
