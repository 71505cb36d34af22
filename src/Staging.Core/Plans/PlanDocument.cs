using System.Globalization;
using System.Text.Json;
using Staging.Core.Plans.Forms;
using Staging.Core.Reviews;

namespace Staging.Core.Plans;

/// <summary>Reads and writes a staging plan as JSON. Reading is strict: unknown, repeated and missing keys are refused, and so is a quantity without a unit.</summary>
public static class PlanDocument
{
    /// <summary>Reads a plan.</summary>
    /// <param name="json">The text.</param>
    /// <param name="openThrustCurve">Opens a thrust curve by the name that the plan gives; the reader is disposed of here.</param>
    /// <returns>The plan. Rules that join several values are those of <see cref="StagingPlan.Check"/>, and are not checked here.</returns>
    /// <exception cref="PlanFormatException">The text is not a plan; it carries every problem found.</exception>
    public static StagingPlan Parse(string json, Func<string, TextReader> openThrustCurve) => Parse(null, json, openThrustCurve);

    /// <summary>Reads a plan from a file. Thrust curves are looked for relative to its folder.</summary>
    /// <param name="path">The file.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="PlanFormatException">The file cannot be read, or is not a plan.</exception>
    public static StagingPlan Read(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        string folder, json;
        try
        {
            folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? path;
            json = File.ReadAllText(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new PlanFormatException($"{path}: the plan could not be read: {fault.Message.ReplaceLineEndings(" ")}", fault);
        }

        return Parse(path, json, name => File.OpenText(Path.Combine(folder, name)));
    }

    /// <summary>Writes a plan, each quantity in its own unit and each thrust curve with its columns.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The text; <see cref="Parse(string, Func{string, TextReader})"/> makes the same plan of it.</returns>
    /// <exception cref="ArgumentException">The plan holds an atmosphere, a discharge law or a gap ignition of a type that a plan file has no words for.</exception>
    public static string Write(StagingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JsonText.Of(writer => PlanForms.Plan.Write(writer, plan));
    }

    private static StagingPlan Parse(string? file, string json, Func<string, TextReader> openThrustCurve)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(openThrustCurve);
        var reading = new PlanReading(openThrustCurve);
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            if (PlanForms.Plan.TryRead(JsonPlace.Root(document.RootElement, reading), out StagingPlan plan))
                return plan;
        }
        catch (JsonException fault)
        {
            reading.Problems.Add(new PlanProblem("$", SyntaxFault(fault)));
        }
        catch (ArgumentException fault) when (fault is not ArgumentOutOfRangeException)
        {
            reading.Problems.Add(new PlanProblem("$", "the text is not Unicode: it holds half a surrogate pair."));
        }

        throw new PlanFormatException(file, [.. reading.Problems]);
    }

    private static string SyntaxFault(JsonException fault)
    {
        const string Added = " LineNumber:";
        int end = fault.Message.IndexOf(Added, StringComparison.Ordinal);
        string what = end < 0 ? fault.Message : fault.Message[..end];
        return string.Create(
            CultureInfo.InvariantCulture, $"line {(fault.LineNumber ?? 0) + 1}, column {(fault.BytePositionInLine ?? 0) + 1}: this is not JSON. {what}");
    }
}
