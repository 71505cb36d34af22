using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// Forces and motion of the joint, the warming of a tape over its seam, and the annulus through which the gap vents
/// once it has opened.
/// </summary>
internal readonly struct JointMechanics(GapParameters p, JointPhase phase)
{
    /// <summary>
    /// Speed back at which a sliding joint has come to rest [m/s]. A joint that barely starts has this speed to lose,
    /// so that its rest is a crossing however soon it comes.
    /// </summary>
    private const double SlowestSpeed = 1e-6;

    private bool Moves => phase != JointPhase.Held;

    /// <summary>
    /// Growth of the tube [m3/s]: while the joint slides; once it has opened the tube ends where it was.
    /// </summary>
    public T VolumeRate<T>(StateVector<T> y)
        where T : struct, IReal<T> => phase == JointPhase.Slides ? p.JointArea * y[StateLayout.SlideSpeed] : 0;

    /// <summary>Lengthening of the tube [m]: the travel, up to the engagement.</summary>
    public static T Extension<T>(GapParameters p, StateVector<T> y)
        where T : struct, IReal<T> => T.Min(y[StateLayout.Slide], p.Engagement);

    /// <summary>
    /// Area of the annulus between the bodies [m2]: the circumference times the travel past the engagement, up to the
    /// whole cross-section.
    /// </summary>
    public static T Annulus<T>(GapParameters p, T slide)
        where T : struct, IReal<T>
    {
        double diameter = Math.Sqrt(4 * p.JointArea / Math.PI);
        return T.Min(Math.PI * diameter * T.Max(0, slide - p.Engagement), p.JointArea);
    }

    /// <summary>
    /// What rises through zero when the joint next changes: while it holds, the acceleration [m/s2] that is left beyond
    /// friction and what the heat has left of a tape; while it slides, the travel past the engagement [m].
    /// </summary>
    public double Moving(double pressure, ReadOnlySpan<double> y) => phase switch
    {
        JointPhase.Held => AccelerationAgainstHold(pressure, y),
        JointPhase.Slides => y[StateLayout.Slide] - p.Engagement,
        _ => -1,
    };

    /// <summary>
    /// What falls through zero when the joint comes to rest: its speed while it slides [m/s]; the travel past the
    /// engagement once it has opened [m], because bodies that are pushed together again are no open joint.
    /// </summary>
    public double Resting(ReadOnlySpan<double> y) => phase switch
    {
        JointPhase.Slides => y[StateLayout.SlideSpeed] + SlowestSpeed,
        JointPhase.Open => y[StateLayout.Slide] - p.Engagement,
        _ => 1,
    };

    private double AccelerationAgainstHold(double pressure, ReadOnlySpan<double> y)
    {
        double hold = Breakaway<Real>(y[StateLayout.Slide]);
        if (p.Film is { } film && y[StateLayout.Slide] == 0)
            hold += film.Strength * film.StrengthLeft(Layers(y));
        return Acceleration<Real>(pressure, hold);
    }

    /// <summary>Writes the slopes of travel, speed and film.</summary>
    public void Slopes<T>(T pressure, StateVector<T> y, Span<T> dydt)
        where T : struct, IReal<T>
    {
        dydt[StateLayout.Slide] = Moves ? y[StateLayout.SlideSpeed] : 0;
        dydt[StateLayout.SlideSpeed] = Moves ? Acceleration(pressure, Friction(y[StateLayout.Slide])) : 0;
        if (p.Film is { } film)
            film.Slopes(Layers(y.Values), new GapState<T>(p, y).Hot.Temperature, dydt.Slice(p.FirstLayer, FilmParameters.Layers));
    }

    private ReadOnlySpan<double> Layers(ReadOnlySpan<double> y) => y.Slice(p.FirstLayer, FilmParameters.Layers);

    /// <summary>Friction falls with the length still engaged [N].</summary>
    public T Friction<T>(T slide)
        where T : struct, IReal<T> => p.Sliding * Engaged(slide);

    /// <summary>So does what it takes to move the joint again after it has come to rest on the way [N].</summary>
    public T Breakaway<T>(T slide)
        where T : struct, IReal<T> => p.Breakaway * Engaged(slide);

    private T Engaged<T>(T slide)
        where T : struct, IReal<T> => T.Clamp(1 - slide / p.Engagement, 0, 1);

    /// <summary>
    /// Relative acceleration of the two bodies under gap pressure, friction and what presses them together [m/s2].
    /// </summary>
    public T Acceleration<T>(T pressure, T friction)
        where T : struct, IReal<T> =>
        ((pressure - p.OutsidePressure) * p.JointArea - friction) / p.ReducedMass - p.ClosingAcceleration;
}
