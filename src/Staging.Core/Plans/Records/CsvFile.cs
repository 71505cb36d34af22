using System.Diagnostics;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>
/// A curve in a CSV file of its own, named relative to the plan. Read only: a plan is written with its curves in it.
/// </summary>
/// <remarks>
/// The name may not lead out of the plan's folder, so that a plan from elsewhere cannot make a program open other
/// files.
/// </remarks>
/// <typeparam name="T">The curve.</typeparam>
/// <param name="read">Reads it from the text of a file; a <see cref="FormatException"/> tells what is wrong.</param>
/// <param name="sample">Some legal curve.</param>
internal sealed class CsvFile<T>(Func<TextReader, T> read, T sample) : Codec<T>
    where T : class
{
    private const string Wanted = "a file beside the plan or in a folder below it, with / between folders";

    /// <inheritdoc/>
    public override T Sample => sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out T? value)
    {
        value = null;
        if (!place.TryText(out string? name))
            return false;
        if (Fault(name, place.Reading.OpenFile) is { } fault)
        {
            place.Report(fault);
            return false;
        }

        string told = Excerpt.Of(name);
        try
        {
            using TextReader reader = place.Reading.OpenFile!(name);
            if (BoundedText.ReadAll(reader) is { } text)
            {
                value = read(new StringReader(text));
                return true;
            }

            place.Report($"{told}: {JsonText.TooLong}");
        }
        catch (FormatException e)
        {
            place.Report($"{told}: {e.Message}");
        }
        catch (DecoderFallbackException)
        {
            place.Report($"{told}: the file is not UTF-8 text.");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            place.Report($"{told}: there is no such file; wanted: {Wanted}.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            place.Report($"{told}: the file cannot be read: {Excerpt.Of(e.Message, 250)}");
        }

        return false;
    }

    /// <inheritdoc/>
    public override JsonNode Write(T value, WriteContext context) =>
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
