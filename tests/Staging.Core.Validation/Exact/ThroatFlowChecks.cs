using Staging.Core.Gases;

namespace Staging.Core.Validation.Exact;

public class ThroatFlowChecks
{
    private static readonly Provenance Naca1135 = new()
    {
        Source = "NACA Report 1135 (1953), one-dimensional isentropic flow",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(1.1, 0.584679289086437, 0.628360247871433)]
    [InlineData(1.25, 0.554928957306644, 0.658064791751749)]
    [InlineData(1.4, 0.528281787717174, 0.68473145637727)]
    [InlineData(5.0 / 3, 0.487139289628747, 0.726184377413891)]
    public void Critical_ratio_and_flow_factor(double gamma, double ratio, double factor)
    {
        Check($"p*/p0, gamma {gamma:0.###}", ratio, IsentropicFlow.CriticalPressureRatio(gamma));
        Check($"C*, gamma {gamma:0.###}", factor, IsentropicFlow.CriticalFlowFactor(gamma));
    }

    private static void Check(string quantity, double expected, double ours) =>
        OutsideCheck.Verify("Gases", quantity, "-", expected, ours, Tolerance.ClosedForm, Naca1135);
}
