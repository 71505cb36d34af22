using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json.Nodes;
using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>
/// A thrust history in a CSV file of its own, named relative to the plan. Read only: a plan is written with its curves
/// in it.
/// </summary>
/// <remarks>
/// The name may not lead out of the plan's folder, so that a plan from elsewhere cannot make a program open other
/// files.
/// </remarks>
internal sealed class ThrustHistoryFile : Codec<ThrustHistory>
{
    private const string Wanted = "a file beside the plan or in a folder below it, with / between folders";

    private static readonly ThrustHistory Flat = ThrustHistory.FromColumns([0, 1], [1, 1]);

    /// <summary>The only one; it has no parameters.</summary>
    public static ThrustHistoryFile Codec { get; } = new();

    /// <inheritdoc/>
    public override ThrustHistory Sample => Flat;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out ThrustHistory? value)
    {
        value = null;
        if (!place.TryText(out string? name))
            return false;
        if (Fault(name, place.Reading.OpenThrustHistory) is { } fault)
        {
            place.Report(fault);
            return false;
        }

        try
        {
            using TextReader reader = place.Reading.OpenThrustHistory!(name);
            if (BoundedText.ReadAll(reader) is { } text)
            {
                value = ThrustHistory.FromCsv(new StringReader(text));
                return true;
            }

            place.Report($"{name}: {JsonText.TooLong}");
        }
        catch (FormatException e)
        {
            place.Report($"{name}: {e.Message}");
        }
        catch (DecoderFallbackException)
        {
            place.Report($"{name}: the file is not UTF-8 text.");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            place.Report($"{name}: there is no such file; wanted: {Wanted}.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            place.Report($"{name}: the file cannot be read: {e.Message}");
        }

        return false;
    }

    /// <inheritdoc/>
    public override JsonNode Write(ThrustHistory value, WriteContext context) =>
        throw new UnreachableException("A curve does not know the file it came from; it is written as columns.");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "string", ["pattern"] = "\\S" };

    private static string? Fault(string name, Func<string, TextReader>? open)
    {
        if (open is null)
            return $"'{Excerpt.Of(name)}' is a file, and no files come with this text; give the curve as columns.";
        bool good = name.Split('/').All(part => !string.IsNullOrWhiteSpace(part) && part is not ("." or ".."))
            && !name.Any(c => char.IsControl(c) || c is '\\' or ':');
        return good ? null : $"'{Excerpt.Of(name)}' is not accepted as a file name; wanted: {Wanted}.";
    }
}
