using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>A bracket in words.</summary>
internal static class BracketText
{
    /// <summary>All answers, in lines.</summary>
    public static string Of(GapBracket bracket) =>
        string.Join('\n', ((string[])[bracket.Verdict, Joint(bracket), Fire(bracket), Vents(bracket)])
            .Where(text => text.Length > 0).SelectMany(AdviceText.Lines));

    /// <summary>The verdict in one sentence.</summary>
    public static string Verdict(GapBracket bracket)
    {
        int lit = bracket.Solved.Count(c => c.Outcome.IsLitBeforeParting), all = bracket.Solved.Length, left = bracket.Cases.Length - all;
        if (all == 0)
            return Invariant.Text($"None of {left} corners of what is unknown was solved.");
        string share = bracket.Lights switch
        {
            BracketVerdict.Throughout => Invariant.Text($"all {all}"),
            BracketVerdict.Nowhere => Invariant.Text($"none of {all}"),
            _ => Invariant.Text($"{lit} of {all}"),
        };
        string decides = bracket.Decides is { } most ? $"; {most} decides most: {Ends(bracket, most)}" : "";
        string unsolved = left > 0 ? Invariant.Text($"; {left} more {(left == 1 ? "was" : "were")} not solved") : "";
        return $"Lights in {share} corners of what is unknown{decides}{unsolved}.";
    }

    /// <summary>Whether the joint holds.</summary>
    public static string Joint(GapBracket bracket)
    {
        FrictionJoint joint = bracket.Problem.Design.Joint.Coupler;
        double area = joint.PressureArea.SquareMeters;
        string tape = bracket.Problem.Design.Joint.Tape is { } round ? Invariant.Text($" and tape of {round.Strength.Newtons:F0} N") : "";
        string held = Invariant.Text($"Joint of {joint.BreakawayForce.Newtons:F0} N{tape}");
        if (bracket.Solved.IsEmpty)
            return $"{held}: not known.";
        double min = area * bracket.Solved.Min(c => c.PeakGaugePressure.Pascals);
        double max = area * bracket.Solved.Max(c => c.PeakGaugePressure.Pascals);
        string when = bracket.JointHolds switch
        {
            BracketVerdict.Throughout => "it holds throughout",
            BracketVerdict.Nowhere => Invariant.Text($"it opens throughout, first at {First(bracket):F1} ms"),
            _ => Invariant.Text($"it opens in {bracket.Solved.Count(c => c.JointOpens is not null)} of {bracket.Solved.Length} corners, "
                + $"first at {First(bracket):F1} ms"),
        };
        return Invariant.Text($"{held}: the gap pushes with {min:F0} to {max:F0} N; {when}.");
    }

    /// <summary>Whether fire arrives, and how.</summary>
    public static string Fire(GapBracket bracket)
    {
        double[] times = [.. bracket.Cases.Where(c => c.Outcome.IsLitBeforeParting).Select(c => c.Outcome.Time.Milliseconds)];
        string lit = times.Length > 0 ? Invariant.Text($" Where it lights, after {times.Min():F1} to {times.Max():F1} ms.") : "";
        if (bracket.Arrival is not { } arrival)
            return lit.TrimStart();
        string alone = bracket.GasAlone switch
        {
            GapOutcome.NotSolved => "gas alone was not solved",
            { IsLitBeforeParting: true } => "gas alone would light it too",
            _ => "gas alone does not light it",
        };
        return Invariant.Text(
            $"Burning pieces come after {arrival.Fast.Milliseconds:F1} to {arrival.Slow.Milliseconds:F1} ms; {alone}.{lit} "
            + $"A piece lodged in the throat would light it {bracket.ContactDelay!.Value.Milliseconds:F1} ms after it came, at best. "
            + $"{bracket.Droplets}");
    }

    /// <summary>Which vent area.</summary>
    public static string Vents(GapBracket bracket) => bracket.Arrival is null ? ""
        : !bracket.IsSearched ? $"Vents: not searched, for the layout cannot be drilled; {Steady(bracket, "to", "")}."
        : Invariant.Text($"Vents: {Least(bracket.OldFacesVent)} where fresh faces of the pieces are never lit, "
            + $"{Least(bracket.AllFacesVent)} where they are lit at once; {Steady(bracket, "and", " at any length of gap")}.");

    private static string Steady(GapBracket bracket, string between, string where) =>
        bracket.OldFacesSteadyVent is { } old && bracket.AllFacesSteadyVent is { } all
            ? Invariant.Text($"a steady flow asks for {old.SquareMillimeters:F0} {between} {all.SquareMillimeters:F0} mm2{where}")
            : "no area keeps a joint closed that bears no pressure";

    private static string Least(Area? area) =>
        area is { } least ? Invariant.Text($"{least.SquareMillimeters:F0} mm2 is the least seen to light") : "none was seen to light";

    private static double First(GapBracket bracket) => bracket.Solved.Min(c => c.JointOpens?.Milliseconds ?? double.PositiveInfinity);

    /// <summary>How many corners light at either end of an unknown.</summary>
    private static string Ends(GapBracket bracket, string unknown)
    {
        int i = bracket.Unknowns.IndexOf(unknown);
        string At(int end)
        {
            BracketCase[] cases = [.. bracket.Cases.Where((c, k) => c.IsSolved && (k >> i & 1) == end)];
            return Invariant.Text($"{cases.Count(c => c.Outcome.IsLitBeforeParting)} of {cases.Length} with {cases[0].Ends[i]}");
        }

        return $"{At(0)}, {At(1)}";
    }
}
