using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Validation.Published;

/// <summary>A fit whose answer is certified: the reference data set Misra1a of the National Institute of Standards and Technology.</summary>
public class CalibrationChecks
{
    private const string Certified = "NIST Statistical Reference Datasets, nonlinear regression, Misra1a, y = b1 (1 - exp(-b2 x)): data and certified values as "
        + "reprinted in the test suites of several public statistics libraries";

    private static readonly ImmutableArray<double> X = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
    private static readonly ImmutableArray<double> Y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];

    [Fact]
    public void Fit_of_Misra1a()
    {
        var inputs = new InputSet<(double A, double B)>((500, 1e-4),
            new StudyInput<(double A, double B)>("b1", "-", Distribution.Uniform(100, 500), (m, v) => m with { A = v }),
            new StudyInput<(double A, double B)>("b2", "-", Distribution.Uniform(1e-4, 2e-3), (m, v) => m with { B = v }));
        CalibrationResult<(double A, double B)> fit = inputs.Fit(MeasuredTrace.Of("y", X, Y), (m, x, _) => [.. x.Select(at => m.A * (1 - Math.Exp(-m.B * at)))]);
        Check("b1", 238.94212918, fit.Inputs[0].Value, 1e-5, "the minimiser stops where the sum of squares no longer changes: half of the digits of a double");
        Check("b2", 5.5015643181e-4, fit.Inputs[1].Value, 1e-5, "the minimiser stops where the sum of squares no longer changes: half of the digits of a double");
        Check("standard error of b1", 2.7070075241, fit.Inputs[0].StandardError, 1e-3, "slopes by differences over a share of each range");
        Check("standard error of b2", 7.2668688436e-6, fit.Inputs[1].StandardError, 1e-3, "slopes by differences over a share of each range");
        Check("scatter of the residuals", 0.10187876330, fit.ResidualStandardDeviation, 1e-9, "second order in the distance from the minimum");
    }

    private static void Check(string quantity, double expected, double ours, double relative, string reason) =>
        StudiesChecks.Check($"Misra1a, {quantity}", expected, ours, Tolerance.Relative(relative, reason), Certified, Evidence.SeenInSource);
}
