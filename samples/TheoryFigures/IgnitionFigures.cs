using Samples;
using ScottPlot;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace TheoryFigures;

/// <summary>What heats the grain of the invented starting gap, and how tapes let go.</summary>
internal static class IgnitionFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        GapRun run = Gap().Solve();
        double end = run.End.Milliseconds, lit = run.TimeOf(GapEventKind.Lit)!.Value.Milliseconds,
            ignition = run.Problem.Design.Grain.IgnitionTemperature.Kelvins;
        yield return ("ignition-surface",
            Figure.New("Grain surface in a gap of 100 mm with four holes of 4 mm", "time since burn-through [ms]", "temperature [K]")
            .Curve(t => run.At(Ms(t)).GrainSurface.Kelvins, 0, end, "", 1)
            .Note("grain surface", 31, 900, 1)
            .Curve(t => run.At(Ms(t)).NozzleTemperature.Kelvins, 0, end, "", 0)
            .Note("gas at the nozzle", 13, 1690, 0)
            .Curve(_ => ignition, 0, end, "", 3, dashed: true)
            .Note(FormattableString.Invariant($"lit after {lit:F1} ms"), lit + 2, ignition - 120, 3)
            .Limits(0, end, 200, 2000));
        yield return ("ignition-fluxes", Figure.New("What heats it: the three fluxes", "time since burn-through [ms]", "heat flux [MW/m2]")
            .Curve(t => run.At(Ms(t)).Particles.WattsPerSquareMeter / 1e6, 0, end, "", 1)
            .Note("particles", 13, 1.25, 1)
            .Curve(t => run.At(Ms(t)).Convection.WattsPerSquareMeter / 1e6, 0, end, "", 0)
            .Note("convection", 13, 0.55, 0)
            .Curve(t => run.At(Ms(t)).Radiation.WattsPerSquareMeter / 1e6, 0, end, "", 2)
            .Note("radiation", 13, 0.1, 2)
            .Limits(0, end, 0, 3.5));
        yield return ("tape-softening", Figure.New("How long a tape holds: until its far face is soft", "gas temperature [K]", "time [ms]")
            .Curve(T => JointTape.ThinPlasticFilm.TimeToSoften(Kelvins(T), Kelvins(288))!.Value.Milliseconds, 700, 2100,
                "thin plastic film, 50 micrometres", 0, 0.35)
            .Curve(T => JointTape.PaperTape.TimeToSoften(Kelvins(T), Kelvins(288))!.Value.Milliseconds, 900, 2100,
                "paper tape, 140 micrometres", 1, 0.45)
            .Limits(700, 2100, 0, 300));
    }

    private static GapProblem Gap()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(100) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        FrictionJoint joint = start.Design.Joint.Coupler with
        {
            BreakawayForce = Force.FromNewtons(60),
            SlidingForce = Force.FromNewtons(48)
        };
        return start with
        {
            Design = start.Design with
            {
                Tube = tube,
                Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))],
                Joint = joint
            }
        };
    }

    private static Duration Ms(double t) => Duration.FromMilliseconds(t);

    private static Temperature Kelvins(double T) => Temperature.FromKelvins(T);
}
