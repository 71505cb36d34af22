using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Motors.</summary>
internal static class MotorCodecs
{
    public static readonly UnionCodec<MotorForwardEnd> ForwardEnd = new("forwardEnd",
        "What the forward end does when the propellant is used up.",
    [
        new UnionCase<MotorForwardEnd, MotorForwardEnd.BurnsThrough>("burnsThrough",
            new("burnsThrough", "A booster motor, delay code 0: hot gas leaves forwards.", f =>
        {
            var after = f.Optional("after", Quantities.Duration, x => x.After,
                "When the last web breaks, from ignition; the end of the thrust history when left out.");
            return v => new MotorForwardEnd.BurnsThrough { After = after[v] };
        })),
        new UnionCase<MotorForwardEnd, MotorForwardEnd.Ejects>("ejects", new("ejects", "A delay, then an ejection charge.", f =>
        {
            var delay = f.Required("delay", Quantities.Duration, x => x.Delay, "Time from burnout to the ejection charge.");
            return v => new MotorForwardEnd.Ejects { Delay = delay[v] };
        })),
        new UnionCase<MotorForwardEnd, MotorForwardEnd.Plugged>("plugged",
            new("plugged", "Closed forwards.", f => v => new MotorForwardEnd.Plugged())),
    ]);

    public static readonly RecordCodec<Motor> Motor = new("motor", "A solid motor.", f =>
    {
        var name = f.Required("name", TextCodec.NotBlank, x => x.Name, "What it is called in the results.");
        var thrust = f.Required("thrust", ThrustHistoryCodec.Curve, x => x.Thrust, "Thrust against time from ignition.");
        var propellant = f.Required("propellantMass", Quantities.Mass, x => x.PropellantMass, "Propellant burnt along the thrust history.");
        var loaded = f.Required("loadedMass", Quantities.Mass, x => x.LoadedMass, "Mass ready to fly, propellant included.");
        var forwardEnd = f.Required("forwardEnd", ForwardEnd, x => x.ForwardEnd,
            "What the forward end does when the propellant is used up.");
        var diameter = f.Required("diameter", Quantities.Length, x => x.Diameter, "Outside diameter of the case.");
        var length = f.Required("length", Quantities.Length, x => x.Length, "Length of the case.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new Motor
        {
            Name = name[v],
            Thrust = thrust[v],
            PropellantMass = propellant[v],
            LoadedMass = loaded[v],
            ForwardEnd = forwardEnd[v],
            Diameter = diameter[v],
            Length = length[v],
            Provenance = provenance[v],
        };
    });
}
