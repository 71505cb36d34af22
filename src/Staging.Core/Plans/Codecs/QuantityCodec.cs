using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// A quantity with its unit: <c>"18 mm"</c>, or <c>{ "value": 18, "unit": "mm" }</c>. The unit as written is kept, and
/// written again.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <typeparam name="TUnit">Its unit.</typeparam>
/// <param name="name">What it is, in words.</param>
/// <param name="make">A quantity from a number and a unit.</param>
/// <param name="numberIn">The number of a quantity in a unit.</param>
/// <param name="unitOf">The unit that a quantity carries.</param>
/// <param name="units">The accepted units; the first is the one in which ranges are kept.</param>
/// <param name="small">
/// The unit that a number of 1 or more without one is likely in where its range begins at 0, and ends at most so far.
/// </param>
internal sealed class QuantityCodec<T, TUnit>(
    string name, Func<double, TUnit, T> make, Func<T, TUnit, double> numberIn, Func<T, TUnit> unitOf,
    ImmutableArray<(string Symbol, TUnit Unit)> units, (string Symbol, double UpTo) small = default)
    : NumericCodec<T>
    where T : struct
    where TUnit : struct
{
    /// <inheritdoc/>
    public override T Sample => FromBase(0);

    /// <inheritdoc/>
    public override string BaseUnit => units[0].Symbol;

    /// <summary>What it is, in words.</summary>
    public string Name => name;

    /// <summary>Symbols of the accepted units.</summary>
    public ImmutableArray<string> Symbols { get; } = [.. units.Select(u => u.Symbol)];

    /// <inheritdoc/>
    public override T FromBase(double number) => make(number, units[0].Unit);

    /// <inheritdoc/>
    public override double ToBase(T value) => numberIn(value, units[0].Unit);

    /// <inheritdoc/>
    public override string Say(T value)
    {
        (string symbol, TUnit unit) = Own(value);
        return Invariant.Text($"{numberIn(value, unit)} {symbol}");
    }

    /// <inheritdoc/>
    public override string Say(AcceptedRange range, T value)
    {
        (string symbol, TUnit unit) = Own(value);
        string low = AcceptedRange.Text(numberIn(FromBase(range.Low), unit)),
            high = AcceptedRange.Text(numberIn(FromBase(range.High), unit));
        return $"{range.InWords(low, high)} {symbol}";
    }

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out T value) => TryRead(place, null, out value);

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, AcceptedRange? range, out T value)
    {
        value = default;
        switch (place.Element.ValueKind)
        {
            case JsonValueKind.String:
                return TryReadText(place, range, out value);
            case JsonValueKind.Number:
                string number = Excerpt.Of(place.Element.GetRawText());
                place.Report($"the number {number} has no unit; write \"{number} {Likely(place.Element.GetDouble(), range)}\", "
                    + $"with one of {Accepted}.");
                return false;
            default:
                return place.IsOf(JsonValueKind.Object, $"{name} with its unit, \"... {BaseUnit}\",") && TryReadParts(place, out value);
        }
    }

    /// <inheritdoc/>
    public override JsonNode Write(T value, WriteContext context)
    {
        (string symbol, TUnit unit) = Own(value);
        return context.Form == PlanForm.Brief
            ? Say(value)
            : new JsonObject { [JsonCursor.ValueKey] = numberIn(value, unit), [JsonCursor.UnitKey] = symbol };
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference(name, () => new JsonObject
    {
        ["description"] = $"{char.ToUpperInvariant(name[0])}{name[1..]} with its unit.",
        ["anyOf"] = new JsonArray(
            new JsonObject
            {
                ["type"] = "string",
                ["pattern"] = $"^{QuantityText.Number} *({string.Join('|', Symbols.Select(Escaped))})$",
            },
            new JsonObject
            {
                ["type"] = "object",
                ["properties"] = new JsonObject
                {
                    [JsonCursor.ValueKey] = new JsonObject { ["type"] = "number" },
                    [JsonCursor.UnitKey] = new JsonObject { ["enum"] = SchemaDefinitions.Texts(Symbols) },
                },
                ["required"] = SchemaDefinitions.Texts([JsonCursor.ValueKey, JsonCursor.UnitKey]),
                ["additionalProperties"] = false,
            }),
    });

    private string Accepted => string.Join(", ", Symbols);

    private static string Escaped(string symbol) => Regex.Escape(symbol).Replace("\\ ", " ", StringComparison.Ordinal);

    /// <summary>
    /// The unit that a number without one may be meant in: the one that puts it deepest, by factors, into the range. A
    /// range that begins at 0 has no depth; there it is the first that puts it into the range, small things first.
    /// </summary>
    private string Likely(double number, AcceptedRange? range)
    {
        if (range is null || !(Math.Abs(number) <= JsonCursor.LargestNumber))
            return BaseUnit;
        bool isSmall = range.High <= small.UpTo && number >= 1;
        return units.Select(u => (u.Symbol, Value: ToBase(make(number, u.Unit))))
            .Where(u => range.Holds(u.Value))
            .OrderBy(u => range.Low > 0 ? Math.Abs(Math.Log(u.Value / range.Low * (u.Value / range.High)))
                : isSmall && u.Symbol == small.Symbol ? 0 : 1)
            .Select(u => u.Symbol).FirstOrDefault(BaseUnit);
    }

    private bool TryReadText(JsonCursor place, AcceptedRange? range, out T value)
    {
        value = default;
        if (!place.TryText(out string? text))
            return false;
        string excerpt = Excerpt.Of(text);
        if (!QuantityText.TrySplit(text, out double number, out string? symbol))
            place.Report($"'{excerpt}' is not a number with its unit; wanted: a number and one of {Accepted}, for example "
                + $"\"1 {BaseUnit}\".");
        else if (symbol.Length == 0)
            place.Report($"'{excerpt}' has no unit; write \"{excerpt} {Likely(number, range)}\", with one of {Accepted}.");
        else if (Math.Abs(number) > JsonCursor.LargestNumber)
            place.Report($"'{excerpt}' is too large a number.");
        else if (Symbols.IndexOf(symbol) is >= 0 and int known)
        {
            value = make(number, units[known].Unit);
            return true;
        }
        else
            place.Report($"'{excerpt}': '{Excerpt.Of(symbol)}' is not an accepted unit of {name}; accepted: {Accepted}.");

        return false;
    }

    private bool TryReadParts(JsonCursor place, out T value)
    {
        value = default;
        ImmutableArray<string> both = [JsonCursor.ValueKey, JsonCursor.UnitKey];
        if (!KeySet.TryRead(place, both, both, out KeySet? keys))
            return false;
        bool hasNumber = keys.TryGet(JsonCursor.ValueKey, $"the number of the {name}", out JsonCursor? numberPlace)
            & keys.TryGet(JsonCursor.UnitKey, $"one of {Accepted}", out JsonCursor? unitPlace);
        if (!hasNumber || !(numberPlace!.TryNumber(out double number) & unitPlace!.TryText(out string? symbol)))
            return false;
        int known = Symbols.IndexOf(symbol!);
        if (known < 0)
        {
            unitPlace.Report($"'{Excerpt.Of(symbol!)}' is not an accepted unit of {name}; accepted: {Accepted}.");
            return false;
        }

        value = make(number, units[known].Unit);
        return true;
    }

    /// <summary>The unit that a quantity carries, or the first of the list where that has no symbol here.</summary>
    private (string Symbol, TUnit Unit) Own(T value)
    {
        TUnit own = unitOf(value);
        foreach ((string Symbol, TUnit Unit) entry in units)
        {
            if (EqualityComparer<TUnit>.Default.Equals(entry.Unit, own))
                return entry;
        }

        return units[0];
    }
}
