using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Rules across the fields of a gap problem.</summary>
internal static class GapChecks
{
    public static ImmutableArray<ModelFinding> Of(GapProblem problem)
    {
        GapDesign design = problem.Design;
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        double length = design.Tube.Length.Meters;
        CheckSteps(findings, design.Tube, length);
        for (int i = 0; i < design.Vents.Length; i++)
            CheckVent(findings, design, i, length);
        DrillingChecks.Add(findings, design);
        CheckJet(findings, design);
        if (design.Vents.IsEmpty && length > GapProblem.Shortest_m)
            Add(findings, FindingSeverity.Warning, "GAP003", "Vents",
                $"The gap has no vent: the air ahead of the front has nowhere to go.");
        JacketChecks.Add(findings, design);
        WallChecks.Add(findings, design);
        SpaceChecks.Add(findings, design);
        OutletPressure.AddFindings(findings, problem);

        JointChecks.Add(findings, design, problem.Bodies);
        SourceChecks.Add(findings, problem);
        double lasts = design.Source.KnownDuration, watched = problem.Horizon.Seconds;
        if (watched < lasts)
            Add(findings, FindingSeverity.Warning, "GAP011", "Horizon",
                $"The gap is watched for {watched * 1e3:G4} ms, its source lasts {lasts * 1e3:G4} ms: what happens later is not seen.");
        double ignition = design.Grain.IgnitionTemperature.Kelvins;
        if (ignition is < JudgedRanges.MinIgnition or > JudgedRanges.MaxIgnition)
            Add(findings, FindingSeverity.Note, "GAP007", "Grain.IgnitionTemperature",
                $"{ignition:F0} K lies outside {JudgedRanges.MinIgnition} to {JudgedRanges.MaxIgnition} K, the range of one-step kinetics "
                + $"fitted to hot-bath data for heating within milliseconds.");
        if (findings.All(f => f.Severity != FindingSeverity.Error))
            RecoilChecks.Add(findings, problem);
        return findings.ToImmutable();
    }

    private static void CheckSteps(ImmutableArray<ModelFinding>.Builder findings, GuideTube tube, double length)
    {
        double below = 0;
        for (int i = 0; i < tube.Steps.Length; i++)
        {
            double station = tube.Steps[i].Station.Meters;
            if (!(station > below && station < length))
                Add(findings, FindingSeverity.Error, "GAP020", $"Tube.Steps[{i}].Station", $"{station * 1e3:G4} mm is not above "
                    + $"{below * 1e3:G4} mm and below {length * 1e3:G4} mm; steps must rise and lie within the tube.");
            below = Math.Max(below, station);
        }
    }

    private static void CheckVent(ImmutableArray<ModelFinding>.Builder findings, GapDesign design, int i, double length)
    {
        Vent vent = design.Vents[i];
        double station = vent.Station.Meters, diameter = vent.Holes.Diameter.Meters, half = 0.5 * (diameter + vent.Spread);
        if (station <= 0 || station > length)
            Add(findings, FindingSeverity.Error, "GAP001", $"Vents[{i}].Station",
                $"{station * 1e3:G4} mm lies outside the tube; it must be above 0 and at most {length * 1e3:G4} mm.");
        else if (station + half > length * (1 + 1e-9))
            Add(findings, FindingSeverity.Error, "GAP010", $"Vents[{i}].Station", $"Holes of {diameter * 1e3:G4} mm at "
                + $"{station * 1e3:G4} mm reach past the nozzle plane; the station may be at most {(length - half) * 1e3:G4} mm.");
        else if (vent.AxialLength is null && station - half < -1e-9 * length)
            Add(findings, FindingSeverity.Error, "GAP021", $"Vents[{i}].Station", $"Holes of {diameter * 1e3:G4} mm at "
                + $"{station * 1e3:G4} mm begin before the tube; the station must be at least {half * 1e3:G4} mm.");
        if (vent.AxialLength is { } axial && (axial.Meters < diameter || station - half < 0))
            Add(findings, FindingSeverity.Error, "GAP021", $"Vents[{i}].AxialLength",
                $"{axial.Meters * 1e3:G4} mm round {station * 1e3:G4} mm does not hold: an opening is at least as long as its holes, "
                    + $"{diameter * 1e3:G4} mm, and begins within the tube.");
        ValidityRange range = design.DischargeLaw.Validity;
        double slenderness = vent.Holes.WallThickness.Meters / diameter;
        if (slenderness <= design.DischargeLaw.ThicknessToDiameterLimit
            && (slenderness < range.MinThicknessToDiameter || slenderness > range.MaxThicknessToDiameter))
            Add(findings, FindingSeverity.Warning, "GAP009", $"Vents[{i}].Holes.WallThickness",
                $"Wall over diameter is {slenderness:G3}; the discharge law is vouched for from "
                    + $"{range.MinThicknessToDiameter:G3} to {range.MaxThicknessToDiameter:G3}.");
    }

    private static void CheckJet(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        double free = FreeJet.FreeBores(design), kept = FreeJet.Share<Real>(free, design.MixingAndHeat.FreeJetCoreInBores, FreeJet.Hot);
        if (kept < 1)
            Add(findings, FindingSeverity.Warning, "GAP022", "Vents",
                $"The openings together are as large as {free:F1} bores of open tube: the stream crosses them as a free jet and keeps "
                    + $"about {kept:P0} of its excess temperature. A guide tube across, with small holes, cures that.");
    }

    internal static void Add(
        ImmutableArray<ModelFinding>.Builder findings, FindingSeverity severity, string code, string path, Invariant.Handler message) =>
        findings.Add(new ModelFinding(severity, code, path, message.ToStringAndClear()));
}
