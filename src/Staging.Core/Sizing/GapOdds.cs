using Staging.Core.Studies;

namespace Staging.Core.Sizing;

/// <summary>How the cases of one gap length and vent area came out.</summary>
public sealed class GapOdds
{
    internal GapOdds(int lit, int partedFirst, int stayedCold, int noAnswer) =>
        (Lit, PartedFirst, StayedCold, NoAnswer) = (lit, partedFirst, stayedCold, noAnswer);

    /// <summary>Cases that lit the upper motor before the stages parted.</summary>
    public int Lit { get; }

    /// <summary>Cases in which the stages parted first: less pressure, or a firmer joint, would help.</summary>
    public int PartedFirst { get; }

    /// <summary>
    /// Cases in which too little heat came to the grain while the joint held: a shorter gap, or less vent area, may
    /// help.
    /// </summary>
    public int StayedCold { get; }

    /// <summary>Cases that the model refused or did not solve.</summary>
    public int NoAnswer { get; }

    /// <summary>All cases.</summary>
    public int Cases => Lit + PartedFirst + StayedCold + NoAnswer;

    /// <summary>The share that is lit, with its intervals; cases without an answer count as not lit.</summary>
    public Proportion Odds => new(Lit, Cases);

    /// <summary>The counts as measures, for columns of a map: share lit, and the cases of each kind.</summary>
    public static EquatableArray<Measure<GapOdds>> Measures { get; } =
    [
        new("odds", "-", o => o.Odds.Estimate), new("lit", "-", o => o.Lit), new("parted first", "-", o => o.PartedFirst),
        new("stayed cold", "-", o => o.StayedCold), new("no answer", "-", o => o.NoAnswer),
    ];

    /// <summary>The counts on one line.</summary>
    /// <returns>For example <c>lit 83, parted first 12, stayed cold 5 of 100</c>.</returns>
    public override string ToString() => Invariant.Text($"lit {Lit}, parted first {PartedFirst}, stayed cold {StayedCold}")
        + (NoAnswer > 0 ? Invariant.Text($", no answer {NoAnswer}") : "") + Invariant.Text($" of {Cases}");
}
