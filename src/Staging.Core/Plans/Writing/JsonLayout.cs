using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Writing;

/// <summary>
/// Lays JSON out for reading: an object or a list that fits into a line of 100 characters stands on one, a longer one
/// on a line for each member, and long columns of numbers fill their lines. Only a single long text makes a line
/// longer.
/// </summary>
internal sealed class JsonLayout
{
    private const int Width = 100;
    private const int Step = 2;

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly StringBuilder text = new();

    /// <summary>The text of a value, ended by a line break.</summary>
    public static string Of(JsonNode node)
    {
        var layout = new JsonLayout();
        layout.Append(node, indent: 0, used: 0, after: 0);
        return layout.text.Append('\n').ToString();
    }

    /// <summary>Length of a value on one line; above <paramref name="most"/>, any length above it.</summary>
    public static int LengthOf(JsonNode node, int most = int.MaxValue)
    {
        if (node is not (JsonObject or JsonArray))
            return Leaf(node).Length;
        int length = node is JsonArray ? 2 : 4, count = 0;
        foreach ((string key, JsonNode value) in Members(node))
        {
            length += (count++ > 0 ? 2 : 0) + key.Length + LengthOf(value, most - length);
            if (length > most)
                break;
        }

        return count == 0 ? 2 : length;
    }

    private static IEnumerable<(string Key, JsonNode Value)> Members(JsonNode node) => node is JsonObject o
        ? o.Select(p => (Quoted(p.Key) + ": ", p.Value!))
        : node.AsArray().Select(i => ("", i!));

    private static string Leaf(JsonNode node) => node.ToJsonString(Plain);

    private static string Quoted(string key) => $"\"{JsonEncodedText.Encode(key, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";

    /// <param name="node">The value.</param>
    /// <param name="indent">Blanks before a line of its members' parent.</param>
    /// <param name="used">Characters on the line before it.</param>
    /// <param name="after">Characters that follow on its last line: a comma.</param>
    private void Append(JsonNode node, int indent, int used, int after)
    {
        int room = Width - used - after;
        if (node is not (JsonObject or JsonArray))
            text.Append(Leaf(node));
        else if (LengthOf(node, room) <= room)
            AppendLine(node);
        else if (node is JsonArray array && array.All(i => i!.GetValueKind() == JsonValueKind.Number))
            AppendColumn(array, indent);
        else
            AppendMembers(node, indent);
    }

    private void AppendLine(JsonNode node)
    {
        (string open, string close) = node is JsonObject { Count: > 0 } ? ("{ ", " }") : node is JsonObject ? ("{", "}") : ("[", "]");
        text.Append(open);
        int count = 0;
        foreach ((string key, JsonNode value) in Members(node))
        {
            text.Append(count++ > 0 ? ", " : "").Append(key);
            if (value is JsonObject or JsonArray)
                AppendLine(value);
            else
                text.Append(Leaf(value));
        }

        text.Append(close);
    }

    private void AppendMembers(JsonNode node, int indent)
    {
        text.Append(node is JsonObject ? '{' : '[');
        int left = node is JsonObject o ? o.Count : node.AsArray().Count, inner = indent + Step;
        foreach ((string key, JsonNode value) in Members(node))
        {
            int comma = --left > 0 ? 1 : 0;
            text.Append('\n').Append(' ', inner).Append(key);
            Append(value, inner, inner + key.Length, comma);
            text.Append(comma > 0 ? "," : "");
        }

        text.Append('\n').Append(' ', indent).Append(node is JsonObject ? '}' : ']');
    }

    private void AppendColumn(JsonArray numbers, int indent)
    {
        text.Append('[');
        int used = Width, left = numbers.Count;
        foreach (JsonNode? number in numbers)
        {
            string next = Leaf(number!) + (--left > 0 ? "," : "");
            if (used + 1 + next.Length > Width)
            {
                text.Append('\n').Append(' ', indent + Step).Append(next);
                used = indent + Step + next.Length;
            }
            else
            {
                text.Append(' ').Append(next);
                used += 1 + next.Length;
            }
        }

        text.Append('\n').Append(' ', indent).Append(']');
    }
}
