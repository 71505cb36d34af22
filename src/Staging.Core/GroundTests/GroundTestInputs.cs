using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>What is not known of the gaps of a series, as its tests share it.</summary>
public static class GroundTestInputs
{
    /// <summary>
    /// The breakaway force of every joint over the force that its record states: how a builder's joints differ from
    /// what is written of them. The sliding force keeps its ratio to it.
    /// </summary>
    /// <param name="spread">How it scatters [-].</param>
    /// <returns>The input <c>joint.over-stated</c>.</returns>
    public static StudyInput<GapProblem> BreakawayOverStated(Distribution spread) => new("joint.over-stated", "-", spread,
        (p, v) => p.With(breakaway: Force.FromNewtons(
            Math.Min(v * p.Design.Joint.Coupler.BreakawayForce.Newtons, FrictionJoint.MaxForce_N))));

    /// <summary>
    /// The inputs of <see cref="GapInputs.JudgedFor"/>, with one change: tests have joints of several forces, so that
    /// not a force is unknown but the factor of <see cref="BreakawayOverStated"/>, 0.5 to 3 about 1, as 10 to 60 N are
    /// about 20 N.
    /// </summary>
    /// <param name="design">The gap.</param>
    /// <returns>The inputs.</returns>
    public static ImmutableArray<StudyInput<GapProblem>> JudgedFor(GapDesign design) =>
        [.. GapInputs.JudgedFor(design).Select(i => i.Path == GapInputs.BreakawayPath
            ? BreakawayOverStated(Distribution.Triangular(0.5, 1, 3))
            : i)];
}
