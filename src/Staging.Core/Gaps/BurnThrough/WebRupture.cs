namespace Staging.Core.Gaps;

/// <summary>Where and how thick the last web of an end burner breaks under the pressure of its chamber.</summary>
/// <remarks>
/// <para>
/// The burning face is a sphere of radius R_c, the length burnt, about the ignition point, so the web is thinnest on
/// the axis: h(s) = h0 + s^2/(2 R_c). Taken as a plate over each circle of radius s, its bending stress is
/// sigma = k dp (s/h)^2, with k = 3/4 at the edge of a clamped plate and 3 (3 + nu)/8 = 1.24 in the middle of a simply
/// supported one (S. P. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, articles 16
/// and 17, from memory; nu = 0.3).
/// </para>
/// <para>
/// With beta = sqrt(k dp/sigma) it breaks where h falls to beta s first. Over a long grain that is the wall, s = R: the
/// whole web breaks off. Over a short one, R_c beta &lt; R, it is s = beta R_c: a cap breaks out, and a ring is left.
/// </para>
/// </remarks>
internal readonly struct WebRupture
{
    /// <summary>The rupture of a web.</summary>
    /// <param name="radius">Radius of the grain [m].</param>
    /// <param name="burnt">Length burnt [m].</param>
    /// <param name="overpressure">Chamber pressure above that beyond the web [Pa].</param>
    /// <param name="strength">Modulus of rupture of the propellant [Pa].</param>
    /// <param name="plateFactor">Factor k of the stress [-].</param>
    public WebRupture(double radius, double burnt, double overpressure, double strength, double plateFactor)
    {
        double beta = Math.Sqrt(plateFactor * overpressure / strength);
        IsWhole = beta * burnt >= radius;
        Radius = IsWhole ? radius : beta * burnt;
        Edge = beta * Radius;
        Sag = Radius * Radius / (2 * burnt);
    }

    /// <summary>Whether all of the web breaks off; otherwise a ring is left round the hole.</summary>
    public bool IsWhole { get; }

    /// <summary>Radius of what breaks out [m].</summary>
    public double Radius { get; }

    /// <summary>Thickness at its edge [m].</summary>
    public double Edge { get; }

    /// <summary>Thickness on the axis [m].</summary>
    public double Axis => Edge - Sag;

    /// <summary>Mean thickness by area [m].</summary>
    public double Mean => Edge - 0.5 * Sag;

    /// <summary>Volume of what breaks out [m3].</summary>
    public double Volume => Math.PI * Radius * Radius * Mean;

    /// <summary>Depth of the dome over the radius that breaks out [m].</summary>
    private double Sag { get; }
}
