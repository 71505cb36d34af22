using System.Text.RegularExpressions;
using Staging.Core.Reviews;

namespace GapStagedFlight;

/// <summary>Names of files made of names in the plan.</summary>
internal static partial class FileName
{
    private const int Longest = 40;

    /// <summary>A name in letters, digits and single dashes, not too long for a file.</summary>
    public static string Of(string text)
    {
        string name = Others().Replace(text, "-").Trim('-');
        return name.Length <= Longest ? name : name[..Longest].TrimEnd('-');
    }

    /// <summary>What the files of one gap are told apart by: nothing where it is the only one.</summary>
    public static string Suffix(StagingReview review, GapReview gap)
    {
        if (review.Gaps.Length == 1)
            return "";
        string[] names = [.. review.Gaps.Select(g => Of(g.Staging.UpperStage))];
        int place = review.Gaps.IndexOf(gap);
        bool tells = names[place].Length > 0 && names.Count(n => string.Equals(n, names[place], StringComparison.OrdinalIgnoreCase)) == 1;
        int stage = 1 + review.Plan.Flight.Stages.Items.IndexOf(review.Plan.Flight.Stages.First(s => s.Name == gap.Staging.UpperStage));
        return "-" + (tells ? names[place] : FormattableString.Invariant($"{stage}"));
    }

    [GeneratedRegex("[^A-Za-z0-9]+")]
    private static partial Regex Others();
}
