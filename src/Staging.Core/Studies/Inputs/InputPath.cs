using System.Runtime.CompilerServices;

namespace Staging.Core.Studies;

/// <summary>
/// The names of inputs and measures: they are column heads, so they contain nothing that a table would have to escape.
/// </summary>
internal static class InputPath
{
    public static string Checked(string value, [CallerMemberName] string property = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(value, property);
        if (!value.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '_' or ' ') || value != value.Trim())
            throw new ArgumentException($"The name \"{Excerpt.Of(value)}\" may hold only letters, digits, dots, hyphens, underscores "
                + "and inner spaces.", property);
        return value;
    }
}
