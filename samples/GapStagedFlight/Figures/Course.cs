using Staging.Core.Gaps;
using UnitsNet;

namespace GapStagedFlight.Figures;

/// <summary>The course of a gap run up to a moment, as columns for a figure.</summary>
internal sealed class Course
{
    private const int Points = 1500;
    private readonly GapColumns columns;
    private readonly int count;

    private Course(GapColumns columns, int count)
    {
        (this.columns, this.count) = (columns, count);
        Milliseconds = [.. columns.Time_s.ToArray().Take(count).Select(s => s * 1e3)];
    }

    /// <summary>Time since burn-through [ms].</summary>
    public double[] Milliseconds { get; }

    /// <summary>The run up to a time [ms], resolved finely whatever its length.</summary>
    public static Course Of(GapRun run, double end)
    {
        GapColumns columns = run.Sample(Duration.FromMilliseconds(Math.Max(end, 1e-3) / Points));
        return new Course(columns, 1 + columns.Time_s.ToArray().Skip(1).TakeWhile(s => s * 1e3 <= end * (1 + 1e-9)).Count());
    }

    public double[] Of(GapChannel channel, Func<double, double> unit) => [.. columns[channel].ToArray().Take(count).Select(unit)];
}
