using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Plans.Codecs;
using UnitsNet;

namespace Staging.Core.Plans.Records;

/// <summary>What holds the stages together.</summary>
internal static class JointCodecs
{
    public static readonly RecordCodec<FrictionJoint> Coupler = new("frictionJoint", "What slides, and the friction that holds it.", f =>
    {
        var diameter = f.Required("pressureDiameter", Quantities.Length, x => x.PressureDiameter,
            "Diameter over which the gap pressure pushes the stages apart.");
        var breakaway = f.Required("breakawayForce", Quantities.Force, x => x.BreakawayForce, "Force that starts the joint sliding.");
        var sliding = f.Required("slidingForce", Quantities.Force, x => x.SlidingForce,
            "Friction while sliding at full engagement; at most the breakaway force.");
        var engagement = f.Required("engagement", Quantities.Length, x => x.Engagement, "Travel after which the joint opens.");
        var leak = f.Optional("leakArea", Quantities.Area, x => x.LeakArea, Area.Zero,
            "Clearance past coupler and motor through which the gap leaks from the start; none when left out.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new FrictionJoint
        {
            PressureDiameter = diameter[v],
            BreakawayForce = breakaway[v],
            SlidingForce = sliding[v],
            Engagement = engagement[v],
            LeakArea = leak[v],
            Provenance = provenance[v]
        };
    })
    {
        StartsFrom = ("a friction joint",
            [new("bore18mm", "The invented coupler of the gap of that name; judged.", () => StartingGaps.Bore18mm.Design.Joint.Coupler)]),
    };

    public static readonly RecordCodec<JointTape> Tape = new("jointTape",
        "Tape over the seam of a joint, heated through its thickness by the gas.", f =>
    {
        var strength = f.Required("strength", Quantities.Force, x => x.Strength, "Axial force that tears it cold, over the whole seam.");
        var thickness = f.Required("thickness", Quantities.Length, x => x.Thickness, "Thickness, adhesive included.");
        var conductivity = f.Required("conductivity", Quantities.Conductivity, x => x.Conductivity, "Thermal conductivity.");
        var density = f.Required("density", Quantities.Density, x => x.Density, "Density.");
        var heatCapacity = f.Required("heatCapacity", Quantities.SpecificHeat, x => x.HeatCapacity, "Heat capacity.");
        var softening = f.Required("softeningTemperature", Quantities.Temperature, x => x.SofteningTemperature,
            "Temperature at which it has no strength left: a film melts, paper chars.");
        var contact = f.Required("gasContact", Quantities.HeatTransfer, x => x.GasContact,
            "Heat transfer from the gas at the seam, radiation included.");
        var provenance = ProvenanceCodec.In(f, x => x.Provenance);
        return v => new JointTape
        {
            Strength = strength[v],
            Thickness = thickness[v],
            Conductivity = conductivity[v],
            Density = density[v],
            HeatCapacity = heatCapacity[v],
            SofteningTemperature = softening[v],
            GasContact = contact[v],
            Provenance = provenance[v],
        };
    })
    {
        StartsFrom = ("a tape",
        [
            new("thinPlasticFilm", "A thin plastic film round a seam of 18 mm; judged.", () => JointTape.ThinPlasticFilm),
            new("paperTape", "A paper tape round a seam of 18 mm; judged.", () => JointTape.PaperTape),
        ]),
    };

    public static readonly UnionCodec<StageJoint> Joint = new("joint", "What holds the stages together.",
    [
        new UnionCase<StageJoint, StageJoint>("frictionFit", new("frictionFit", "A coupler held by friction alone.", f =>
        {
            var coupler = f.Required("coupler", Coupler, x => x.Coupler, "What slides.");
            return v => StageJoint.FromFrictionJoint(coupler[v]);
        }), x => x is { Tape: null, MovingMass: null }),
        new UnionCase<StageJoint, StageJoint>("taped", new("taped", "A coupler, or motors in contact, with tape over the seam.", f =>
        {
            var coupler = f.Required("coupler", Coupler, x => x.Coupler, "What slides; its friction holds beside the tape.");
            var tape = f.Required("tape", Tape, x => x.Tape!, "The tape.");
            return v => StageJoint.Taped(coupler[v], tape[v]);
        }), x => x.Tape is not null),
        new UnionCase<StageJoint, StageJoint>("freeMotorTube",
            new("freeMotorTube", "A motor tube that slides rearwards out of its stage and releases a streamer.", f =>
        {
            var coupler = f.Required("coupler", Coupler, x => x.Coupler, "What slides: the motor tube in its rings.");
            var mass = f.Required("movingMass", Quantities.Mass, x => (Mass)x.MovingMass!, "Mass of what slides, motor tube and motor.");
            var rear = f.Optional<VentHoles?>("rearPassages", DischargeCodecs.Holes!, x => x.RearPassages, null,
                "Holes through the centring rings, by which the gap vents rearwards; none when left out.");
            var wake = f.Optional("rearPressureCoefficient", NumberCodec.Ratio, x => x.RearPressureCoefficient, 0, "Pressure behind the "
                + "rear passages above that of the surroundings of the gap, over the dynamic pressure; 0 when left out.");
            return v => StageJoint.FreeMotorTube(coupler[v], mass[v], rear[v], wake[v]);
        }), x => x.MovingMass is not null),
    ])
    {
        StartsFrom = ("a joint",
            [new("bore18mm", "The invented friction fit of the gap of that name; judged.", () => StartingGaps.Bore18mm.Design.Joint)]),
    };
}
