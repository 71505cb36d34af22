namespace Staging.Core.Flight;

/// <summary>Equal motors in SI numbers: the curve of one, its propellant [kg], and how many there are.</summary>
internal readonly record struct MotorParameters(ThrustHistory Thrust, double Propellant, int Count);

/// <summary>
/// All motors of one stage together, as straight segments: thrust and mass flow between the corners of all their
/// curves.
/// </summary>
internal sealed class MotorBurn
{
    private readonly double[] time;
    private readonly ThrustSegment[] lines;
    private readonly double[] left;

    /// <summary>Adds up groups of motors that are lit together.</summary>
    public MotorBurn(ReadOnlySpan<MotorParameters> groups)
    {
        time = groups.Length == 1 ? groups[0].Thrust.Time_s.ToArray() : CornersOf(groups);
        lines = new ThrustSegment[time.Length - 1];
        left = new double[time.Length];
        foreach (MotorParameters group in groups)
            Add(group);
        left[^1] = 0;
    }

    /// <summary>Propellant of all motors [kg].</summary>
    public double Propellant => left[0];

    /// <summary>End of the last thrust history from ignition [s].</summary>
    public double End => time[^1];

    /// <summary>
    /// Number of straight segments; segment -1 is the wait before the first point, the segment of this number the time
    /// after the last.
    /// </summary>
    public int Segments => lines.Length;

    /// <summary>Start of a segment from ignition [s]; the wait starts at 0.</summary>
    public double StartOf(int segment) => segment < 0 ? 0 : time[segment];

    /// <summary>End of a segment from ignition [s]; infinite after the last point.</summary>
    public double EndOf(int segment) => segment >= Segments ? double.PositiveInfinity : time[segment + 1];

    /// <summary>Thrust and mass flow on a segment; nothing outside the curves.</summary>
    public ThrustSegment Line(int segment) => segment < 0 || segment >= Segments ? default : lines[segment];

    /// <summary>Propellant left at the start of a segment [kg]; exactly zero after the last point.</summary>
    public double LeftAt(int segment) => segment < 0 ? Propellant : left[segment];

    private void Add(MotorParameters group)
    {
        ReadOnlySpan<double> t = group.Thrust.Time_s.Span, f = group.Thrust.Thrust_N.Span, impulse = group.Thrust.RunningImpulse_Ns;
        double perImpulse = group.Propellant / impulse[^1];
        int k = 0;
        for (int i = 0; i < time.Length; i++)
        {
            while (k + 2 < t.Length && t[k + 1] <= time[i])
                k++;
            double slope = (f[k + 1] - f[k]) / (t[k + 1] - t[k]), into = time[i] - t[k];
            double thrust = f[k] + slope * into;
            double delivered = into < 0 ? 0 : time[i] >= t[^1] ? impulse[^1] : impulse[k] + 0.5 * (f[k] + thrust) * into;
            left[i] += group.Count * (group.Propellant - perImpulse * delivered);
            if (i < lines.Length && time[i] >= t[0] && time[i] < t[^1])
                lines[i] = lines[i].Plus(group.Count * thrust, group.Count * slope, perImpulse);
        }
    }

    private static double[] CornersOf(ReadOnlySpan<MotorParameters> groups)
    {
        var corners = new SortedSet<double>();
        foreach (MotorParameters group in groups)
            corners.UnionWith(group.Thrust.Time_s.ToArray());
        return [.. corners];
    }
}

/// <summary>Thrust [N] and mass flow [kg/s] at the start of a straight segment, with their slopes.</summary>
internal readonly record struct ThrustSegment(double Thrust0, double ThrustSlope, double Flow0, double FlowSlope)
{
    /// <summary>The same with another thrust added, whose propellant burns in proportion to its impulse.</summary>
    public ThrustSegment Plus(double thrust, double slope, double massPerImpulse) =>
        new(Thrust0 + thrust, ThrustSlope + slope, Flow0 + massPerImpulse * thrust, FlowSlope + massPerImpulse * slope);
}
