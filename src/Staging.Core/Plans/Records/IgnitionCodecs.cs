using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>What lights a stage.</summary>
internal static class IgnitionCodecs
{
    public static readonly RecordCodec<ElectronicsGuards> Guards = new("guards",
        "Conditions asked when the timer runs out; what is left out is not asked.", f =>
    {
        var minSpeed = f.Optional("minSpeed", Quantities.Speed, x => x.MinSpeed, "Least speed along the flight direction.");
        var minHeight = f.Optional("minHeight", Quantities.Length, x => x.MinHeight, "Least height above the site.");
        var maxHeight = f.Optional("maxHeight", Quantities.Length, x => x.MaxHeight, "Greatest height above the site.");
        var earliest = f.Optional("earliest", Quantities.Duration, x => x.Earliest,
            "Earliest time from lift-off; not met before lift-off.");
        var latest = f.Optional("latest", Quantities.Duration, x => x.Latest, "Latest time from lift-off; not met before lift-off.");
        var maxTilt = f.Optional("maxTilt", Quantities.Angle, x => x.MaxTilt, "Greatest tilt from vertical, by a gravity turn "
            + "from the guide's elevation; on a straight-up guide it refuses only past apogee.");
        return v => new ElectronicsGuards
        {
            MinSpeed = minSpeed[v],
            MinHeight = minHeight[v],
            MaxHeight = maxHeight[v],
            Earliest = earliest[v],
            Latest = latest[v],
            MaxTilt = maxTilt[v],
        };
    });

    public static readonly UnionCodec<StageIgnition> Ignition = new("ignition", "What lights the motors of a stage.",
    [
        new UnionCase<StageIgnition, StageIgnition.AtLaunch>("atLaunch",
            new("atLaunch", "The launch igniter; for the lowest stage, and only for it.", f => v => new StageIgnition.AtLaunch())),
        new UnionCase<StageIgnition, StageIgnition.ByContact>("byContact", new("byContact", "Motor on motor.", f =>
        {
            var lag = f.Required("lag", Quantities.Duration, x => x.Lag, "Time from burn-through to ignition and separation.");
            return v => new StageIgnition.ByContact { Lag = lag[v] };
        })),
        new UnionCase<StageIgnition, StageIgnition.ByGap>("byGap", new("byGap", "Burn-through gas crosses a gap.", f =>
        {
            var gap = f.Required("gap", GapCodecs.Gap, x => OwnGap(x), "The gap.");
            return v => new StageIgnition.ByGap { Gap = gap[v] };
        })),
        new UnionCase<StageIgnition, StageIgnition.ByElectronics>("byElectronics",
            new("byElectronics", "A timer fires an igniter, if the guards agree.", f =>
        {
            var from = f.Required("from", EnumCodec<TimerStart>.Words, x => x.From, "Event that starts the timer.");
            var timer = f.Required("timer", Quantities.Duration, x => x.Timer, "Time from that event until the igniter fires.");
            var lag = f.Required("igniterLag", Quantities.Duration, x => x.IgniterLag,
                "Time from the igniter's current to the start of the thrust history.");
            var guards = f.Required("guards", Guards, x => x.Guards, "Conditions asked when the timer runs out; {} asks none.");
            var parting = f.Optional("separationAfterBurnout", Quantities.Duration, x => x.SeparationAfterBurnout,
                "Time from burnout of the stage below until the stages part, lit or not; left out, ignition pushes them apart.");
            return v => new StageIgnition.ByElectronics { From = from[v], Timer = timer[v], IgniterLag = lag[v], Guards = guards[v],
                SeparationAfterBurnout = parting[v] };
        })),
    ]);

    /// <summary>The gap of an ignition, which a plan can hold only where it is of this library.</summary>
    private static GapIgnition OwnGap(StageIgnition.ByGap ignition) => ignition.Gap as GapIgnition
        ?? throw new ArgumentException($"A gap of type {ignition.Gap.GetType().Name} cannot be written; only {nameof(GapIgnition)} can.",
            nameof(ignition));
}
