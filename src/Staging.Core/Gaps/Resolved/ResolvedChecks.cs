using System.Collections.Immutable;

namespace Staging.Core.Gaps.Resolved;

/// <summary>What the resolved model does not have, and so refuses.</summary>
internal static class ResolvedChecks
{
    public static ImmutableArray<ModelFinding> Of(GapProblem problem)
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        GapDesign design = problem.Design;
        if (!design.Jackets.IsEmpty)
            Refuse("GAP050", "Jackets", $"The resolved model has no jackets, and this gap has {design.Jackets.Length}; solve it with a lumped model.");
        if (design.Joint is not StageJoint.FrictionFit)
            Refuse("GAP051", "Joint", $"The resolved model has joints held by friction alone, neither tape nor a free motor tube; solve it with a lumped model.");
        if (design.Source is GapSource.Cluster cluster)
            Refuse("GAP052", "Source", $"The resolved model has one motor or a table as its source, and this cluster has {cluster.Motors.Length} motors; solve it with a lumped model.");
        if (problem.AfterOpening.Seconds > 0)
            Refuse("GAP053", "AfterOpening", $"The resolved model ends when the joint opens and cannot follow the gap for another {problem.AfterOpening.Seconds * 1e3:G4} ms; it must be 0.");
        for (int i = 0; i < design.Vents.Length; i++)
        {
            Vent vent = design.Vents[i];
            double free = FreeJet.FreeBores(vent.Holes.TotalArea.SquareMeters, design.Tube.Profile.BoreBelow(vent.Station.Meters));
            if (free > GapLowering.ShortestFreeLength * design.Closures.FreeJetCoreInBores)
                Refuse("GAP054", $"Vents[{i}].Holes", $"The opening is as large as {free:F1} bores of open tube and the stream crosses it as a free jet, which the resolved model does not have; solve it with a lumped model.");
        }

        return findings.ToImmutable();

        void Refuse(string code, string path, FormattableString message) => GapChecks.Add(findings, FindingSeverity.Error, code, path, message);
    }
}
