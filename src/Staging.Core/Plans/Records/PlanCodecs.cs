using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;
using UnitsNet;

namespace Staging.Core.Plans.Records;

/// <summary>The whole plan.</summary>
internal static class PlanCodecs
{
    public static readonly RecordCodec<FlightPlan> Flight = new("flight", "A stack on its guide: what flies, from where.", f =>
    {
        var stages = f.Required("stages", new ListCodec<Stage>(StageCodecs.Stage), x => x.Stages, "The stages, lowest first.");
        var payload = f.Optional("payload", Quantities.Mass, x => x.Payload, default(Mass),
            "Mass carried by the uppermost stage and not counted in it; none when left out.");
        var guide = f.Required("guide", SiteCodecs.Guide, x => x.Guide, "The rod or rail.");
        var site = f.Required("site", SiteCodecs.Site, x => x.Site, "Air, elevation, wind and gravity.");
        return v => new FlightPlan { Stages = stages[v], Payload = payload[v], Guide = guide[v], Site = site[v] };
    });

    public static readonly RecordCodec<StagingPlan> Plan = new("stagingPlan",
        "One staging plan: the stack with its gaps, and the field it flies from.", f =>
    {
        f.Optional<string?>("$schema", TextCodec.NotBlank!, _ => null, null, "Where the schema is kept, for editors; it is not read.");
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "What the plan is called.");
        var size = f.Required("siteSize", Quantities.Length, x => x.SiteSize,
            "Smallest dimension of the launch site: its diameter, or its shortest side.");
        var flight = f.Required("flight", Flight, x => x.Flight, "The stack, its guide and its site.");
        return v => new StagingPlan { Name = name[v], SiteSize = size[v], Flight = flight[v] };
    });
}
