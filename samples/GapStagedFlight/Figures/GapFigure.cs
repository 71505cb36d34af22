using Samples;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight.Figures;

/// <summary>Gap pressure against time, and where the hot front and the pieces are between booster and upper nozzle.</summary>
internal static class GapFigure
{
    /// <summary>How much of the run is shown, as a multiple of the time that decided it.</summary>
    private const double PastOutcome = 2;

    /// <summary>Room above the highest pressure and above the upper nozzle, for words [-].</summary>
    private const double Room = 1.5;

    /// <summary>Share of the gap below which the products are as good as gone [-].</summary>
    private const double Least = 0.01;

    private static readonly (GapEventKind Kind, string Name)[] Told =
    [
        (GapEventKind.FrontAtLastVent, "front at vents"),
        (GapEventKind.PiecesAtNozzle, "pieces at nozzle"),
        (GapEventKind.ProductsAtNozzle, "products at nozzle"),
        (GapEventKind.Lit, "grain lit"),
        (GapEventKind.JointOpens, "joint opens"),
    ];

    public static DrawnFigure Draw(GapReview gap)
    {
        GapRun run = gap.Run;
        GapDesign design = run.Problem.Design;
        double end = Math.Min(run.End.Milliseconds, PastOutcome * run.Outcome.Time.Milliseconds);
        Course course = Course.Of(run, end);
        double length = design.Tube.Length.Millimeters, outside = run.Problem.Surroundings.Pressure.Pascals;
        double[] t = course.Milliseconds, gauge = course.Of(GapChannel.GapPressure, p => (p - outside) / 1e3);
        double[] front = course.Of(GapChannel.Front, x => x * 1e3);
        double top = Math.Max(1, Room * gauge.Max()), bottom = Math.Min(0, 1.1 * gauge.Min());

        var figure = new TwoAxes(Titles.Gap(gap), "time since burn-through [ms]", "gap pressure above outside [kPa]", "station [mm]");
        foreach ((double low, double high) in Openings(design))
            figure.Band(low, high, "vents", Figure.Sky, onRight: true);
        figure.Level(length, "upper nozzle", Figure.Red, onRight: true, fromRight: true);
        figure.Curve(t, gauge, name: "pressure", near: 0.7);
        DrawFront(figure, run, t, front);
        if (Pieces(run, end) is { } pieces)
            figure.Curve(pieces.Time, pieces.Station, onRight: true, name: "pieces", near: 0.6, dotted: true, colour: Figure.Green);
        foreach ((GapEventKind kind, string name) in Told.Where(e => e.Kind != GapEventKind.FrontAtLastVent || design.Vents.Length > 0))
        {
            if (run.TimeOf(kind) is { } moment && moment.Milliseconds <= end)
                figure.Moment(moment.Milliseconds, $"{name}, {Titles.Time(moment)}");
        }

        figure.RightTicks(x => x >= 0 && x <= 1.01 * length);
        return figure.Finish(end, (bottom, top), (bottom / top * Room * length, Room * length));
    }

    /// <summary>
    /// The front, and the stretch ahead of it where products and air mix: a vent draws the first products when that
    /// stretch reaches it, and nothing else once the front has. A gap that is stirred has no such stretch, and one
    /// shorter than that is all of it.
    /// </summary>
    private static void DrawFront(TwoAxes figure, GapRun run, double[] t, double[] front)
    {
        GapDesign design = run.Problem.Design;
        double thick = design.MixingAndHeat.FrontThicknessInBores * design.Tube.BoreBelow(design.Tube.Length).Millimeters;
        double length = design.Tube.Length.Millimeters;
        if (run.Model is not GapModel.WellStirred && thick < length)
        {
            figure.Between(t, front, [.. front.Select(x => x > Least * length ? Math.Min(x + thick, Math.Max(length, x)) : x)], Figure.Red, onRight: true);
            figure.Remark("shaded: where products and air mix");
        }

        figure.Curve(t, front, onRight: true, name: "hot front", near: 0.2);
    }

    /// <summary>Stretches of the tube with holes [mm], those of one ring together.</summary>
    private static IEnumerable<(double Low, double High)> Openings(GapDesign design) => design.Vents.Items
        .Select(v => (Middle: v.Station.Millimeters, Half: 0.5 * (v.AxialLength ?? v.Holes.Diameter).Millimeters))
        .Select(v => (v.Middle - v.Half, v.Middle + v.Half)).Distinct();

    /// <summary>The way of the pieces of the web, at the one speed at which they are thrown; null where there are none.</summary>
    private static (double[] Time, double[] Station)? Pieces(GapRun run, double end)
    {
        GapSource.EndBurner? motor = run.Problem.Design.Source switch
        {
            GapSource.EndBurner one => one,
            GapSource.Cluster all => all.Motors.OfType<GapSource.EndBurner>().FirstOrDefault(),
            _ => null,
        };
        if (motor?.BurnThrough(run.Problem.Surroundings.Pressure).PieceSpeed is not { MetersPerSecond: > 0 } speed)
            return null;
        double length = run.Problem.Design.Tube.Length.Millimeters, start = motor.Delay.Milliseconds;
        double arrival = start + length / speed.MetersPerSecond;
        return arrival <= end ? ([start, arrival], [0, length]) : ([start, end], [0, (end - start) * speed.MetersPerSecond]);
    }
}
