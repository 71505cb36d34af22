using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Solving;
using Staging.Core.Tests.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes to read a flight, its drag and its stability: shown in the reference, run here.</summary>
public class FlightReadingSnippets
{
    [Fact]
    public void Events_columns_and_energy()
    {
        FlightRun run = TestFlights.TwoStages().Fly();
        #region flight-columns
        BodyFlight body = run.Main;
        foreach (FlightEvent what in body.Events)
            Console.WriteLine($"{what.Time}: {what.Kind} of {what.Stage} at {what.After.Height}");
        FlightEvent? apogee = body.Find(FlightEventKind.Apogee);
        FlightColumns columns = body.Sample(Duration.FromMilliseconds(10));
        ReadOnlyMemory<double> speed = columns[FlightChannel.Velocity];
        EnergyLedger energy = body.EnergyLedger();
        Console.WriteLine($"{FlightColumns.UnitOf(FlightChannel.Velocity)}, {energy.Drag} went into drag");
        #endregion
        Assert.NotNull(apogee);
        Assert.Equal(columns.Time_s.Length, speed.Length);
        Assert.InRange(energy.Residual, -1e-5, 1e-5);
    }

    [Fact]
    public void How_a_body_ended()
    {
        FlightRun run = TestFlights.TwoStages().Fly();
        #region flight-outcomes
        string ended = run.Main.Outcome switch
        {
            FlightOutcome.Landed down => $"landed at {down.Speed} after {down.Time}",
            FlightOutcome.NeverLeftGuide stuck => $"came {stuck.FarthestTravel} along its guide",
            FlightOutcome.LeftAtmosphere gone => $"left the air at {gone.Velocity}",
            FlightOutcome.StillAloft high => $"still {high.Height} up",
            FlightOutcome.NotSolved given => given.Failure.Message,
            _ => "",
        };
        #endregion
        Assert.StartsWith("landed at", ended, StringComparison.Ordinal);
    }

    [Fact]
    public void What_falls_where()
    {
        FlightRun run = TestFlights.TwoStages().Fly();
        #region failure-cases
        foreach (FailureCase failure in run.FailureCases.Where(f => f.Kind is FailureKind.UnlitAndJoined or FailureKind.EjectionFailure))
            Console.WriteLine($"{failure.Description}: {failure.HardestLanding?.Outcome}");
        #endregion
        Assert.Contains(run.FailureCases, f => f.Kind == FailureKind.UnlitAndJoined);
    }

    [Fact]
    public void Drag_and_normal_force_of_an_airframe()
    {
        #region airframe-drag
        Length caliber = Length.FromMillimeters(24.8), roughness = Length.FromMicrometers(20);
        var airframe = new Airframe
        {
            Nose = new Nose { Shape = NoseShape.Ogive, Length = Length.FromMillimeters(80), Diameter = caliber },
            Body = [BodyPart.Tube(Length.FromMillimeters(270), caliber)],
            Fins =
            [
                new FinGroup
                {
                    Count = 3,
                    RootChord = Length.FromMillimeters(50),
                    TipChord = Length.FromMillimeters(25),
                    Span = Length.FromMillimeters(40),
                    Sweep = Length.FromMillimeters(25),
                    Thickness = Length.FromMillimeters(1.5),
                    RoundLeadingEdge = true,
                    TaperedTrailingEdge = false,
                    Station = Length.FromMillimeters(300),
                    BodyDiameter = caliber,
                },
            ],
        };
        DragEstimate drag = airframe.DragAt(0.3, StandardAtmosphere.Us1976, Length.FromMeters(300), roughness);
        Console.WriteLine($"{drag.Total:F2}, of which friction {drag.BodyFriction + drag.FinFriction:F2}");
        NormalForce normal = airframe.Stability();
        double margin = normal.Margin(centreOfGravity: Length.FromMillimeters(200)); // in calibres
        Console.WriteLine($"centre of pressure {normal.CentreOfPressure}, margin {margin:F1}");
        #endregion
        Assert.Empty(airframe.Check());
        Assert.InRange(drag.Total, 0.2, 1);
        Assert.InRange(margin, 1, 6);
    }

    [Fact]
    public void Stability_of_a_stack()
    {
        FlightPlan plan = TestFlights.TwoStages();
        Airframe whole = TestAirframes.Whole, upper = TestAirframes.Upper;
        #region stack-stability
        var stack = new StackStability
        {
            Plan = plan,
            Airframes = [whole, upper], // what is left after each separation
            Balance =
            [
                Balance(structure: 420, motorCase: 450, propellant: 455), // centres of gravity behind the tip of the nose
                Balance(structure: 200, motorCase: 315, propellant: 320),
            ],
        };
        foreach (StaticMargin margin in stack.Margins())
            Console.WriteLine($"{margin.Body}, {(margin.Burnt ? "burnt out" : "loaded")}: {margin.Calibres:F1} calibres");

        static StageBalance Balance(double structure, double motorCase, double propellant) => new()
        {
            Structure = Length.FromMillimeters(structure),
            MotorCase = Length.FromMillimeters(motorCase),
            Propellant = Length.FromMillimeters(propellant),
        };
        #endregion
        Assert.Equal(4, stack.Margins().Length);
    }

    [Fact]
    public void Progress_and_work_of_a_solver()
    {
        FlightPlan plan = TestFlights.TwoStages();
        #region solver-work
        var options = new FlightOptions { Solver = SolverOptions.Default with { RelativeTolerance = 1e-7, MaxSteps = 100_000 } };
        var progress = new Progress<SolveProgress>(p => Console.WriteLine($"{p.Time}, {p.Fraction:P0}"));
        SolverStatistics work = plan.Fly(options, progress).Statistics;
        Console.WriteLine($"{work.AcceptedSteps} steps, {work.RejectedSteps} refused");
        #endregion
        Assert.InRange(work.AcceptedSteps, 10, 100_000);
    }
}
