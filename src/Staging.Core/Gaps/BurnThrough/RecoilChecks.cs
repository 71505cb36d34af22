using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Whether the recoil of breaking webs, which none of the models has, may open a joint by itself.</summary>
/// <remarks>
/// While a web flies out the chamber pushes its booster back by F = (p - pa) A, and then the pieces carry the momentum
/// M v: the body behind, of mass m of all, is left with v0 = M v/m. Its joint bears the share (all - m)/all of F, and a
/// coupler that rubs with F1 stops the two after mu v0^2/(2 F1), with the reduced mass mu. The gas that follows adds a
/// fifth to a quarter of the momentum, which is left out: what is told is the least.
/// </remarks>
internal static class RecoilChecks
{
    /// <summary>Adds a warning where a problem without errors has a joint that the recoil may open.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        double force = 0, momentum = 0;
        foreach (GapSource.EndBurner motor in problem.Design.Source.EndBurners.Where(m => m.Delay.Seconds == 0))
        {
            BurnThroughEstimate broken = new(motor, problem.Surroundings.Pressure.Pascals);
            force += broken.RecoilForce.Newtons;
            momentum += broken.PieceMomentum.NewtonSeconds;
        }

        if (force == 0)
            return;

        StageJoint joint = problem.Design.Joint;
        SeparatingBodies bodies = problem.Bodies;
        double all = bodies.MassAhead.Kilograms + bodies.MassBehind.Kilograms, mass = (joint.MovingMass ?? bodies.MassBehind).Kilograms,
            reduced = JointToSi.ReducedMass(joint, bodies), pressed = reduced * bodies.ClosingAcceleration.MetersPerSecondSquared;
        double borne = force * (all - mass) / all, held = joint.Coupler.BreakawayForce.Newtons + pressed;
        if (joint.Tape is { } tape)
        {
            if (borne > tape.Strength.Newtons + held)
                Warn(findings, "Joint.Tape.Strength", borne, Invariant.Text($"tape and coupler hold {tape.Strength.Newtons + held:F0} N"));
            return;
        }

        double v0 = momentum / mass, stops = Math.Max(0, joint.Coupler.SlidingForce.Newtons + pressed);
        double slip = 0.5 * reduced * v0 * v0 / stops, engagement = joint.Coupler.Engagement.Meters;
        if (borne > held && slip > engagement)
            Warn(findings, "Joint.Coupler.Engagement", borne, double.IsFinite(slip)
                ? Invariant.Text($"the joint slides by some {slip * 1e3:G2} mm until friction stops it; it engages by "
                    + $"{engagement * 1e3:G3} mm")
                : "nothing stops the joint");
    }

    private static void Warn(ImmutableArray<ModelFinding>.Builder findings, string path, double borne, string why) =>
        GapChecks.Add(findings, FindingSeverity.Warning, "GAP041", path, $"The recoil of the breaking web pulls at the joint with "
            + $"{borne:F0} N for a fraction of a millisecond, and {why}: it may open at once. The models leave the recoil out.");
}
