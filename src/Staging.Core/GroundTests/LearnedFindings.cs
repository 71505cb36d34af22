using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>What there is to say of the tests themselves, once something was learned of them.</summary>
internal static class LearnedFindings
{
    /// <summary>Probability that the model is right about a test, below which it is told [-].</summary>
    private const double Surprising = 0.3;

    /// <summary>Excess over the likelihood of silence that is round-off [-].</summary>
    private const double RoundOff = 1e-9;

    public static IEnumerable<ModelFinding> Of(GroundTestSeries series, Posterior<EquatableArray<double>> posterior, double[] silence,
        IReadOnlyList<double> explained)
    {
        for (int j = 0; j < silence.Length; j++)
        {
            GroundTest test = series.Tests[j];
            if (posterior.Observations[j].Best <= silence[j] * (1 + RoundOff))
                yield return new ModelFinding(FindingSeverity.Warning, "TST010", test.Name, "The model calls this test impossible: in "
                    + $"none of {posterior.Runs} cases does it give what was seen ({Words(test)}). It is taken as a test about which "
                    + "model or record is wrong, and teaches nothing; the others teach as if it had not been made.");
            else if (explained[j] < Surprising)
                yield return new ModelFinding(FindingSeverity.Warning, "TST011", test.Name, Invariant.Text(
                    $"This test surprises ({Words(test)}): that the model is right about it has a probability of {explained[j]:F2} after ")
                    + "all tests. Look at the record again, and at what it has that the others do not.");
        }
    }

    /// <summary>What was seen, in words.</summary>
    public static string Words(GroundTest test) => test.Seen switch
    {
        Seen.Lit => "lit",
        Seen.NotLit => "not lit",
        Seen.PartedFirst => "parted first",
        Seen.NotLitTogether => "not lit, together",
        _ => "end unknown",
    };
}
