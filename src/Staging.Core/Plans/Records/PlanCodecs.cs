using System.Collections.Immutable;
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
        f.Optional("planVersion", PlanVersionCodec.Codec, _ => PlanVersionCodec.Current, 0,
            "Version of this format; 1 when left out, and there is no other yet.");
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "What the plan is called.");
        var size = f.Required("siteSize", Quantities.Length, x => x.SiteSize,
            "Smallest dimension of the launch site: its diameter, or its shortest side.");
        f.Optional<OwnGaps?>(OwnGapsCodec.Key, OwnGapsCodec.Codec!, _ => null, null,
            "Gaps by names of your own, from which the gaps of the stages start; none when left out.");
        var flight = f.Required("flight", Flight, x => x.Flight, "The stack, its guide and its site.");
        return v => new StagingPlan { Name = name[v], SiteSize = size[v], Flight = flight[v] };
    });

    /// <summary>All starting sets of the library, the largest first.</summary>
    public static readonly ImmutableArray<IStartingSets> Starting =
    [
        GapCodecs.Gap.Starts!, GapCodecs.Design.Starts!, SourceCodecs.Source.Starts!, UpperGrainCodec.Codec.Starts!,
        JointCodecs.Joint.Starts!, JointCodecs.Coupler.Starts!, JointCodecs.Tape.Starts!, GapCodecs.Closures.Starts!,
        GasCodecs.Products.Starts!, SourceCodecs.BurnRate.Starts!, DischargeCodecs.Law.Starts!,
    ];
}
