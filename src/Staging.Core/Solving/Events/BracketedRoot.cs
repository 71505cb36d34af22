namespace Staging.Core.Solving;

/// <summary>A function of one variable, as a struct so that root finding calls it without dispatch.</summary>
internal interface IScalarFunction
{
    /// <summary>The value at <paramref name="x"/>; not-a-number ends the search.</summary>
    double At(double x);
}

/// <summary>Root finding inside a bracket. The tolerance is a width in x; the function value never decides.</summary>
internal static class BracketedRoot
{
    private const double UnitRoundOff = 1.1102230246251565e-16;

    /// <summary>Evaluations allowed beyond those of bisection: n0 of the source.</summary>
    private const int Slack = 1;

    /// <summary>
    /// Strength of the step from the secant point towards the middle, over the first bracket: kappa1 of the source.
    /// </summary>
    private const double Truncation = 0.2;

    /// <summary>
    /// Shrinks a bracket [a, b] with a sign change to <paramref name="width"/> and returns its two ends.
    /// </summary>
    /// <remarks>
    /// Interpolate, truncate, project: I. F. D. Oliveira and R. H. C. Takahashi, "An enhancement of the bisection
    /// method average performance preserving minmax optimality", ACM Trans. Math. Softw. 47 (2021) 5:1-5:24,
    /// doi:10.1145/3423597, algorithm 1 with kappa1 = 0.2/(b - a), kappa2 = 2, n0 = 1. Superlinear on a simple root,
    /// and on no function more evaluations than bisection plus one: see <see cref="MaxEvaluations"/>. The returned ends
    /// keep the signs of the given ends; an exact zero is returned as both ends. The width is not less than eight
    /// roundings of the larger end.
    /// </remarks>
    public static (double Low, double High) Shrink<TFunction>(ref TFunction f, double a, double fa, double b, double fb, double width)
        where TFunction : IScalarFunction, allows ref struct
    {
        (double min, double goal) = Aim(a, b, width);
        double first = b - a;
        int most = MaxEvaluations(a, b, width);
        for (int j = 0; b - a > min; j++)
        {
            double half = 0.5 * (b - a);
            double middle = a + half;
            // Interpolate: where the chord crosses zero.
            double chord = b - fb * (b - a) / (fb - fa);
            double towards = double.IsFinite(chord) ? middle - chord : 0;
            // Truncate: a little towards the middle, so that the root comes to lie between the new point and the nearer
            // end.
            double delta = Truncation * (b - a) * (b - a) / first;
            double x = towards != 0 && delta <= Math.Abs(towards) ? chord + Math.CopySign(delta, towards) : middle;
            // Project: no further from the middle than bisection would still allow.
            double reach = Math.Max(0, Math.ScaleB(0.5 * goal, most - j) - half);
            if (Math.Abs(x - middle) > reach)
                x = middle - Math.CopySign(reach, towards);
            if (!(x > a && x < b))
                x = middle;
            if (x <= a || x >= b)
                break;

            double fx = f.At(x);
            if (double.IsNaN(fx))
                break;
            if (fx == 0)
                return (x, x);
            if (Math.Sign(fx) == Math.Sign(fb))
                (b, fb) = (x, fx);
            else
                (a, fa) = (x, fx);
        }

        return (a, b);
    }

    /// <summary>
    /// The number of evaluations that <see cref="Shrink"/> does not exceed: ceil(log2((b - a)/width)) + 1, the width
    /// less round-off.
    /// </summary>
    public static int MaxEvaluations(double a, double b, double width)
    {
        double ratio = (b - a) / Aim(a, b, width).Goal;
        return ratio > 1 ? (int)Math.Ceiling(Math.Log2(ratio)) + Slack : 0;
    }

    /// <summary>
    /// The width at which to stop, and the somewhat smaller one to plan for, so that round-off costs no further
    /// evaluation.
    /// </summary>
    private static (double Min, double Goal) Aim(double a, double b, double width)
    {
        double rounding = UnitRoundOff * Math.Max(Math.Abs(a), Math.Abs(b));
        double min = Math.Max(width, 8 * rounding);
        return (min, min - 4 * rounding);
    }
}
