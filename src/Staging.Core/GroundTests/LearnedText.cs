using System.Text;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>What was learned, in some lines.</summary>
internal static class LearnedText
{
    public static string Of(Learned learned)
    {
        Posterior<EquatableArray<double>> posterior = learned.Posterior;
        var text = new StringBuilder($"What {learned.Series.Tests.Length} ground tests say over ");
        text.Append(PosteriorText.Number(posterior.Cases, posterior.Runs)).Append(": ");
        text.Append(PosteriorText.Sample(posterior.EffectiveSampleSize, posterior.Exponent, posterior.Bits));
        PosteriorText.Inputs(text, posterior.Inputs);
        if (!posterior.Observations.IsEmpty)
            Tests(text, learned);
        foreach (ModelFinding finding in learned.Findings)
            text.Append("\n  ").Append(finding);
        return text.Append("\n  It informs; it permits nothing.").ToString();
    }

    private static void Tests(StringBuilder text, Learned learned)
    {
        int width = Math.Max(4, learned.Series.Tests.Max(t => t.Name.Length));
        string test = "test".PadRight(width);
        text.Append(Invariant.Text($"\n  {test}  {"seen",-17}  {"model right",11}  {"taught alone",12}  beyond the others [bit]"));
        for (int j = 0; j < learned.Series.Tests.Length; j++)
        {
            GroundTest made = learned.Series.Tests[j];
            LearnedObservation taught = learned.Posterior.Observations[j];
            string name = made.Name.PadRight(width);
            text.Append(Invariant.Text($"\n  {name}  {LearnedFindings.Words(made),-17}  {learned.Explained[j],11:F2}  "))
                .Append(Invariant.Text($"{taught.BitsAlone,12:F2}  {taught.BitsGivenOthers,6:F2}"));
        }
    }
}
