using System.Collections.Immutable;

namespace Staging.Core.GroundTests;

/// <summary>The likelihood of one test record under an answer of the model.</summary>
/// <remarks>
/// With a probability q the model or the record is wrong and says nothing: every ending is equally likely, a time lies
/// anywhere in the watch, a pressure is normal about 0 with the size of the peak. Otherwise the ending is as said, and
/// times and pressures are normal about those of the model. q = 1 - (1 - 3/2 e)(1 - d), with e the chance that the
/// model's ending is wrong and d the doubt of the record: of a certain record, a wrong ending then has the probability
/// e/2.
/// </remarks>
internal sealed class TestLikelihood
{
    private const int Endings = 3;

    private static readonly double LogRootTwoPi = 0.5 * Math.Log(2 * Math.PI);

    private readonly ImmutableArray<Ending> seen;
    private readonly ImmutableArray<(double At, double Within)?> times;
    private readonly ImmutableArray<double> traceTimes = [], trace = [], traceWeights = [];
    private readonly double timeSpread, logModel, logSilent, logHorizon;
    private readonly double samples, deviation;

    public TestLikelihood(GroundTest test, ModelDiscrepancy discrepancy)
    {
        seen = EndingsOf(test.Seen);
        times = [.. new[] { test.FirstFlame, test.JointMoves, test.Parted, test.Lit }
            .Select(t => t is null ? ((double, double)?)null : (t.At.Seconds, t.Within.Seconds))];
        timeSpread = discrepancy.TimeSpread;
        double silent = Silent(discrepancy, test.Doubt);
        (logModel, logHorizon) = (Math.Log(1 - silent), Math.Log(test.Gap.Horizon.Seconds));
        double anywhere = Math.Log((double)seen.Length / Endings) + times.Sum(LogOfAnyTime);
        if (test.Pressure is { } measured)
        {
            // What a motor that burns does to the pressure is no matter of the gap.
            double last = test.Lit?.At.Seconds ?? double.PositiveInfinity;
            int compared = Math.Max(1, measured.Times.Items.Count(t => t <= last));
            (traceTimes, trace) = (measured.Times.Items[..compared], measured.Values.Items[..compared]);
            traceWeights = ShareOfTime(traceTimes);
            double peak = Math.Max(trace.Max(Math.Abs), Math.Max(test.GaugeError.Pascals, 1));
            samples = Math.Clamp((traceTimes[^1] - traceTimes[0]) / discrepancy.PressureMemory.Seconds, 1, trace.Length);
            deviation = Math.Sqrt(Math.Pow(test.GaugeError.Pascals, 2) + Math.Pow(discrepancy.PressureSpread * peak, 2));
            anywhere += LogOfTrace(MeanSquare(_ => 0), peak);
        }

        logSilent = Math.Log(silent) + anywhere;
    }

    /// <summary>
    /// Logarithm of the likelihood of the record where model or record is wrong, times the probability of that [-]: the
    /// same in every case, and the least that a case can have.
    /// </summary>
    public double LogOfSilence => logSilent;

    /// <summary>Probability of each ending of a test that is still to be made, in the order of the endings.</summary>
    public static ImmutableArray<double> Classes(Ending? ending, ModelDiscrepancy discrepancy, double doubt)
    {
        double silent = ending is null ? 1 : Silent(discrepancy, doubt);
        return [.. Enumerable.Range(0, Endings).Select(k => silent / Endings + (ending == (Ending)k ? 1 - silent : 0))];
    }

    /// <summary>The logarithm of the likelihood [-], of a run that was solved.</summary>
    public double Log(GapAnswer answer)
    {
        double fits = LogOfModel(answer), greater = Math.Max(fits, logSilent);
        return double.IsNegativeInfinity(greater)
            ? greater
            : greater + Math.Log(Math.Exp(fits - greater) + Math.Exp(logSilent - greater));
    }

    private static double Silent(ModelDiscrepancy discrepancy, double doubt) =>
        1 - (1 - Endings / (Endings - 1.0) * discrepancy.WrongOutcome) * (1 - doubt);

    private static ImmutableArray<Ending> EndingsOf(Seen seen) => seen switch
    {
        Seen.Lit => [Ending.Lit],
        Seen.PartedFirst => [Ending.Parted],
        Seen.NotLitTogether => [Ending.Together],
        Seen.NotLit => [Ending.Parted, Ending.Together],
        _ => [Ending.Lit, Ending.Parted, Ending.Together],
    };

    private double LogOfModel(GapAnswer answer)
    {
        Ending ending = answer.Ending!.Value;
        if (!seen.Contains(ending))
            return double.NegativeInfinity;
        // Once the upper motor burns, its exhaust moves the joint, which no model of the gap tells: then at any time.
        bool burns = ending == Ending.Lit;
        double log = logModel + LogOfTime(times[0], answer.FirstFlame) + LogOfTime(times[3], answer.Lit)
            + (burns && !(answer.JointMoves < answer.Lit) ? LogOfAnyTime(times[1]) : LogOfTime(times[1], answer.JointMoves))
            + (burns ? LogOfAnyTime(times[2]) : LogOfTime(times[2], answer.Parted));
        if (trace.IsEmpty || double.IsNegativeInfinity(log))
            return log;
        return log + LogOfTrace(MeanSquare(answer.Gauge), deviation);
    }

    /// <summary>The share of the time of a trace that each sample stands for [-], by the trapezoidal rule.</summary>
    private static ImmutableArray<double> ShareOfTime(ImmutableArray<double> times)
    {
        double whole = times[^1] - times[0];
        return times.Length == 1
            ? [1]
            : [.. times.Select((_, i) => 0.5 * (times[Math.Min(i + 1, times.Length - 1)] - times[Math.Max(i - 1, 0)]) / whole)];
    }

    /// <summary>Mean square over time of how far a trace is off a modelled one [Pa2].</summary>
    private double MeanSquare(Func<double, double> modelled)
    {
        double squares = 0;
        for (int i = 0; i < trace.Length; i++)
        {
            double off = trace[i] - modelled(traceTimes[i]);
            squares += traceWeights[i] * off * off;
        }

        return squares;
    }

    private double LogOfAnyTime((double At, double Within)? time) => time is null ? 0 : -logHorizon;

    private double LogOfTime((double At, double Within)? time, double? modelled)
    {
        if (time is not { } seenAt)
            return 0;
        if (modelled is not { } t)
            return double.NegativeInfinity;
        double sigma = Math.Sqrt(seenAt.Within * seenAt.Within + timeSpread * timeSpread * t * t), z = (seenAt.At - t) / sigma;
        return -0.5 * z * z - Math.Log(sigma) - LogRootTwoPi;
    }

    /// <summary>Of as many samples as there are independent ones, by their mean square.</summary>
    private double LogOfTrace(double meanSquare, double sigma) =>
        samples * (-0.5 * meanSquare / (sigma * sigma) - Math.Log(sigma) - LogRootTwoPi);
}
