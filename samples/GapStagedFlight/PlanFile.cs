using System.Text.RegularExpressions;
using Staging.Core.Plans;

namespace GapStagedFlight;

/// <summary>Reads a plan so that every name in it can be printed.</summary>
internal static partial class PlanFile
{
    /// <summary>
    /// The plan, with characters that control a terminal, line ends among them, as their numbers in all of its texts.
    /// They can stand in the JSON of a plan only behind a backslash, or as what <see cref="Plain"/> knows.
    /// </summary>
    public static StagingPlan Read(string path)
    {
        StagingPlan plan = StagingPlan.Read(path);
        string json = plan.ToJson(), shown = Escape().Replace(json, m => Shown(m.Value));
        return shown == json ? plan : StagingPlan.Parse(shown);
    }

    private static string Shown(string escape) => escape switch
    {
        ['\\', 'u', .. var digits] => Plain.Commands((char)Convert.ToInt32(digits, 16)) ? $@"\\u{digits}" : escape,
        ['\\', 'n' or 'r' or 't' or 'b' or 'f'] => "\\" + escape,
        [var c] => FormattableString.Invariant($@"\\u{(int)c:X4}"),
        _ => escape,
    };

    /// <summary>An escape of JSON, or a character that turns the direction of writing.</summary>
    [GeneratedRegex(@"\\(u[0-9A-Fa-f]{4}|.)|[\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]")]
    private static partial Regex Escape();
}
