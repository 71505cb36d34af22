namespace Staging.Core.Gaps;

/// <summary>
/// Forces and motion of the joint, the warming of a tape over its seam, and the annulus through which the gap vents
/// once it has opened.
/// </summary>
internal readonly struct JointMechanics(GapParameters p, JointPhase phase)
{
    private bool Moves => phase != JointPhase.Held;

    /// <summary>
    /// Growth of the tube [m3/s]: while the joint slides; once it has opened the tube ends where it was.
    /// </summary>
    public double VolumeRate(ReadOnlySpan<double> y) => phase == JointPhase.Slides ? p.JointArea * y[StateLayout.SlideSpeed] : 0;

    /// <summary>Lengthening of the tube [m]: the travel, up to the engagement.</summary>
    public static double Extension(GapParameters p, ReadOnlySpan<double> y) => Math.Min(y[StateLayout.Slide], p.Engagement);

    /// <summary>Area of the annulus between the bodies at a state [m2].</summary>
    public static double Annulus(GapParameters p, ReadOnlySpan<double> y) => Annulus(p, y[StateLayout.Slide]);

    /// <summary>
    /// Area of the annulus between the bodies [m2]: the circumference times the travel past the engagement, up to the
    /// whole cross-section.
    /// </summary>
    public static double Annulus(GapParameters p, double slide)
    {
        double travel = Math.Max(0, slide - p.Engagement), diameter = Math.Sqrt(4 * p.JointArea / Math.PI);
        return Math.Min(Math.PI * diameter * travel, p.JointArea);
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

    private double AccelerationAgainstHold(double pressure, ReadOnlySpan<double> y)
    {
        double hold = Breakaway(y[StateLayout.Slide]);
        if (p.Film is { } film && y[StateLayout.Slide] == 0)
            hold += film.Strength * film.StrengthLeft(Layers(y));
        return Acceleration(pressure, hold);
    }

    /// <summary>Writes the slopes of travel, speed and film.</summary>
    public void Slopes(double pressure, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[StateLayout.Slide] = Moves ? y[StateLayout.SlideSpeed] : 0;
        dydt[StateLayout.SlideSpeed] = Moves ? Acceleration(pressure, Friction(y[StateLayout.Slide])) : 0;
        if (p.Film is { } film)
            film.Slopes(Layers(y), new GapState(p, y).Hot.Temperature, dydt.Slice(p.FirstLayer, FilmParameters.Layers));
    }

    private ReadOnlySpan<double> Layers(ReadOnlySpan<double> y) => y.Slice(p.FirstLayer, FilmParameters.Layers);

    /// <summary>Friction falls with the length still engaged [N].</summary>
    public double Friction(double slide) => p.Sliding * Engaged(slide);

    /// <summary>So does what it takes to move the joint again after it has come to rest on the way [N].</summary>
    public double Breakaway(double slide) => p.Breakaway * Engaged(slide);

    private double Engaged(double slide) => Math.Clamp(1 - slide / p.Engagement, 0, 1);

    /// <summary>
    /// Relative acceleration of the two bodies under gap pressure, friction and what presses them together [m/s2].
    /// </summary>
    public double Acceleration(double pressure, double friction) =>
        ((pressure - p.OutsidePressure) * p.JointArea - friction) / p.ReducedMass - p.ClosingAcceleration;
}
