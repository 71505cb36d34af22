using Staging.Core.Solving;

namespace Staging.Core.Validation;

/// <summary>Problems of the literature on which nothing is watched.</summary>
internal interface IPublishedProblem : IOdeSystem
{
    int IOdeSystem.EventCount => 0;

    EventRule IOdeSystem.Rule(int index) => throw new ArgumentOutOfRangeException(nameof(index));

    void IOdeSystem.EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
    }
}

/// <summary>
/// The restricted three-body problem with a closed orbit of four loops (R. F. Arenstorf 1963), as stated by E. Hairer, S. P. Norsett and
/// G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), section II.0. States x, y and their rates.
/// </summary>
internal readonly struct ArenstorfOrbit : IPublishedProblem
{
    private const double Mu = 0.012277471;

    public const double Period = 17.0652165601579625588917206249;

    public static double[] Start => [0.994, 0, 0, -2.00158510637908252240537862224];

    public int Dimension => 4;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double a = y[0] + Mu, b = y[0] - (1 - Mu);
        double d1 = Math.Pow(a * a + y[1] * y[1], 1.5), d2 = Math.Pow(b * b + y[1] * y[1], 1.5);
        dydt[0] = y[2];
        dydt[1] = y[3];
        dydt[2] = y[0] + 2 * y[3] - (1 - Mu) * a / d1 - Mu * b / d2;
        dydt[3] = y[1] - 2 * y[2] - (1 - Mu) * y[1] / d1 - Mu * y[1] / d2;
    }
}

/// <summary>
/// Three species, three reactions with rates from 0.04 to 3e7 (H. H. Robertson, "The solution of a set of reaction rate equations", in J. Walsh
/// (ed.), Numerical Analysis: An Introduction, 1966). Stiff; the sum of the species is one.
/// </summary>
internal readonly struct RobertsonReactions : IPublishedProblem
{
    public static bool HasJacobian => true;

    public int Dimension => 3;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double first = 0.04 * y[0], second = 1e4 * y[1] * y[2], third = 3e7 * y[1] * y[1];
        dydt[0] = -first + second;
        dydt[1] = first - second - third;
        dydt[2] = third;
    }

    public void Jacobian(double t, ReadOnlySpan<double> y, Span<double> jacobian, Span<double> timeSlope)
    {
        ReadOnlySpan<double> j =
        [
            -0.04, 1e4 * y[2], 1e4 * y[1],
            0.04, -1e4 * y[2] - 6e7 * y[1], -1e4 * y[1],
            0, 6e7 * y[1], 0,
        ];
        j.CopyTo(jacobian);
        timeSlope.Clear();
    }
}

/// <summary>
/// The oscillator of B. van der Pol in the stiff scaling y1' = y2, y2' = ((1 - y1^2) y2 - y1)/1e-6 from (2, 0): E. Hairer and G. Wanner,
/// Solving Ordinary Differential Equations II, 2nd ed. (1996), section IV.10.
/// </summary>
internal readonly struct VanDerPolOscillator : IPublishedProblem
{
    public int Dimension => 2;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1];
        dydt[1] = ((1 - y[0] * y[0]) * y[1] - y[0]) / 1e-6;
    }
}
