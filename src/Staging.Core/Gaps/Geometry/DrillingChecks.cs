using System.Collections.Immutable;
using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Whether the holes of a tube can be drilled into it at all.</summary>
/// <remarks>
/// Pure geometry. Round holes of one ring take their diameters of the circumference of the bore, however they are
/// turned; over a length no opening is larger than the wall itself. A hole wider than the bore has no wall to stand in.
/// A wall thicker than the bore belongs to a block three bores wide, not to a tube: a judgement, and a generous one.
/// </remarks>
internal static class DrillingChecks
{
    /// <summary>Share of the wall that round holes take when they touch [-]: beyond, a side is cut open.</summary>
    private const double FullRing = Math.PI / 4;

    /// <summary>For sums that are as large as their limit up to rounding [-].</summary>
    private const double Rounding = 1 + 1e-9;

    /// <summary>Adds the findings.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        for (int i = 0; i < design.Vents.Length; i++)
        {
            if (!AddVent(findings, design, i))
                continue;
            for (int k = 0; k < i; k++)
                AddOverlap(findings, design, k, i);
        }
    }

    /// <summary>
    /// Checks the outer wall of a jacket whose bore is stated. Holes whose place is not stated may lead rearwards, and
    /// are no ring round it.
    /// </summary>
    public static void AddOuterWall(ImmutableArray<ModelFinding>.Builder findings, Jacket jacket, string path)
    {
        if (jacket.OuterBore is not { Meters: var bore })
            return;
        for (int k = 0; k < jacket.Openings.Length; k++)
        {
            (VentHoles holes, string at) = (jacket.Openings[k].Holes, $"{path}.Openings[{k}].Holes");
            bool ring = jacket.Openings[k].Station is not null;
            if (!AddSizes(findings, holes, bore, at, ring) || !ring)
                continue;
            double diameter = holes.Diameter.Meters, round = Math.PI * bore;
            if (holes.Count * diameter > round * Rounding)
                Error(findings, "GAP002", $"{at}.Count",
                    $"{holes.Count} holes of {diameter * 1e3:G4} mm do not fit side by side round a bore of {bore * 1e3:G4} mm; there may "
                        + $"be at most {Math.Floor(round / diameter):F0}.");
        }
    }

    /// <summary>Whether each hole is no wider than the bore, and the wall round it that of a tube.</summary>
    /// <returns>False where a hole is too wide, so that their number says nothing.</returns>
    private static bool AddSizes(
        ImmutableArray<ModelFinding>.Builder findings, VentHoles holes, double bore, string path, bool throughWall)
    {
        double diameter = holes.Diameter.Meters, wall = holes.WallThickness.Meters;
        if (throughWall && wall > bore)
            Error(findings, "GAP014", $"{path}.WallThickness",
                $"A wall of {wall * 1e3:G4} mm round a bore of {bore * 1e3:G4} mm is no tube; it may be at most as thick as the bore.");
        if (diameter <= bore)
            return true;
        Error(findings, "GAP002", $"{path}.Diameter",
            $"A hole of {diameter * 1e3:G4} mm is wider than the bore of {bore * 1e3:G4} mm; it may be at most as wide.");
        return false;
    }

    /// <summary>
    /// Widest holes of an opening that fit the outer wall of a jacket [m]; no limit where its bore is not stated.
    /// </summary>
    public static double WidestRound(Jacket jacket, JacketOpening opening) => jacket.OuterBore is not { Meters: var bore }
        ? double.PositiveInfinity
        : opening.Station is null ? bore : Math.Min(bore, Math.PI * bore / opening.Holes.Count);

    /// <summary>Checks one vent; false where it cannot be drilled alone.</summary>
    private static bool AddVent(ImmutableArray<ModelFinding>.Builder findings, GapDesign design, int i)
    {
        Vent vent = design.Vents[i];
        double diameter = vent.Holes.Diameter.Meters, bore = Bore(design, vent);
        int before = findings.Count;
        if (!AddSizes(findings, vent.Holes, bore, $"Vents[{i}].Holes", throughWall: true))
            return false;
        if (Taken(vent) > Offered(vent, bore) * Rounding)
            Error(findings, "GAP002", $"Vents[{i}].Holes.Count",
                $"{vent.Holes.Count} holes of {diameter * 1e3:G4} mm do not fit {Where(vent)} a bore of {bore * 1e3:G4} mm; there may be "
                    + $"at most {MostHoles(vent, bore)}{(vent.Spread > 0 ? "" : ", or more over a stated axial length")}.");
        else if (vent.Spread > 0 && Taken(vent) > FullRing * Offered(vent, bore) * Rounding)
            GapChecks.Add(findings, FindingSeverity.Warning, "GAP002", $"Vents[{i}].Holes",
                $"{vent.Holes.Count} holes of {diameter * 1e3:G4} mm are an open side of {Length(vent) * 1e3:G4} mm of a bore of "
                    + $"{bore * 1e3:G4} mm: most of the gas leaves before it has passed them.");
        return findings.Count == before;
    }

    /// <summary>Two vents that lie at one station: impossible, or a matter of turning one against the other.</summary>
    private static void AddOverlap(ImmutableArray<ModelFinding>.Builder findings, GapDesign design, int one, int other)
    {
        Vent a = design.Vents[one], b = design.Vents[other];
        double apart = Math.Abs(a.Station.Meters - b.Station.Meters), half = 0.5 * (Length(a) + Length(b));
        if (apart * Rounding >= half)
            return;
        double bore = Math.Min(Bore(design, a), Bore(design, b));
        double share = Taken(a) / Offered(a, bore) + Taken(b) / Offered(b, bore);
        if (share > Rounding)
            Error(findings, "GAP013", $"Vents[{other}].Station",
                $"The holes lie over those of Vents[{one}]: {apart * 1e3:G4} mm from centre to centre, and round the bore there is room "
                    + $"for {1 / share:P0} of both. The stations must be {half * 1e3:G4} mm apart.");
        else
            GapChecks.Add(findings, FindingSeverity.Warning, "GAP013", $"Vents[{other}].Station", $"The holes lie at the station of those "
                + $"of Vents[{one}], {apart * 1e3:G4} mm from centre to centre: they fit where they are turned against each other. "
                + $"Stations {half * 1e3:G4} mm apart need no turning.");
    }

    private static string Where(Vent vent) =>
        vent.Spread > 0 ? Invariant.Text($"over {Length(vent) * 1e3:G4} mm of") : "side by side round";

    private static double Bore(GapDesign design, Vent vent) => design.Tube.Profile.BoreBelow(vent.Station.Meters);

    private static double Length(Vent vent) => vent.Holes.Diameter.Meters + vent.Spread;

    /// <summary>What the holes take: in one ring of the circumference [m], over a length of the wall [m2].</summary>
    private static double Taken(Vent vent) =>
        vent.Spread > 0 ? vent.Holes.TotalArea.SquareMeters : vent.Holes.Count * vent.Holes.Diameter.Meters;

    /// <summary>What there is of it.</summary>
    private static double Offered(Vent vent, double bore) => Math.PI * bore * (vent.Spread > 0 ? Length(vent) : 1);

    private static int MostHoles(Vent vent, double bore) => (int)(vent.Holes.Count * Rounding * Offered(vent, bore) / Taken(vent));

    private static void Error(ImmutableArray<ModelFinding>.Builder findings, string code, string path, Invariant.Handler text) =>
        GapChecks.Add(findings, FindingSeverity.Error, code, path, text);
}
