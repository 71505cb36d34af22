using Staging.Core.Flight;
using Staging.Core.Reviews;
using UnitsNet;

namespace Staging.Core.Plans.Forms;

/// <summary>The whole plan.</summary>
internal static class PlanForms
{
    private static readonly RecordForm<FlightPlan> Flight = new("flight plan", k =>
    {
        var stages = k.Needs("stages", new ListForm<Stage>(StageForms.Stage), x => x.Stages);
        var payload = k.Or("payload", Quantities.Mass, x => x.Payload, Mass.Zero);
        var guide = k.Needs("guide", SiteForms.Guide, x => x.Guide);
        var site = k.Needs("site", SiteForms.Site, x => x.Site);
        return v => new FlightPlan { Stages = stages(v), Payload = payload(v), Guide = guide(v), Site = site(v) };
    });

    /// <summary>A plan with all its parts.</summary>
    public static RecordForm<StagingPlan> Plan { get; } = new("staging plan", k =>
    {
        var name = k.Needs("name", TextForm.NotBlank, x => x.Name);
        var siteSize = k.Needs("siteSize", Quantities.Length, x => x.SiteSize);
        var flight = k.Needs("flight", Flight, x => x.Flight);
        return v => new StagingPlan { Name = name(v), Flight = flight(v), SiteSize = siteSize(v) };
    });
}
