namespace Staging.Core.Validation;

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

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
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
