using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Records;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans;

public sealed partial record StagingPlan
{
    /// <summary>
    /// The published JSON Schema of a plan, draft 2020-12, as in <c>docs/schema/staging-plan.schema.json</c>. It comes
    /// from the same description as the reader, so the two cannot drift apart.
    /// </summary>
    /// <remarks>
    /// A schema cannot say everything: repeated keys, the ranges of quantities in every unit (they stand in the
    /// descriptions) and columns that do not fit each other are found by the reader alone.
    /// </remarks>
    public static string Schema => PlanSchema.Text;

    /// <summary>Reads a plan from its text.</summary>
    /// <remarks>
    /// Reading is strict: unknown, repeated and missing keys are refused, and so are comments, trailing commas, null,
    /// control characters in texts, and a quantity without a unit. Every quantity states its unit: <c>"18 mm"</c>, or
    /// <c>{ "value": 18, "unit": "mm" }</c>. An object may start from a named set and say only what differs. Remarks
    /// belong into the provenance of the numbers. A text, and each thrust history, has 4 million characters at most.
    /// </remarks>
    /// <param name="json">The text.</param>
    /// <param name="openThrustHistory">
    /// Opens a thrust history by the name that the plan gives; the reader is disposed of here. An
    /// <see cref="IOException"/> or <see cref="UnauthorizedAccessException"/> becomes a problem of the plan. Null where
    /// the text may name no file.
    /// </param>
    /// <returns>
    /// The plan. Rules that join several values are those of <see cref="Check"/>, and are not checked here.
    /// </returns>
    /// <exception cref="PlanFormatException">The text is not a plan; it carries every problem found.</exception>
    public static StagingPlan Parse(string json, Func<string, TextReader>? openThrustHistory = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Parse(null, json, openThrustHistory);
    }

    /// <summary>
    /// Reads a plan from a UTF-8 file. Thrust histories are looked for in its folder and the folders below, nowhere
    /// else.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <returns>
    /// The plan. Rules that join several values are those of <see cref="Check"/>, and are not checked here.
    /// </returns>
    /// <exception cref="PlanFormatException">The file cannot be read, or is not a plan. The message names it; one
    /// problem is one line.</exception>
    public static StagingPlan Read(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return NamedFile.Read(path, "plan", Parse);
    }

    /// <summary>The plan as text.</summary>
    /// <param name="form">
    /// <see cref="PlanForm.Full"/>, the default, says everything; <see cref="PlanForm.Brief"/> leaves out what stands
    /// in the library. Thrust histories are written with their columns in both.
    /// </param>
    /// <returns>The text; <see cref="Parse(string, Func{string, TextReader})"/> makes an equal plan of it.</returns>
    /// <exception cref="ArgumentException">The plan holds an atmosphere, a discharge law or a gap ignition of a type
    /// that a plan file has no words for.</exception>
    /// <exception cref="ArgumentOutOfRangeException">None of the forms.</exception>
    public string ToJson(PlanForm form = PlanForm.Full) => PlanText.Of(this, Guard.Defined(form, nameof(form)));

    private static StagingPlan Parse(string? file, string json, Func<string, TextReader>? openThrustHistory)
    {
        var reading = new ReadContext(openThrustHistory, file);
        using JsonDocument? document = JsonText.Parse(json, reading);
        return document is not null && TryRead(JsonCursor.Root(document.RootElement, reading), out StagingPlan? plan)
            ? reading.Origin().Of(plan)
            : throw reading.Refusal();
    }

    /// <summary>Reads the version first: of a later one nothing else can be said.</summary>
    private static bool TryRead(JsonCursor root, [NotNullWhen(true)] out StagingPlan? plan)
    {
        plan = null;
        if (root.Has(PlanVersionCodec.Key, out JsonCursor? version) && !PlanVersionCodec.Codec.TryRead(version, out _))
            return false;
        root.Reading.OwnGaps = root.Has(OwnGapsCodec.Key, out JsonCursor? gaps) ? new OwnSets(gaps) : null;
        return PlanCodecs.Plan.TryRead(root, out plan);
    }
}
