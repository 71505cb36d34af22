using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Rules across the jackets of a design and the vents that lead into them.</summary>
internal static class JacketChecks
{
    /// <summary>Adds the findings.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        ImmutableArray<Jacket> jackets = design.Jackets.Items;
        for (int i = 0; i < jackets.Length; i++)
        {
            if (jackets.Take(i).Any(j => j.Name == jackets[i].Name))
                GapChecks.Add(findings, FindingSeverity.Error, "GAP023", $"Jackets[{i}].Name",
                    $"'{Excerpt.Of(jackets[i].Name)}' is the name of two jackets; names must differ.");
        }

        for (int i = 0; i < design.Vents.Length; i++)
            CheckTarget(findings, jackets, design.Vents[i].To, $"Vents[{i}].To", null);
        for (int i = 0; i < jackets.Length; i++)
        {
            for (int k = 0; k < jackets[i].Openings.Length; k++)
                CheckTarget(findings, jackets, jackets[i].Openings[k].To, $"Jackets[{i}].Openings[{k}].To", jackets[i].Name);
        }

        for (int i = 0; i < jackets.Length; i++)
        {
            CheckPlaces(findings, design.Tube, design.Vents, jackets[i], $"Jackets[{i}]");
            DrillingChecks.AddOuterWall(findings, jackets[i], $"Jackets[{i}]");
        }


        HashSet<string> vented = Vented(jackets), fed = Fed(design);
        for (int i = 0; i < jackets.Length; i++)
        {
            if (!vented.Contains(jackets[i].Name))
                GapChecks.Add(findings, FindingSeverity.Warning, "GAP025", $"Jackets[{i}].Openings",
                    $"The jacket '{Excerpt.Of(jackets[i].Name)}' has no way to the outside: it fills, and the holes into it vent "
                    + $"nothing more.");
            if (!fed.Contains(jackets[i].Name))
                GapChecks.Add(findings, FindingSeverity.Warning, "GAP026", $"Jackets[{i}]", $"No hole of the tube leads into the jacket "
                    + $"'{Excerpt.Of(jackets[i].Name)}', directly or through another: nested tubes need holes in both walls.");
        }
    }

    /// <summary>What is stated for the builder has to fit the tube: where its holes lead into the jacket.</summary>
    private static void CheckPlaces(
        ImmutableArray<ModelFinding>.Builder findings, GuideTube tube, EquatableArray<Vent> vents, Jacket jacket, string path)
    {
        double length = tube.Length.Meters;
        double[] within = [.. vents.Where(v => v.To.Jacket == jacket.Name).Select(v => tube.Profile.BoreBelow(v.Station.Meters))];
        double bore = within.Length > 0 ? within.Max() : tube.Profile.NarrowestBore;
        if (jacket.OuterBore is { } outer && outer.Meters <= bore)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP035", $"{path}.OuterBore",
                $"The outer wall of '{Excerpt.Of(jacket.Name)}' has a bore of {outer.Millimeters:G4} mm; round a guide tube of "
                + $"{bore * 1e3:G4} mm bore it must be wider.");
        for (int k = 0; k < jacket.Openings.Length; k++)
        {
            if (jacket.Openings[k].Station is { } station && station.Meters > length)
                GapChecks.Add(findings, FindingSeverity.Warning, "GAP028", $"{path}.Openings[{k}].Station",
                    $"{station.Millimeters:G4} mm lies above the upper nozzle plane, which is at {length * 1e3:G4} mm.");
        }
    }

    private static void CheckTarget(
        ImmutableArray<ModelFinding>.Builder findings, ImmutableArray<Jacket> jackets, VentTarget target, string path, string? self)
    {
        if (target.Jacket is not { } name)
            return;
        if (jackets.All(j => j.Name != name))
            GapChecks.Add(findings, FindingSeverity.Error, "GAP024", path, $"There is no jacket '{Excerpt.Of(name)}'; {Known(jackets)}.");
        else if (name == self)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP027", path,
                $"The holes lead from the jacket '{Excerpt.Of(self)}' into itself.");
    }

    private static string Known(ImmutableArray<Jacket> jackets)
    {
        const int Most = 8;
        if (jackets.IsEmpty)
            return "there is none";
        string more = jackets.Length > Most ? $" and {jackets.Length - Most} more" : "";
        return $"there are {string.Join(", ", jackets.Take(Most).Select(j => $"'{Excerpt.Of(j.Name)}'"))}{more}";
    }

    /// <summary>Names of the jackets from which there is a way outside, through others too.</summary>
    private static HashSet<string> Vented(ImmutableArray<Jacket> jackets)
    {
        HashSet<string> names = [];
        while (jackets.FirstOrDefault(j => !names.Contains(j.Name)
            && j.Openings.Any(o => o.To.Jacket is not { } name || names.Contains(name))) is { } next)
            names.Add(next.Name);
        return names;
    }

    /// <summary>Names of the jackets that gas of the tube comes into, through others too.</summary>
    private static HashSet<string> Fed(GapDesign design)
    {
        HashSet<string> names = [.. design.Vents.Select(v => v.To.Jacket).OfType<string>()];
        while (design.Jackets.Where(j => names.Contains(j.Name)).SelectMany(j => j.Openings).Select(o => o.To.Jacket)
            .FirstOrDefault(name => name is not null && !names.Contains(name)) is { } next)
            names.Add(next);

        return names;
    }
}
