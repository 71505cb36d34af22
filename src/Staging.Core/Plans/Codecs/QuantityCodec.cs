using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// A quantity with its unit: <c>{ "value": 18, "unit": "mm" }</c>. The unit as written is kept, and written again.
/// </summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <typeparam name="TUnit">Its unit.</typeparam>
/// <param name="name">What it is, in words.</param>
/// <param name="make">A quantity from a number and a unit.</param>
/// <param name="numberIn">The number of a quantity in a unit.</param>
/// <param name="unitOf">The unit that a quantity carries.</param>
/// <param name="units">The accepted units; the first is the one in which ranges are kept.</param>
internal sealed class QuantityCodec<T, TUnit>(
    string name, Func<double, TUnit, T> make, Func<T, TUnit, double> numberIn, Func<T, TUnit> unitOf,
    ImmutableArray<(string Symbol, TUnit Unit)> units)
    : NumericCodec<T>
    where T : struct
    where TUnit : struct
{
    private const string ValueKey = "value";
    private const string UnitKey = "unit";

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
    public override bool TryRead(JsonCursor place, out T value)
    {
        value = default;
        if (place.Element.ValueKind == JsonValueKind.Number)
        {
            place.Report($"the number {JsonCursor.Excerpt(place.Element.GetRawText())} has no unit; write {{ \"value\": ..., \"unit\": "
                + $"\"{BaseUnit}\" }} with one of {string.Join(", ", Symbols)}.");
            return false;
        }

        if (!place.IsOf(JsonValueKind.Object, $"{name} with its unit, {{ \"value\": ..., \"unit\": \"{BaseUnit}\" }},")
            || !KeySet.TryRead(place, [ValueKey, UnitKey], out KeySet? keys))
            return false;
        bool hasNumber = keys.TryGet(ValueKey, $"the number of the {name}", out JsonCursor? numberPlace) & keys.TryGet(UnitKey,
            $"one of {string.Join(", ", Symbols)}", out JsonCursor? unitPlace);
        if (!hasNumber || !(numberPlace!.TryNumber(out double number) & unitPlace!.TryText(out string? symbol)))
            return false;
        int known = Symbols.IndexOf(symbol!);
        if (known < 0)
        {
            unitPlace.Report($"'{JsonCursor.Excerpt(symbol!)}' is not an accepted unit of {name}; accepted: {string.Join(", ", Symbols)}.");
            return false;
        }

        value = make(number, units[known].Unit);
        return true;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value)
    {
        (string symbol, TUnit unit) = Own(value);
        writer.WriteRawValue(Invariant.Text($"{{ \"{ValueKey}\": {numberIn(value, unit)}, \"{UnitKey}\": \"{symbol}\" }}"));
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference(name, () => new JsonObject
    {
        ["description"] = $"{char.ToUpperInvariant(name[0])}{name[1..]} with its unit.",
        ["type"] = "object",
        ["properties"] = new JsonObject
        {
            [ValueKey] = new JsonObject { ["type"] = "number" },
            [UnitKey] = new JsonObject { ["enum"] = SchemaDefinitions.Texts(Symbols) },
        },
        ["required"] = SchemaDefinitions.Texts([ValueKey, UnitKey]),
        ["additionalProperties"] = false,
    });

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
