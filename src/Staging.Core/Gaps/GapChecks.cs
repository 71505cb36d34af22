using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Rules across the fields of a gap problem.</summary>
internal static class GapChecks
{
    public static ImmutableArray<ModelFinding> Of(GapProblem problem)
    {
        GapDesign design = problem.Design;
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        double length = design.Tube.Length.Meters, bore = design.Tube.Bore.Meters;
        for (int i = 0; i < design.Vents.Length; i++)
            CheckVent(findings, design, i, length, bore);
        if (design.Vents.IsEmpty)
            Add(findings, FindingSeverity.Warning, "GAP003", "Vents", $"The gap has no vent: the air ahead of the front has nowhere to go.");

        JointChecks.Add(findings, design.Joint, problem.Bodies);
        double chamber = design.Source.ChamberPressure.Pascals, outside = problem.Surroundings.Pressure.Pascals;
        if (chamber <= outside)
            Add(findings, FindingSeverity.Error, "GAP005", "Source.ChamberPressure", $"The chamber pressure {chamber:G5} Pa does not exceed the outside pressure {outside:G5} Pa; no gas would come out.");
        double ignition = design.Grain.IgnitionTemperature.Kelvins;
        if (ignition is < 723 or > 823)
            Add(findings, FindingSeverity.Note, "GAP007", "Grain.IgnitionTemperature", $"{ignition:F0} K lies outside 723 to 823 K, the range read from hot-bath data for heating within milliseconds.");
        if (design.Source.OpeningDiameter > design.Tube.Bore)
            Add(findings, FindingSeverity.Note, "GAP008", "Source.OpeningDiameter", $"The opening {design.Source.OpeningDiameter.Millimeters:G4} mm is wider than the bore {bore * 1e3:G4} mm.");
        return findings.ToImmutable();
    }

    private static void CheckVent(ImmutableArray<ModelFinding>.Builder findings, GapDesign design, int i, double length, double bore)
    {
        Vent vent = design.Vents[i];
        double station = vent.Station.Meters, diameter = vent.Holes.Diameter.Meters;
        if (station <= 0 || station > length)
            Add(findings, FindingSeverity.Error, "GAP001", $"Vents[{i}].Station", $"{station * 1e3:G4} mm lies outside the tube; it must be above 0 and at most {length * 1e3:G4} mm.");
        else if (station + diameter / 2 > length * (1 + 1e-9))
            Add(findings, FindingSeverity.Error, "GAP010", $"Vents[{i}].Station", $"Holes of {diameter * 1e3:G4} mm at {station * 1e3:G4} mm reach past the nozzle plane; the station may be at most {(length - diameter / 2) * 1e3:G4} mm.");
        if (vent.Holes.Count * diameter > Math.PI * bore)
            Add(findings, FindingSeverity.Warning, "GAP002", $"Vents[{i}].Holes", $"{vent.Holes.Count} holes of {diameter * 1e3:G4} mm do not fit side by side round a bore of {bore * 1e3:G4} mm; most of the gas leaves before it has passed them, as at an open side.");
        ValidityRange range = design.DischargeLaw.Validity;
        double slenderness = vent.Holes.WallThickness.Meters / diameter;
        if (slenderness < range.LeastThicknessToDiameter || slenderness > range.MostThicknessToDiameter)
            Add(findings, FindingSeverity.Warning, "GAP009", $"Vents[{i}].Holes.WallThickness", $"Wall over diameter is {slenderness:G3}; the discharge law is vouched for from {range.LeastThicknessToDiameter:G3} to {range.MostThicknessToDiameter:G3}.");
    }

    private static void Add(
        ImmutableArray<ModelFinding>.Builder findings, FindingSeverity severity, string code, string path, FormattableString message) =>
        findings.Add(new ModelFinding(severity, code, path, message.ToString(CultureInfo.InvariantCulture)));
}
