namespace Staging.Core.Gaps;

/// <summary>Forces and motion of the joint, the warming of a tape over its seam, and the annulus through which the gap vents once it has opened.</summary>
internal readonly struct JointMechanics(GapParameters p, JointPhase phase)
{
    /// <summary>Whether the joint moves.</summary>
    public bool Moves => phase != JointPhase.Held;

    /// <summary>Growth of the tube [m3/s]: while the joint slides; once it has opened the tube ends where it was.</summary>
    public double VolumeRate(ReadOnlySpan<double> y) => phase == JointPhase.Slides ? p.JointArea * y[GapState.SlideSpeed] : 0;

    /// <summary>Lengthening of the tube [m]: the travel, up to the engagement.</summary>
    public static double Extension(GapParameters p, ReadOnlySpan<double> y) => Math.Min(y[GapState.Slide], p.Engagement);

    /// <summary>
    /// Area of the annulus between the bodies [m2]: the circumference times the travel past the engagement, up to the whole cross-section.
    /// </summary>
    public static double Annulus(GapParameters p, ReadOnlySpan<double> y)
    {
        double travel = Math.Max(0, y[GapState.Slide] - p.Engagement), diameter = Math.Sqrt(4 * p.JointArea / Math.PI);
        return Math.Min(Math.PI * diameter * travel, p.JointArea);
    }

    /// <summary>
    /// Acceleration that would start the joint, or that ends its sliding [m/s2]: above zero it moves. A tape holds beside the friction, with
    /// what the heat has left of its strength.
    /// </summary>
    public double AccelerationAgainstHold(double pressure, ReadOnlySpan<double> y)
    {
        double hold = p.Breakaway;
        if (p.Film is { } film && y[GapState.Slide] == 0)
            hold += film.Strength * film.StrengthLeft(Layers(y));
        return Acceleration(pressure, hold);
    }

    /// <summary>Writes the slopes of travel, speed and film.</summary>
    public void Slopes(double pressure, double gas, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[GapState.Slide] = Moves ? y[GapState.SlideSpeed] : 0;
        dydt[GapState.SlideSpeed] = Moves ? Acceleration(pressure, Friction(y[GapState.Slide])) : 0;
        if (p.Film is { } film)
            film.Slopes(Layers(y), gas, dydt.Slice(GapParameters.FirstLayer, FilmParameters.Layers));
    }

    private static ReadOnlySpan<double> Layers(ReadOnlySpan<double> y) => y.Slice(GapParameters.FirstLayer, FilmParameters.Layers);

    /// <summary>Friction falls with the length still engaged [N].</summary>
    private double Friction(double slide) => p.Sliding * Math.Clamp(1 - slide / p.Engagement, 0, 1);

    /// <summary>Relative acceleration of the two bodies under gap pressure, friction and what presses them together [m/s2].</summary>
    private double Acceleration(double pressure, double friction) =>
        ((pressure - p.OutsidePressure) * p.JointArea - friction) / p.ReducedMass - p.ClosingAcceleration;
}
