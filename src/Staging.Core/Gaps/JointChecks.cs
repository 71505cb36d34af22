using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Gaps;

/// <summary>Rules across the fields of a joint.</summary>
internal static class JointChecks
{
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, StageJoint joint, SeparatingBodies bodies)
    {
        double breakaway = joint.Coupler.BreakawayForce.Newtons, sliding = joint.Coupler.SlidingForce.Newtons;
        if (sliding > breakaway)
            Error("GAP004", "Joint.Coupler.SlidingForce", $"The sliding force {sliding:G4} N exceeds the breakaway force {breakaway:G4} N; it may be at most that.");
        double all = bodies.MassAhead.Kilograms + bodies.MassBehind.Kilograms;
        if (joint is StageJoint.FreeMotorTube tube && tube.MovingMass.Kilograms >= all)
            Error("GAP040", "Joint.MovingMass", $"The motor tube of {tube.MovingMass.Kilograms:G4} kg weighs no less than both bodies, {all:G4} kg; it must be less than that.");

        void Error(string code, string path, FormattableString text) =>
            findings.Add(new ModelFinding(FindingSeverity.Error, code, path, text.ToString(CultureInfo.InvariantCulture)));
    }
}
