namespace Staging.Core.Solving;

/// <summary>Chooses the size of the next step from the error of the last: proportional-integral control.</summary>
/// <remarks>
/// K. Gustafsson, "Control theoretic techniques for stepsize selection in explicit Runge-Kutta methods", ACM Trans.
/// Math. Softw. 17 (1991) 533-554, in the form of E. Hairer and G. Wanner, Solving Ordinary Differential Equations II,
/// 2nd ed. (1996), section IV.2: exponents (1 - 0.75 b)/p of the error and b/p of the error before. An error of 1 is
/// just allowed. All errors here are squares of errors.
/// </remarks>
/// <param name="order">Order p of the error estimate.</param>
/// <param name="memory">Weight b of the error before [-]: 0 is plain control, 0.4 the smoothest in use.</param>
internal struct StepControl(int order, double memory)
{
    private const double Safety = 0.9;
    private const double MaxGrowth = 6;
    private const double MaxShrink = 0.2;
    private const double ShrinkWhenNotFinite = 0.1;
    private const double Taken = 0.75;
    private const double SmallestSquare = 1e-20;
    private static readonly double LogSmallestRemembered = BinaryLogarithm.Of(1e-8);

    private readonly double ofSquare = -0.5 * (1 - Taken * memory) / order, ofSquareBefore = 0.5 * memory / order, ofRefused = -0.5 / order;

    /// <summary>
    /// Logarithm to base two of the square of the error before: products of powers are sums of logarithms, at the cost
    /// of one logarithm and one power a step.
    /// </summary>
    private double lastLogSquare;

    /// <summary>The step size to try next [s]; zero before the first <see cref="Restart"/>.</summary>
    public double Suggested { get; private set; }

    /// <summary>Discards the error history and starts from a first step [s].</summary>
    public void Restart(double firstStep)
    {
        Suggested = firstStep;
        lastLogSquare = 0;
    }

    /// <summary>A step of size <paramref name="h"/> met the tolerance.</summary>
    public void Accept(double h, double errorSquare, bool afterRejection)
    {
        double logSquare = BinaryLogarithm.Of(errorSquare > SmallestSquare ? errorSquare : SmallestSquare);
        double growth = Safety * BinaryLogarithm.Power(Math.FusedMultiplyAdd(ofSquare, logSquare, ofSquareBefore * lastLogSquare));
        growth = Math.Clamp(growth, MaxShrink, afterRejection ? 1 : MaxGrowth);
        // A step cut short by a stop time only shows that a longer one is allowed; the estimate from longer steps
        // is kept.
        bool cut = h < Suggested;
        if (cut && growth >= 1)
        {
            Suggested = Math.Max(Suggested, h * growth);
            return;
        }

        Suggested = h * growth;
        lastLogSquare = double.MaxNative(logSquare, LogSmallestRemembered);
    }

    /// <summary>
    /// A step of size <paramref name="h"/> was refused; an error that is not finite says nothing but "much smaller".
    /// </summary>
    public void Reject(double h, double errorSquare) => Suggested = double.IsFinite(errorSquare)
        ? h * Math.Max(MaxShrink, Safety * BinaryLogarithm.Power(ofRefused * BinaryLogarithm.Of(errorSquare)))
        : h * ShrinkWhenNotFinite;
}
