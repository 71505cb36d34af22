using Staging.Core.Campaign.Oracle;
using Staging.Core.Fronts;
using Staging.Core.Gases;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Campaign.Subjects;

/// <summary>What every gap run has to keep, whatever its input.</summary>
internal static class GapPromises
{
    /// <summary>What does not add up of mass and energy [-]: lumped models, as docs/theory/gap.md promises.</summary>
    private const double Lumped = 1e-12;

    /// <summary>The same of the resolved tube, as docs/theory/resolved.md promises: this, and one rounding a step.</summary>
    private const double Resolved = 1e-12, Rounding = 1.1102230246251565e-16;

    /// <summary>What the march of the surface may err by: a millionth of the rise, straight between its marks [K].</summary>
    private const double SurfaceError = 0.01;

    /// <summary>Share by which a parcel that is nearly gone may be colder than what it comes of [-]: it is known to the tolerances of the gap.</summary>
    private const double ColdestError = 0.5;

    /// <summary>Absolute tolerances of the gap that a parcel has to hold for its temperature to mean something [-].</summary>
    private const double KnownTolerances = 100;

    private const int Moments = 256;

    /// <summary>How often the resolved tube repeats a step before it counts again.</summary>
    private const int MostRepeats = 21;

    public static void Keep(GapRun run, Facts facts)
    {
        facts.Steps += run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps;
        facts.Answer = run.Outcome.GetType().Name;
        if (run.Failure is { } failure)
            facts.Gave = failure.Kind.ToString();
        if ((run.Failure is null) == run.Outcome is GapOutcome.NotSolved)
            facts.Break("outcome and failure differ", $"{run.Outcome.GetType().Name} with failure {run.Failure}");
        int steps = run.Statistics.AcceptedSteps + run.Statistics.RejectedSteps;
        facts.Within("steps", "steps", steps, 0, run.Options.MaxSteps + MostRepeats);
        double closed = run.Model is GapModel.OneDimensional ? Resolved + steps * Rounding : Lumped;
        facts.Within("ledger of mass", "what does not add up", run.Ledger.RelativeMassResidual, -closed, closed);
        facts.Within("ledger of energy", "what does not add up", run.Ledger.RelativeEnergyResidual, -closed, closed);
        facts.Read("run", run);
        facts.Text("outcome", run.Outcome.ToString());
        if (run.Outcome is GapOutcome.VentedAway vented)
            facts.Within("share of products", "VentedAway.ProductsAtNozzle", vented.ProductsAtNozzle, 0, 1);
        Order(run, facts);
        if (run.End > Duration.Zero)
            Columns(run, facts);
        foreach (GapProfile profile in run.Profiles)
            foreach (double share in profile.Products.Span)
                facts.Within("share of products", "Profile.Products", share, 0, 1);
        if (facts.Thorough && run.End > Duration.Zero)
            OnDemand(run, facts);
    }

    /// <summary>What a run computes when it is asked: the state and the heat at its end and at lighting, and the travel of the front.</summary>
    private static void OnDemand(GapRun run, Facts facts)
    {
        facts.Read("last state", run.At(run.End));
        facts.Read("heat", run.HeatAt(run.End));
        facts.Read("heat at lighting", run.HeatAtLighting());
        FrontTravel front = run.FrontTravel(FrontMixing.Judged);
        facts.Read("arrival", front.ArrivalAt(run.Problem.Design.Tube.Length));
        facts.Within("share of heat", "FrontTravel.ShareLostBy", front.ShareLostBy(run.End), 0, 1);
        var travel = front.Sample(Duration.FromSeconds(Math.Clamp(run.End.Seconds / Moments, 1e-6, 1)));
        facts.Column("front", travel.Front_m.Span);
        facts.Column("front speed", travel.Speed_mps.Span);
        facts.Column("mixing thickness", travel.MixingThickness_m.Span);
        facts.Column("heat lost", travel.HeatLost_J.Span);
    }

    private static void Order(GapRun run, Facts facts)
    {
        double last = 0;
        foreach (GapEvent e in run.Events)
        {
            facts.Within("order of events", e.Kind.ToString(), e.Time.Seconds, last, run.End.Seconds);
            last = e.Time.Seconds;
        }
    }

    private static void Columns(GapRun run, Facts facts)
    {
        GapColumns columns = run.Sample(Duration.FromSeconds(Math.Clamp(run.End.Seconds / Moments, 1e-9, 10)));
        foreach (GapChannel channel in Enum.GetValues<GapChannel>())
            facts.Column($"column {channel}", columns[channel].Span);
        Positive(columns, GapChannel.GapPressure, facts);
        Positive(columns, GapChannel.ChamberPressure, facts);
        Positive(columns, GapChannel.HotTemperature, facts);
        Positive(columns, GapChannel.NozzleTemperature, facts);
        foreach (double share in columns[GapChannel.ProductsAtNozzle].Span)
            facts.Within("share of products", "column ProductsAtNozzle", share, 0, 1);
        Surface(run, columns, facts);
        if (run.Model is not GapModel.OneDimensional)
            Coldest(run, columns, facts);
    }

    /// <summary>Stirred gas is no colder than the coldest that it comes of, expanded from the highest pressure of the run to the lowest.</summary>
    private static void Coldest(GapRun run, GapColumns columns, Facts facts)
    {
        GapSource source = run.Problem.Design.Source;
        double gamma = Math.Max(run.Problem.Surroundings.Gas.HeatCapacityRatio, source.Products.Equivalent().HeatCapacityRatio);
        double coldest = Math.Min(run.Problem.Surroundings.Temperature.Kelvins, Flames(source).Min())
            / Compressed(run, columns, gamma, GapChannel.GapPressure, GapChannel.ChamberPressure);
        double least = KnownTolerances * run.Options.ScaledAbsoluteTolerance * run.Problem.Design.Tube.Length.Meters;
        ReadOnlySpan<double> hot = columns[GapChannel.HotTemperature].Span, front = columns[GapChannel.Front].Span;
        for (int i = 0; i < hot.Length; i++)
        {
            if (front[i] > least)
                facts.Within("colder than what it comes of", "column HotTemperature", hot[i], (1 - ColdestError) * coldest, double.MaxValue);
        }

        foreach (double t in columns[GapChannel.NozzleTemperature].Span)
            facts.Within("colder than what it comes of", "column NozzleTemperature", t, (1 - ColdestError) * coldest, double.MaxValue);
    }

    /// <summary>Ratio of temperatures from the lowest to the highest pressure of the run without heat [-].</summary>
    private static double Compressed(GapRun run, GapColumns columns, double gamma, params GapChannel[] pressures)
    {
        double low = run.Problem.Surroundings.Pressure.Pascals, high = Math.Max(low, low + run.PeakGaugePressure.Pascals);
        foreach (GapChannel channel in pressures)
        {
            foreach (double p in columns[channel].Span)
                (low, high) = (Math.Min(low, p), Math.Max(high, p));
        }

        return Math.Pow(high / low, 1 - 1 / gamma);
    }

    private static void Positive(GapColumns columns, GapChannel channel, Facts facts)
    {
        foreach (double x in columns[channel].Span)
            facts.Within("not above zero", $"column {channel}", x, double.Epsilon, double.MaxValue);
    }

    /// <summary>
    /// Heat flows from hot to cold: the surface stays between the coldest and the hottest that it can have seen. A chamber that another one fills
    /// gets as hot as gamma times what fills it, and its jet may strike the grain; hot air that is compressed may be hotter than either.
    /// </summary>
    private static void Surface(GapRun run, GapColumns columns, Facts facts)
    {
        double initial = run.Problem.Design.Grain.InitialTemperature.Kelvins, coldest = initial;
        GapSource source = run.Problem.Design.Source;
        GasState air = run.Problem.Surroundings;
        double compressed = air.Temperature.Kelvins * Compressed(run, columns, air.Gas.HeatCapacityRatio, GapChannel.GapPressure);
        double hottest = Math.Max(Math.Max(initial, compressed), Flames(source).Max() * source.Products.Equivalent().HeatCapacityRatio);
        foreach (GapChannel channel in (GapChannel[])[GapChannel.NozzleTemperature, GapChannel.HotTemperature])
        {
            foreach (double t in columns[channel].Span)
                (coldest, hottest) = (Math.Min(coldest, t), Math.Max(hottest, t));
        }

        foreach (double t in columns[GapChannel.GrainSurface].Span)
            facts.Within("grain surface", "column GrainSurface", t, coldest - SurfaceError, hottest + SurfaceError);
        facts.Within("grain surface", "peak", run.PeakGrainSurface.Kelvins, initial, hottest + SurfaceError);
    }

    private static double[] Flames(GapSource source) => source.Match(
        booster => [booster.FlameTemperature.Kelvins],
        table => table.Temperature_K.ToArray(),
        cluster => [.. cluster.Motors.Select(m => m.FlameTemperature.Kelvins)],
        endBurner => new[] { endBurner.FlameTemperature.Kelvins });
}
