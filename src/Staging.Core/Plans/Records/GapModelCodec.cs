using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;
using UnitsNet;

namespace Staging.Core.Plans.Records;

/// <summary>How the gas in a gap is modelled.</summary>
internal static class GapModelCodec
{
    private static readonly GapModel.OneDimensional Usual = new();

    public static readonly UnionCodec<GapModel> Codec = new("gapModel", "How the gas in a gap is modelled.",
    [
        new UnionCase<GapModel, GapModel.TwoZone>("twoZone",
            new("twoZone", "Two zones: products push the air ahead of a front without mixing.", _ => _ => new GapModel.TwoZone())),
        new UnionCase<GapModel, GapModel.WellStirred>("wellStirred", new("wellStirred",
            "One zone up to the last vent, in which products and air mix at once.", _ => _ => new GapModel.WellStirred())),
        new UnionCase<GapModel, GapModel.OneDimensional>("oneDimensional", new("oneDimensional",
            "Compressible flow along the tube; about a hundred times the work, with the number of cells squared.", f =>
        {
            var cells = f.Optional("cells", CountCodec.Whole, x => x.Cells, Usual.Cells,
                "Number of cells along the tube; 400 when left out.");
            var perBore = f.Optional("cellsPerBore", CountCodec.Whole, x => x.CellsPerBore, Usual.CellsPerBore,
                "Most cells over a length of one bore; fewer yet where the tube is shorter than its bore; 64 when left out.");
            var courant = f.Optional("courantNumber", NumberCodec.Ratio, x => x.CourantNumber, Usual.CourantNumber,
                "Share of a cell that the fastest wave crosses in a step; 0.8 when left out.");
            var times = f.Optional("profileTimes", new ListCodec<Duration>(Quantities.Duration), x => x.ProfileTimes, [],
                "Times since burn-through at which the gas along the tube is kept; none when left out.");
            return v => new GapModel.OneDimensional
            {
                Cells = cells[v],
                CellsPerBore = perBore[v],
                CourantNumber = courant[v],
                ProfileTimes = times[v],
            };
        })),
    ]);
}
