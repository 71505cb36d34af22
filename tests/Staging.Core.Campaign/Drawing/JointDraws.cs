using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Campaign.Drawing;

/// <summary>What holds the stages together.</summary>
internal static class JointDraws
{
    public static StageJoint Joint(Draws d, string at, double bore)
    {
        double breakaway = d.Number(at + "joint.breakaway", new(20, 2, 100, 0, 2000));
        var coupler = new FrictionJoint
        {
            PressureDiameter = Length.FromMeters(Math.Clamp(
                bore * d.Number(at + "joint.diameter", new(1, 0.9, 1.4, 0.1, 10)), 0.002, 0.3)),
            BreakawayForce = Force.FromNewtons(breakaway),
            SlidingForce = Force.FromNewtons(breakaway * d.Number(at + "joint.sliding", new(0.8, 0.3, 1, 0, 1))),
            Engagement = Length.FromMeters(d.Number(at + "joint.engagement", new(0.02, 0.004, 0.05, 5e-4, 0.5))),
            LeakArea = Area.FromSquareMeters(d.Number(at + "joint.leak", new(0, 0, 2e-5, 0, 2e-4))),
            Provenance = Invented.Here,
        };
        return d.Choice(at + "joint", 6) switch
        {
            1 => StageJoint.Taped(coupler, Tape(d, at + "joint.")),
            2 => StageJoint.FreeMotorTube(
                coupler,
                Mass.FromKilograms(d.Number(at + "joint.tube-mass", new(0.02, 0.01, 0.04, 1e-3, 100))),
                d.Choice(at + "joint.passages", 2) == 0 ? null : Passages(d, at),
                d.Number(at + "joint.wake", new(-0.15, -0.3, 0, -1.5, 1))),
            _ => coupler,
        };
    }

    /// <summary>Tape, under a prefix of names.</summary>
    public static JointTape Tape(Draws d, string at) => new()
    {
        Strength = Force.FromNewtons(d.Number(at + "tape.strength", new(100, 20, 300, 0, 5000))),
        Thickness = Length.FromMeters(d.Number(at + "tape.thickness", new(5e-5, 3e-5, 3e-4, 1e-5, 5e-3))),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(d.Number(at + "tape.conductivity", new(0.2, 0.06, 0.3, 0.02, 5))),
        Density = Density.FromKilogramsPerCubicMeter(d.Number(at + "tape.density", new(1000, 700, 1400, 100, 3000))),
        HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(d.Number(at + "tape.heat", new(1700, 1300, 1900, 500, 4000))),
        SofteningTemperature = Temperature.FromKelvins(d.Number(at + "tape.soft", new(400, 355, 600, 320, 1200))),
        GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(d.Number(at + "tape.contact", new(500, 250, 2000, 0, 20000))),
        Provenance = Invented.Here,
    };

    private static VentHoles Passages(Draws d, string at) => new()
    {
        Diameter = Length.FromMeters(d.Number(at + "joint.passage", new(0.004, 0.002, 0.008, 1e-4, 0.1))),
        WallThickness = Length.FromMeters(d.Number(at + "joint.ring", new(0.002, 0.001, 0.005, 1e-5, 0.05))),
        Count = d.Count(at + "joint.passage-count", new(2, 1, 6, 1, 1000)),
    };
}
