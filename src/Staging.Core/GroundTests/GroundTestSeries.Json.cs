using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Records;
using Staging.Core.Plans.Writing;

namespace Staging.Core.GroundTests;

public sealed partial record GroundTestSeries
{
    private static readonly Lazy<string> MadeSchema = new(() => PlanSchema.Of("Ground tests", GroundTestCodecs.Series));

    /// <summary>
    /// The published JSON Schema of a series, draft 2020-12, as in <c>docs/schema/ground-tests.schema.json</c>. It
    /// comes from the same description as the reader.
    /// </summary>
    public static string Schema => MadeSchema.Value;

    /// <summary>Reads a series from its text.</summary>
    /// <remarks>
    /// Reading is as strict as that of a plan, and gaps are written in the terms of one: every quantity states its
    /// unit, an object may start from a named set, and own gaps stand under <c>gaps</c>. Records that contradict
    /// themselves are problems of the text: all problems are told at once.
    /// </remarks>
    /// <param name="json">The text.</param>
    /// <param name="openTrace">Opens a pressure trace by the name that the text gives; the reader is disposed of here.
    /// Null where the text may name no file.</param>
    /// <returns>The series, without findings that are errors.</returns>
    /// <exception cref="PlanFormatException">The text is no such series; it carries every problem found.</exception>
    public static GroundTestSeries Parse(string json, Func<string, TextReader>? openTrace = null)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Parse(null, json, openTrace);
    }

    /// <summary>
    /// Reads a series from a UTF-8 file. Pressure traces are looked for in its folder and the folders below, nowhere
    /// else.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <returns>The series, without findings that are errors.</returns>
    /// <exception cref="PlanFormatException">The file cannot be read, or is no such series. The message names it; one
    /// problem is one line.</exception>
    public static GroundTestSeries Read(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return NamedFile.Read(path, "series of ground tests", Parse);
    }

    /// <summary>
    /// The series as text, everything in full, traces with their columns. Unknowns of its own are functions and are not
    /// written.
    /// </summary>
    /// <returns>The text; <see cref="Parse(string, Func{string, TextReader})"/> makes an equal series of it.</returns>
    /// <exception cref="ArgumentException">A gap holds a discharge law of a type that a plan has no words for, or what
    /// surrounds it is not <see cref="PerfectGas.DryAir"/>.</exception>
    public string ToJson() => JsonLayout.Of(GroundTestCodecs.Series.Write(this, WriteContext.Full));

    private static GroundTestSeries Parse(string? file, string json, Func<string, TextReader>? openTrace)
    {
        var reading = new ReadContext(openTrace, file);
        using JsonDocument? document = JsonText.Parse(json, reading);
        if (document is null || !TryRead(JsonCursor.Root(document.RootElement, reading), out GroundTestSeries? series))
            throw reading.Refusal();
        foreach (ModelFinding finding in series.Check().Where(f => f.Code == "TST006"))
            reading.Report("$." + finding.KeyPath, $"{finding.Code}: {finding.Message}");
        return reading.Reported == 0 ? series : throw reading.Refusal();
    }

    /// <summary>Reads the version first: of a later one nothing else can be said.</summary>
    private static bool TryRead(JsonCursor root, [NotNullWhen(true)] out GroundTestSeries? series)
    {
        series = null;
        if (root.Has(GroundTestCodecs.VersionKey, out JsonCursor? version) && !GroundTestCodecs.Version.TryRead(version, out _))
            return false;
        root.Reading.OwnGaps = root.Has(OwnGapsCodec.Key, out JsonCursor? gaps) ? new OwnSets(gaps) : null;
        return GroundTestCodecs.Series.TryRead(root, out series);
    }
}
