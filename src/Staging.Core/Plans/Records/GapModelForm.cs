using Staging.Core.Gaps;
using Staging.Core.Plans.Forms;
using UnitsNet;

namespace Staging.Core.Plans.Records;

/// <summary>How the gas in a gap is modelled.</summary>
internal static class GapModelForm
{
    private static readonly GapModel.Resolved Usual = new();

    public static readonly UnionForm<GapModel> Form = new("gapModel", "How the gas in a gap is modelled.",
    [
        new UnionCase<GapModel, GapModel.Displacement>("displacement", new("displacement", "Two zones: products push the air ahead of a front without mixing.", _ => _ => new GapModel.Displacement())),
        new UnionCase<GapModel, GapModel.Stirred>("stirred", new("stirred", "One zone up to the last vent, in which products and air mix at once.", _ => _ => new GapModel.Stirred())),
        new UnionCase<GapModel, GapModel.Resolved>("resolved", new("resolved", "Compressible flow along the tube; about a hundred times the work, with the number of cells squared.", f =>
        {
            var cells = f.Optional("cells", CountForm.Whole, x => x.Cells, Usual.Cells, "Number of cells along the tube; 400 when left out.");
            var courant = f.Optional("courantNumber", NumberForm.Ratio, x => x.CourantNumber, Usual.CourantNumber, "Share of a cell that the fastest wave crosses in a step; 0.8 when left out.");
            var times = f.Optional("profileTimes", new ListForm<Duration>(Quantities.Duration), x => x.ProfileTimes, [], "Times since burn-through at which the gas along the tube is kept; none when left out.");
            return v => new GapModel.Resolved { Cells = cells[v], CourantNumber = courant[v], ProfileTimes = times[v] };
        })),
    ]);
}
