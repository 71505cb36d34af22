using Samples;
using ScottPlot;
using Staging.Core;
using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;

namespace TheoryFigures;

/// <summary>Flight, drag and stability of one invented two-stage model.</summary>
internal static class FlightFigures
{
    private static readonly Airframe Sustainer = new()
    {
        Nose = new Nose { Shape = NoseShape.Ogive, Length = Mm(80), Diameter = Mm(24.8) },
        Body = [BodyPart.Tube(Mm(270), Mm(24.8))],
        Fins = [Fins(50, 25, 35, 25, 300)],
    };

    private static readonly Airframe Stack = Sustainer.With([BodyPart.Tube(Mm(160), Mm(24.8))], [Fins(60, 40, 50, 20, 445)]);
    private static readonly FlightPlan Plan = MakePlan();
    private static readonly FlightRun Run = Plan.Fly();

    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("flight-speed",
            Course("Two stages, straight up: speed on the way up", "speed, m/s", s => s.Velocity.MetersPerSecond, 0, 8.6, -6, 175));
        yield return ("failure-cases", FailureCases());
        yield return ("drag-build-up", DragParts());
        yield return ("stability-margin", Margins());
    }

    private static Plot Course(string title, string left, Func<FlightState, double> value, double from, double to, double bottom,
        double top)
    {
        double lit = Run.Stagings[0].Ignition!.Value.Seconds, eject = Run.Main.Find(FlightEventKind.Ejection)!.Time.Seconds;
        Plot plot = Figure.New(title, "time from ignition, s", left)
            .Curve(t => value(Run.Main.At(Duration.FromSeconds(t))), from, lit, "", 1)
            .Curve(t => value(Run.Main.At(Duration.FromSeconds(t))), lit, eject, "", 0)
            .Curve(t => value(Run.Main.At(Duration.FromSeconds(t))), eject, to, "", 2)
            .Note("booster", 0.95, 45, 1).Note("sustainer burns, then coasts", 2.9, 128, 0).Note("parachute", 7.3, 55, 2);
        return plot.Limits(from, to, bottom, top);
    }

    private static Plot FailureCases()
    {
        Plot plot = Figure.New("Height of what flies on when a staging fails", "time from ignition, s", "height, m")
            .Curve(Height(Run.Main), 0, 35, "", 0)
            .Note("as planned", 22, 478, 0);
        foreach ((FailureKind kind, string label, int colour, double x,
            double y) in (ReadOnlySpan<(FailureKind, string, int, double, double)>)
            [
                (FailureKind.UnlitAndJoined, "sustainer cold, joined", 1, 11.6, 105),
                (FailureKind.LitLate, "lit one second late", 2, 22, 570),
                (FailureKind.EjectionFailure, "nothing ejected", 3, 20.4, 220),
            ])
        {
            BodyFlight body = Run.FailureCases.Single(b => b.Kind == kind).Bodies[0];
            double end = Math.Min(body.End.Seconds, 35);
            plot.Curve(Height(body), body.Start.Seconds, end, "", colour, dashed: true).Note(label, x, y, colour);
        }

        return plot.Limits(0, 35, 0, 720);
    }

    private static Plot DragParts()
    {
        return Figure.New("Drag of the sustainer, part by part (good to perhaps 20 % below Mach 0.8)", "Mach number",
            "drag coefficient on the cross-section")
            .Curve(M => Drag(M, 0).Total, 0.1, 1.6, "", 0)
            .Curve(M => Drag(M, 18).Total, 0.1, 1.6, "", 0, dashed: true)
            .Curve(M => Drag(M, 0).BodyFriction + Drag(M, 0).FinFriction, 0.1, 1.6, "", 2)
            .Curve(M => Drag(M, 0).Base, 0.1, 1.6, "", 3)
            .Curve(M => Drag(M, 0).FinPressure, 0.1, 1.6, "", 1)
            .Note("whole, coasting", 0.56, 0.60, 0).Note("whole, motor burning (dashed)", 1.02, 0.68, 0)
            .Note("skin friction", 1.25, 0.215, 2).Note("base", 1.4, 0.105, 3).Note("fin edges", 1.25, 0.375, 1)
            .Limits(0.1, 1.6, 0, 1.15);
    }

    private static Plot Margins()
    {
        var stack = new StackStability
        {
            Plan = Plan,
            Balance =
            [
                new StageBalance { Structure = Mm(440), MotorCase = Mm(475), Propellant = Mm(470) },
                new StageBalance { Structure = Mm(170), MotorCase = Mm(315), Propellant = Mm(310) },
            ],
            Airframes = [Stack, Sustainer],
        };
        double Calibres(int k, double t) => stack.Airframes[k].Stability().Margin(stack.CentreOfGravityAt(k, Duration.FromSeconds(t)));
        return Figure.New("Static margin while the motors burn", "time from ignition of the stage, s", "margin, calibres")
            .Curve(t => Calibres(0, t), 0, 1, "", 1)
            .Curve(t => Calibres(1, t), 0, 1, "", 0)
            .Curve(_ => 1, 0, 1, "", 3, dashed: true)
            .Note("stack, booster burning", 0.45, 3.36, 1).Note("sustainer alone, burning", 0.45, 2.67, 0)
            .Note("one calibre: usual practice asks for one to two", 0.5, 1.03, 3)
            .Limits(0, 1, 0, 4);
    }

    private static Func<double, double> Height(BodyFlight body) => t => body.At(Duration.FromSeconds(t)).Height.Meters;

    private static DragEstimate Drag(double M, double jet) =>
        Sustainer.DragAt(M, StandardAtmosphere.Us1976, Length.FromMeters(400), Length.FromMicrometers(20), Mm(jet));

    private static DragTable Table(Airframe airframe, double jet) =>
        airframe.DragTable(StandardAtmosphere.Us1976, Length.FromMeters(400), Length.FromMicrometers(20), Mm(jet));

    private static FlightPlan MakePlan()
    {
        ThrustHistory curve = ThrustHistory.FromColumns([0, 0.05, 0.15, 0.25, 0.8, 0.85], [0, 6, 20, 9, 8, 0]);
        var invented = new Provenance { Source = "Invented for this figure", How = Evidence.Invented };
        Motor Of(MotorForwardEnd end) => new()
        {
            Name = "invented motor",
            Thrust = curve,
            PropellantMass = Mass.FromGrams(10),
            LoadedMass = Mass.FromGrams(21),
            ForwardEnd = end,
            Diameter = Mm(18),
            Length = Mm(70),
            Provenance = invented,
        };
        return new FlightPlan
        {
            Stages =
            [
                new Stage
                {
                    Name = "booster",
                    StructureMass = Mass.FromGrams(22),
                    Motor = Of(new MotorForwardEnd.BurnsThrough()),
                    MotorCount = 1,
                    Drag = Table(Stack, 0),
                    DragWhileBurning = Table(Stack, 18),
                    Recovery = Recovery.Tumbling(Area.FromSquareMeters(0.003), DeploymentTrigger.AtSeparation(Duration.FromSeconds(0.1))),
                    Ignition = new StageIgnition.AtLaunch(),
                },
                new Stage
                {
                    Name = "sustainer",
                    StructureMass = Mass.FromGrams(40),
                    Motor = Of(new MotorForwardEnd.Ejects { Delay = Duration.FromSeconds(6) }),
                    MotorCount = 1,
                    Drag = Table(Sustainer, 0),
                    DragWhileBurning = Table(Sustainer, 18),
                    Recovery = Recovery.Parachute(Area.FromSquareMeters(0.06), DeploymentTrigger.ByMotorDelay),
                    Ignition = new StageIgnition.ByContact { Lag = Duration.FromSeconds(0.02) },
                },
            ],
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)),
            Site = new LaunchSite
            {
                Atmosphere = StandardAtmosphere.Us1976,
                Elevation = Length.FromMeters(200),
                Wind = Speed.FromMetersPerSecond(3)
            },
        };
    }

    private static FinGroup Fins(double root, double tip, double span, double sweep, double station) => new()
    {
        Count = 3,
        RootChord = Mm(root),
        TipChord = Mm(tip),
        Span = Mm(span),
        Sweep = Mm(sweep),
        Thickness = Mm(1.6),
        RoundLeadingEdge = true,
        TaperedTrailingEdge = false,
        Station = Mm(station),
        BodyDiameter = Mm(24.8),
    };

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
