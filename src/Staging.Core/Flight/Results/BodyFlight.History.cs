using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The trajectory between the events.</summary>
public sealed partial class BodyFlight
{
    /// <summary>Relative difference from which two sides of a seam count as a jump.</summary>
    private const double Jump = 1e-9;

    /// <summary>Whether the trajectory was kept (<see cref="FlightOptions.KeepTracks"/>).</summary>
    public bool HasHistory => log.Track is { Count: > 0 };

    /// <summary>The state at a time; at a jump, the state after it.</summary>
    /// <param name="time">Time from ignition of the lowest stage [s], within the record.</param>
    /// <returns>The state.</returns>
    /// <exception cref="InvalidOperationException">The trajectory was not kept.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the record.</exception>
    public FlightState At(Duration time)
    {
        double t = Within(time);
        Span<double> y = stackalloc double[2];
        log.Track!.At(t, y);
        return State(t, y, log.Segments[SegmentAt(t, after: true)]);
    }

    /// <summary>The state just before a time; at a jump, the state before it.</summary>
    /// <param name="time">Time from ignition of the lowest stage [s], within the record.</param>
    /// <returns>The state.</returns>
    /// <exception cref="InvalidOperationException">The trajectory was not kept.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the record.</exception>
    public FlightState JustBefore(Duration time)
    {
        double t = Within(time);
        Span<double> y = stackalloc double[2];
        log.Track!.JustBefore(t, y);
        return State(t, y, log.Segments[SegmentAt(t, after: false)]);
    }

    /// <summary>
    /// The trajectory as columns: one row a step of time, and two rows, before and after, at every jump of thrust, mass
    /// or drag.
    /// </summary>
    /// <param name="step">
    /// Spacing of the rows [s], 1 us to 1000 s; at least a millionth of the flight, so that little more than a million
    /// rows are held.
    /// </param>
    /// <returns>The columns.</returns>
    /// <exception cref="InvalidOperationException">The trajectory was not kept.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public FlightColumns Sample(Duration step)
    {
        double spacing = Guard.In(step, Math.Max(1e-6, 1e-6 * (log.EndTime - log.StartTime)), 1000, nameof(step)).Seconds;
        Within(Start);
        var rows = new List<FlightRow>();
        int drawn = 0;
        for (int i = 0; i < log.Segments.Count; i++)
        {
            double from = log.Segments[i].Start;
            double to = i + 1 < log.Segments.Count ? log.Segments[i + 1].Start : log.EndTime;
            if (i == 0 || JumpsAt(i))
                rows.Add(Row(i, from, after: true));
            while (log.StartTime + drawn * spacing <= from)
                drawn++;
            for (; log.StartTime + drawn * spacing < to; drawn++)
                rows.Add(Row(i, log.StartTime + drawn * spacing, after: true));
            if (to > from && (i + 1 == log.Segments.Count || JumpsAt(i + 1)))
                rows.Add(Row(i, to, after: false));
        }

        return new FlightColumns(rows);
    }

    private bool JumpsAt(int segment)
    {
        FlightRow before = Row(segment - 1, log.Segments[segment].Start, after: false),
            after = Row(segment, log.Segments[segment].Start, after: true);
        return Differs(before.Mass, after.Mass) || Differs(before.Thrust, after.Thrust) || Differs(before.Acceleration, after.Acceleration);
    }

    private static bool Differs(double a, double b) => Math.Abs(a - b) > Jump * Math.Max(1, Math.Max(Math.Abs(a), Math.Abs(b)));

    private FlightRow Row(int index, double t, bool after)
    {
        FlightSegment segment = log.Segments[index];
        Span<double> y = stackalloc double[2];
        if (after)
            log.Track!.At(t, y);
        else
            log.Track!.JustBefore(t, y);
        double h = y[0], v = y[1];
        AirSample air = parameters.Site.At(h);
        double mach = Math.Abs(v) / air.SoundSpeed_m_per_s;
        double drag = air.Density_kg_per_m3 * v * v * segment.Line.HalfArea(mach);
        double acceleration = segment.Held
            ? 0
            : new TrajectorySystem(parameters.Site, segment, segment.ThrustSign < 0 ? PhaseEvents.Falling : PhaseEvents.Rising)
                .Acceleration(t, h, v);
        return new FlightRow(t, h, v, acceleration, segment.Push.Mass(t), segment.Push.Thrust(t), drag, mach,
            0.5 * air.Density_kg_per_m3 * v * v);
    }

    private double Within(Duration time)
    {
        if (!HasHistory)
            throw new InvalidOperationException(
                "There is no trajectory: fly with KeepTracks = true; a body that ends where it starts has none either.");
        return Guard.In(time, log.StartTime, log.EndTime, nameof(time)).Seconds;
    }

    /// <summary>Index of the segment at a time: the last that starts at or before it, or before it.</summary>
    private int SegmentAt(double t, bool after)
    {
        int low = 0, high = log.Segments.Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            double start = log.Segments[middle].Start;
            if (after ? start <= t : start < t)
                low = middle;
            else
                high = middle - 1;
        }

        return low;
    }

    private static FlightState State(double t, ReadOnlySpan<double> y, in FlightSegment segment) =>
        new(t, y[0], y[1], segment.Push.Mass(t), segment.Push.Thrust(t));
}
