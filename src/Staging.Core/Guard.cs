using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Staging.Core;

/// <summary>
/// Checks of single values at construction. A refusal names property, value, unit and accepted range.
/// </summary>
internal static partial class Guard
{
    /// <summary>Refuses a number outside [low, high]; not-a-number is outside every range.</summary>
    public static double In(double value, double low, double high, string unit = "-", [CallerMemberName] string property = "")
    {
        if (!(value >= low && value <= high))
            Refuse(value, new AcceptedRange(low, true, high, unit), property);
        return value;
    }

    /// <summary>Refuses a number outside (low, high]: the lower end itself does not count.</summary>
    public static double Above(double value, double low, double high, string unit = "-", [CallerMemberName] string property = "")
    {
        if (!(value > low && value <= high))
            Refuse(value, new AcceptedRange(low, false, high, unit), property);
        return value;
    }

    /// <summary>Refuses a count outside [low, high].</summary>
    public static int In(int value, int low, int high, [CallerMemberName] string property = "")
    {
        if (value < low || value > high)
            Refuse(value, new AcceptedRange(low, true, high, "-"), property);
        return value;
    }

    /// <summary>Refuses a number that is none of the named members of its kind.</summary>
    public static T Defined<T>(T value, [CallerMemberName] string property = "")
        where T : struct, Enum =>
        Enum.IsDefined(value)
            ? value
            : throw new ArgumentOutOfRangeException(property, value,
                $"{property} is {value:D}; it must be one of {string.Join(", ", Enum.GetNames<T>())}.");

    /// <summary>
    /// Refuses an absent or blank text, and one with control characters, which could steer a terminal.
    /// </summary>
    public static string NotBlank(string value, [CallerMemberName] string property = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, property);
        return ControlCharacter(value) is { } fault ? throw new ArgumentException($"{property}: {fault}", property) : value;
    }

    /// <summary>
    /// What is to say of the first control character or line break of a text; null where there is none.
    /// </summary>
    public static string? ControlCharacter(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) || text[i] is '\u2028' or '\u2029')
                return Invariant.Text($"the text holds a control character, \\u{(int)text[i]:x4}, as character {i + 1}; it may hold none, ")
                    + "and no line breaks.";
        }

        return null;
    }

    /// <summary>Refuses an absent object.</summary>
    public static T NotNull<T>(T value, [CallerMemberName] string property = "")
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, property);
        return value;
    }

    /// <summary>Refuses an array that was never set.</summary>
    public static ImmutableArray<T> Set<T>(ImmutableArray<T> value, [CallerMemberName] string property = "") =>
        value.IsDefault ? throw new ArgumentException($"{property} was not set; an empty list is [].", property) : value;

    /// <summary>Refuses a list that has too many members.</summary>
    public static EquatableArray<T> AtMost<T>(EquatableArray<T> value, int most, [CallerMemberName] string property = "") =>
        value.Length > most
            ? throw new ArgumentException($"{property} has {value.Length} members; it may have {most}.", property)
            : value;

    /// <summary>What a refusal says, without the name of the parameter that the runtime adds.</summary>
    public static string MessageOf(ArgumentException refusal)
    {
        int tail = refusal.Message.LastIndexOf(" (Parameter '", StringComparison.Ordinal);
        return tail < 0 ? refusal.Message : refusal.Message[..tail];
    }

    private static void Refuse(double value, AcceptedRange range, string property)
    {
        if (RangeProbe.Note(property, range))
            return;
        string suffix = range.Unit == "-" ? "" : " " + range.Unit;
        throw new ArgumentOutOfRangeException(
            property, value, $"{property} is {range.Refused(value)}{suffix}; it must be {range.InWords()}{suffix}.");
    }
}
