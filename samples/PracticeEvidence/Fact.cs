using GapRows;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using static GapRows.DemoGap;

namespace PracticeEvidence;

/// <summary>
/// What practice says of one gap, with the demo's motors, joint and air (common practice, no source). What it calls
/// doubtful, 900 mm, is not among the facts: it says nothing either way.
/// </summary>
internal sealed record Fact(string Name, string Says, GapProblem Gap, Seen Seen)
{
    public static Fact[] All { get; } =
    [
        new("60 mm, one 6 mm hole", "short gaps are the easy ones", OneHole(60), Seen.Lit),
        new("120 mm, two 5 mm holes", "an ordinary gap", AsBuilt, Seen.Lit),
        new("250 mm, one 6 mm hole", "dependable", OneHole(250), Seen.Lit),
        new("460 mm, one 6 mm hole", "has been flown", OneHole(460), Seen.Lit),
        new("250 mm, four 3 mm holes", "as good as one", DemoGap.With(250, t => [Below(t, 3, 4)]), Seen.Lit),
        new("250 mm, closed", "pushed apart", DemoGap.With(250, _ => []), Seen.PartedFirst),
        new("250 mm, open side", "fails", DemoGap.With(250, OpenSide), Seen.NotLit),
        new("120 mm, open side", "fails", DemoGap.With(120, OpenSide), Seen.NotLit),
        new("contact, thin plastic film", "stages reliably", AsBuilt.InContact(JointTape.ThinPlasticFilm), Seen.Lit),
        new("contact, paper tape", "stages reliably", AsBuilt.InContact(JointTape.PaperTape), Seen.Lit),
    ];

    /// <summary>Whether a run ends as practice says.</summary>
    public bool IsKept(GapRun run) => Seen switch
    {
        Seen.Lit => run.Outcome.IsLit,
        Seen.PartedFirst => run.Outcome is GapOutcome.PushedApart,
        _ => !run.Outcome.IsLit,
    };

    private static GapProblem OneHole(double length_mm) => DemoGap.With(length_mm, t => [Below(t, 6, 1)]);
}
