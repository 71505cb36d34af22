using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Thrust of one motor against time from its ignition: straight lines between points, zero outside them. A first or
/// last point above zero is a jump. Impulses are exact integrals of these lines. Two with equal points are equal.
/// </summary>
public sealed partial class ThrustHistory : IEquatable<ThrustHistory>
{
    private readonly double[] time;
    private readonly double[] thrust;
    private readonly double[] impulse;

    private ThrustHistory(double[] time, double[] thrust)
    {
        this.time = time;
        this.thrust = thrust;
        impulse = new double[time.Length];
        for (int i = 1; i < time.Length; i++)
            impulse[i] = impulse[i - 1] + 0.5 * (thrust[i - 1] + thrust[i]) * (time[i] - time[i - 1]);
    }

    /// <summary>Times of the points from ignition [s], strictly rising, at least 0.</summary>
    public ReadOnlyMemory<double> Time_s => time;

    /// <summary>Thrust at the points [N], at least 0.</summary>
    public ReadOnlyMemory<double> Thrust_N => thrust;

    /// <summary>Total impulse: the sum of the trapezoids under the curve [N s].</summary>
    public Impulse TotalImpulse => Impulse.FromNewtonSeconds(impulse[^1]);

    /// <summary>
    /// Time from ignition to the last point [s]. The motor standards cut the tail at a share of peak thrust; this does
    /// not.
    /// </summary>
    public Duration BurnTime => Duration.FromSeconds(time[^1]);

    /// <summary>Total impulse over burn time [N].</summary>
    public Force AverageThrust => Force.FromNewtons(impulse[^1] / time[^1]);

    /// <summary>Largest thrust of any point [N].</summary>
    public Force PeakThrust => Force.FromNewtons(thrust.Max());

    /// <summary>Running impulse at the points [N s].</summary>
    internal ReadOnlySpan<double> RunningImpulse_Ns => impulse;

    private (EquatableArray<double> Time, EquatableArray<double> Thrust) Points =>
        (ImmutableCollectionsMarshal.AsImmutableArray(time), ImmutableCollectionsMarshal.AsImmutableArray(thrust));

    /// <summary>Makes a curve from two columns.</summary>
    /// <param name="time_s">Times from ignition [s], strictly rising, 0 to 1000 s, two or more.</param>
    /// <param name="thrust_N">As many thrusts [N], 0 to 10 MN, with a total impulse of 1 nN s or more.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="ArgumentException">A column breaks one of these rules; the message names the point.</exception>
    public static ThrustHistory FromColumns(ReadOnlySpan<double> time_s, ReadOnlySpan<double> thrust_N)
    {
        if (time_s.Length != thrust_N.Length)
            throw new ArgumentException($"There are {time_s.Length} times and {thrust_N.Length} thrusts; the columns must be equally long.",
                nameof(thrust_N));
        if (Fault(time_s, thrust_N) is { } fault)
            throw new ArgumentException($"Point {fault.Point + 1}, {fault.Column}: {fault.Message}", fault.Column);
        return new ThrustHistory(time_s.ToArray(), thrust_N.ToArray());
    }

    /// <summary>The thrust at a time from ignition; zero before the first and after the last point.</summary>
    /// <param name="sinceIgnition">Time from ignition [s].</param>
    /// <returns>Thrust [N].</returns>
    public Force At(Duration sinceIgnition) => Force.FromNewtons(At(sinceIgnition.Seconds));

    /// <summary>The impulse delivered until a time from ignition: the exact integral of the curve.</summary>
    /// <param name="sinceIgnition">Time from ignition [s].</param>
    /// <returns>Impulse [N s], zero before the first point, the total after the last.</returns>
    public Impulse ImpulseUntil(Duration sinceIgnition)
    {
        double t = sinceIgnition.Seconds;
        if (t <= time[0])
            return Impulse.FromNewtonSeconds(0);
        if (t >= time[^1])
            return TotalImpulse;
        int i = SegmentAt(t);
        return Impulse.FromNewtonSeconds(impulse[i] + 0.5 * (thrust[i] + At(t)) * (t - time[i]));
    }

    /// <summary>
    /// The same curve with every thrust multiplied: the impulse varies from motor to motor, the burn time less so.
    /// </summary>
    /// <param name="factor">Factor on the thrust [-], above 0 and at most 1e6.</param>
    /// <returns>A new curve.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <exception cref="ArgumentException">
    /// Thrust or total impulse of the new curve is outside the range of <see cref="FromColumns"/>.
    /// </exception>
    public ThrustHistory Scaled(double factor)
    {
        Guard.Above(factor, 0, 1e6, property: nameof(factor));
        return FromColumns(time, Array.ConvertAll(thrust, f => f * factor));
    }

    /// <inheritdoc/>
    public bool Equals([NotNullWhen(true)] ThrustHistory? other) => other is not null && Points == other.Points;

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => Equals(obj as ThrustHistory);

    /// <inheritdoc/>
    public override int GetHashCode() => Points.GetHashCode();

    internal double At(double t)
    {
        if (!(t >= time[0] && t <= time[^1]))
            return 0;
        int i = SegmentAt(t);
        return thrust[i] + (thrust[i + 1] - thrust[i]) * ((t - time[i]) / (time[i + 1] - time[i]));
    }

    private int SegmentAt(double t)
    {
        int i = Array.BinarySearch(time, t);
        return Math.Clamp(i >= 0 ? i : ~i - 1, 0, time.Length - 2);
    }
}
