using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>Plans whose stages are lit through gaps.</summary>
internal static class PlanDraws
{
    public static StagingPlan Plan(Draws d) => new()
    {
        Name = "drawn plan",
        Flight = FlightDraws.Plan(d, 2, k => d.Choice($"stage{k}.by-gap", 4) == 1
            ? null
            : new StageIgnition.ByGap { Gap = Gap(d, $"gap{k}.") }),
        SiteSize = Length.FromMeters(d.Number("site.size", new(300, 60, 500, 1, 100_000))),
    };

    /// <summary>What is to be drilled, under a prefix of names.</summary>
    public static VentLayout Layout(Draws d, string at) => new()
    {
        HoleCount = d.Count(at + "layout.holes", new(4, 1, 8, 1, 100)),
        WallThickness = Length.FromMeters(d.Number(at + "layout.wall", new(5e-4, 3e-4, 2e-3, 1e-5, 0.05))),
        Land = Length.FromMeters(d.Number(at + "layout.land", new(1e-3, 0, 5e-3, 0, 1))),
        Drills = (DrillSeries)d.Choice(at + "layout.drills", Enum.GetValues<DrillSeries>().Length),
    };

    private static GapIgnition Gap(Draws d, string at) => new()
    {
        Design = GapDraws.Design(d, at),
        Layout = d.Choice(at + "no-layout", 4) == 1 ? null : Layout(d, at),
        HolePressureCoefficient = d.Number(at + "coefficient", new(0, -0.4, 0.3, -1.5, 1)),
        Model = d.Choice(at + "stirred", 5) == 1 ? new GapModel.WellStirred() : new GapModel.TwoZone(),
    };
}
