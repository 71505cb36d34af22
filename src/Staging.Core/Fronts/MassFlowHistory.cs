using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// Mass flow against time, measured or computed: straight lines between points, nothing before the first and after the
/// last.
/// </summary>
/// <remarks>
/// Immutable; may be read from any thread. Made by <see cref="FromColumns"/>, which checks both columns together.
/// </remarks>
public sealed record MassFlowHistory
{
    private const double MaxTime_s = 100, MaxFlow_kgs = 100;

    private readonly EquatableArray<double> time;
    private readonly EquatableArray<double> flow;

    private MassFlowHistory(EquatableArray<double> time, EquatableArray<double> flow)
    {
        this.time = time;
        this.flow = flow;
    }

    /// <summary>Times of the points [s], strictly rising from 0 or later.</summary>
    public ReadOnlyMemory<double> Time_s => time.Items.AsMemory();

    /// <summary>Mass flow at the points [kg/s], at least 0.</summary>
    public ReadOnlyMemory<double> MassFlow_kgs => flow.Items.AsMemory();

    /// <summary>When the flow ends: the last point.</summary>
    public Duration End => Duration.FromSeconds(time[^1]);

    /// <summary>Mass of the whole history: the sum of the trapezoids.</summary>
    public Mass TotalMass
    {
        get
        {
            double sum = 0;
            for (int i = 1; i < time.Length; i++)
                sum += 0.5 * (flow[i - 1] + flow[i]) * (time[i] - time[i - 1]);
            return Mass.FromKilograms(sum);
        }
    }

    /// <summary>Makes a history from two columns.</summary>
    /// <param name="time_s">Times [s], strictly rising, 0 to 100, two or more.</param>
    /// <param name="massFlow_kgs">As many mass flows [kg/s], 0 to 100, not all zero.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentException">A column breaks one of these rules; the message names the point.</exception>
    public static MassFlowHistory FromColumns(ReadOnlySpan<double> time_s, ReadOnlySpan<double> massFlow_kgs)
    {
        if (time_s.Length < 2 || time_s.Length != massFlow_kgs.Length)
            throw new ArgumentException($"A history needs at least two points and as many flows as times; it has "
                + $"{time_s.Length} and {massFlow_kgs.Length}.", nameof(time_s));
        double most = 0;
        for (int i = 0; i < time_s.Length; i++)
        {
            Guard.In(time_s[i], 0, MaxTime_s, "s", $"{nameof(time_s)}[{i}]");
            most = Math.Max(most, Guard.In(massFlow_kgs[i], 0, MaxFlow_kgs, "kg/s", $"{nameof(massFlow_kgs)}[{i}]"));
            if (i > 0 && time_s[i] <= time_s[i - 1])
                Guard.Above(time_s[i], time_s[i - 1], MaxTime_s, "s", $"{nameof(time_s)}[{i}]");
        }

        if (most == 0)
            throw new ArgumentException("All flows are zero; at least one must be above 0 kg/s.", nameof(massFlow_kgs));
        return new MassFlowHistory([.. time_s], [.. massFlow_kgs]);
    }

    /// <summary>Flow at a time [kg/s].</summary>
    internal double At(double t)
    {
        if (t < time[0] || t > time[^1])
            return 0;
        int i = time.AsSpan().BinarySearch(t);
        if (i >= 0)
            return flow[i];
        i = ~i;
        return flow[i - 1] + (flow[i] - flow[i - 1]) * ((t - time[i - 1]) / (time[i] - time[i - 1]));
    }
}
