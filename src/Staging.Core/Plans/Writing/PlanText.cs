using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Records;

namespace Staging.Core.Plans.Writing;

/// <summary>The text of a plan.</summary>
internal static class PlanText
{
    private const string FlightKey = "flight";

    /// <summary>Writes a plan.</summary>
    public static string Of(StagingPlan plan, PlanForm form)
    {
        if (form == PlanForm.Full)
            return JsonLayout.Of(PlanCodecs.Plan.Write(plan, WriteContext.Full));
        GapIgnition[] repeated = [.. plan.Flight.Stages.Select(s => s.Gap()).OfType<GapIgnition>().GroupBy(g => g)
            .Where(g => g.Count() > 1).Select(g => g.Key)];
        ImmutableArray<(string Name, JsonObject Whole)> own =
            [.. repeated.Select((g, i) => (NameOf(i, repeated.Length), GapCodecs.Gap.Write(g, WriteContext.Brief.Whole).AsObject()))];
        JsonObject text = PlanCodecs.Plan.Write(plan, WriteContext.Brief with { OwnGaps = own }).AsObject();
        if (repeated.Length > 0)
        {
            text.Insert(text.IndexOf(FlightKey), OwnGapsCodec.Key, new JsonObject(repeated.Select((g, i) =>
                KeyValuePair.Create<string, JsonNode?>(NameOf(i, repeated.Length), GapCodecs.Gap.Write(g, WriteContext.Brief)))));
        }

        return JsonLayout.Of(text);
    }

    private static string NameOf(int index, int count) => count == 1 ? "gap" : Invariant.Text($"gap {index + 1}");
}
