using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Flight;

/// <summary>An invented two-stage airframe of 24.8 mm.</summary>
internal static class TestAirframes
{
    public static Airframe Upper { get; } = new()
    {
        Nose = new Nose { Shape = NoseShape.Ogive, Length = Mm(80), Diameter = Mm(24.8) },
        Body = [BodyPart.Tube(Mm(270), Mm(24.8))],
        Fins = [Fins(0.300)],
    };

    public static Airframe Whole { get; } = Upper.With([BodyPart.Tube(Mm(140), Mm(24.8))], [Fins(0.440)]);

    public static StackStability Stack { get; } = new()
    {
        Plan = TestFlights.TwoStages(),
        Balance = [Balance(0.42, 0.45, 0.455), Balance(0.20, 0.315, 0.32)],
        Airframes = [Whole, Upper],
    };

    private static FinGroup Fins(double station) => new()
    {
        Count = 3,
        RootChord = Mm(50),
        TipChord = Mm(25),
        Span = Mm(40),
        Sweep = Mm(25),
        Thickness = Mm(1.5),
        RoundLeadingEdge = true,
        TaperedTrailingEdge = false,
        Station = Length.FromMeters(station),
        BodyDiameter = Mm(24.8),
    };

    /// <summary>Drag at 300 m; roughness in micrometres, diameter of the jet in millimetres.</summary>
    public static DragEstimate Drag(this Airframe airframe, double M, double roughness = 20, double jet = 0) => airframe.DragAt(
        M, StandardAtmosphere.Us1976, Length.FromMeters(300), Length.FromMicrometers(roughness), Length.FromMillimeters(jet));

    private static StageBalance Balance(double structure, double motorCase, double propellant) => new()
    {
        Structure = Length.FromMeters(structure),
        MotorCase = Length.FromMeters(motorCase),
        Propellant = Length.FromMeters(propellant),
    };

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
