using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Rules across the fields of a joint.</summary>
internal static class JointChecks
{
    /// <summary>
    /// How often the tube may lie in what the joint lengthens it by [-]: a judgement. Gas that has expanded a
    /// hundredfold pushes nothing, and the one-dimensional model carries a cell for each of its lengths.
    /// </summary>
    private const double MaxStretch = 100;

    /// <summary>
    /// Factor between the diameter that is pressed on and the bore beyond which one of them is doubted [-]: a
    /// judgement; a coupler round or inside the tube lies within its walls.
    /// </summary>
    private const double Misfit = 1.25;

    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapDesign design, SeparatingBodies bodies)
    {
        StageJoint joint = design.Joint;
        AddStretch(findings, design);
        AddFit(findings, design);
        double breakaway = joint.Coupler.BreakawayForce.Newtons, sliding = joint.Coupler.SlidingForce.Newtons;
        if (sliding > breakaway)
            Error("GAP004", "Joint.Coupler.SlidingForce",
                $"The sliding force {sliding:G4} N exceeds the breakaway force {breakaway:G4} N; it may be at most that.");
        double all = bodies.MassAhead.Kilograms + bodies.MassBehind.Kilograms;
        if (joint.MovingMass is { Kilograms: var tube } && tube >= all)
            Error("GAP040", "Joint.MovingMass", $"The motor tube of {tube * 1e3:G4} g weighs no less than both bodies, "
                + $"{all * 1e3:G4} g; it must be less than that.");

        void Error(string code, string path, Invariant.Handler text) =>
            findings.Add(new ModelFinding(FindingSeverity.Error, code, path, text.ToStringAndClear()));
    }

    /// <summary>
    /// A coupler pushes on about the bore of the tube; a motor tube that slides pushes on its own.
    /// </summary>
    private static void AddFit(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        double pressed = design.Joint.Coupler.PressureDiameter.Meters, bore = design.Tube.Bore.Meters;
        if (design.Joint.MovingMass is null && (pressed > bore * Misfit || pressed < bore / Misfit))
            GapChecks.Add(findings, FindingSeverity.Warning, "GAP034", "Joint.Coupler.PressureDiameter",
                $"The gap pressure pushes the joint apart over {pressed * 1e3:G4} mm, and the bore is {bore * 1e3:G4} mm: the force "
                    + $"differs by a factor of {pressed * pressed / (bore * bore):G3} from that on the bore. State the diameter that "
                        + $"parts.");
    }

    /// <summary>Longest engagement that a gap may have [m].</summary>
    public static double MaxEngagement(GapDesign design) => MaxStretch * Gap(design) / Widening(design);

    /// <summary>Length of the gap, its recess as bore [m].</summary>
    private static double Gap(GapDesign design)
    {
        double length = design.Tube.Length.Meters;
        return length + design.Grain.RecessVolume.CubicMeters / design.Tube.Profile.AreaBelow(length);
    }

    /// <summary>Area of the joint over that of the bore [-].</summary>
    private static double Widening(GapDesign design) => design.Joint.Coupler.PressureArea.SquareMeters / design.Tube.Profile.FirstArea;

    private static void AddStretch(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        FrictionJoint coupler = design.Joint.Coupler;
        double ratio = Widening(design), gap = Gap(design), engagement = coupler.Engagement.Meters, most = MaxEngagement(design);
        if (engagement > most)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP031", "Joint.Coupler.Engagement",
                $"{engagement * 1e3:G4} mm of a joint of {coupler.PressureDiameter.Millimeters:G4} mm hold as much as "
                    + $"{engagement * ratio:G4} m of a bore of {design.Tube.Bore.Millimeters:G4} mm, {engagement * ratio / gap:F0} "
                        + $"times the gap with its recess; it may be at most {MaxStretch:F0} times, {most * 1e3:G4} mm.");
    }
}
