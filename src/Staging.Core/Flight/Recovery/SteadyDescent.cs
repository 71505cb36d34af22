namespace Staging.Core.Flight;

/// <summary>
/// The speed to which a descent with fixed drag area settles. With w = v^2 the motion reads dw/dh = 2 (k w - g), k =
/// rho CdA/(2 m): a linear equation whose solutions all converge to one within a height of 1/(2k). That solution is w =
/// (g/k) s, where s is found by iteration, s &lt;- 1 + (L s + s')/(2k) with L = (ln(g/k))' and primes for derivatives
/// by height, carried three times from s = 1.
/// </summary>
/// <param name="SpeedSquared">v^2 on the settled solution [m2/s2].</param>
/// <param name="Remainder">Estimate of the first neglected terms over the sum [-].</param>
/// <param name="TwoK">2k = rho CdA/m [1/m]: a residue falls by e over its reciprocal.</param>
/// <param name="TwoKSlope">Its derivative by height [1/m2].</param>
/// <param name="Gravity">Gravity at this height [m/s2].</param>
internal readonly record struct SteadyDescent(double SpeedSquared, double Remainder, double TwoK, double TwoKSlope, double Gravity)
{
    /// <summary>
    /// Largest remainder at which the series is used [-]; half of it enters the speed and the time of descent.
    /// </summary>
    private const double MaxRemainder = 1e-8;

    /// <summary>Height over which density is differenced where there is no polynomial [m].</summary>
    private const double DifferenceStep = 10;

    /// <summary>
    /// Largest second or third term of the series [-]: where the remainder is small they are below 1e-4, but for air in
    /// which the first passes zero.
    /// </summary>
    private const double LargestTerm = 1e-3;

    /// <summary>
    /// Longest 1/(2k) for which the series is used [m], a judgement: its third power multiplies the round-off in the
    /// derivatives of density. Over longer ones a body hardly settles, and stability does not bind the full equation.
    /// </summary>
    private const double LongestSettling = 1000;

    /// <summary>Whether the series is good enough to be used.</summary>
    public bool Settles => Remainder <= MaxRemainder && TwoK * LongestSettling >= 1;

    /// <summary>The settled speed at a height above the site [m].</summary>
    public static SteadyDescent At(in DescentLaw law, double h)
    {
        int index = SiteColumn.CellOf(h);
        ReadOnlySpan<double> c = law.Site.Cell(index);
        if (c.IsEmpty)
            return NearKink(law, h);
        const double Scale = 2 / SiteColumn.CellHeight;
        double u = (h - SiteColumn.MiddleOf(index)) * Scale;
        double p = 0, p1 = 0, p2 = 0, p3 = 0;
        for (int i = SiteColumn.Terms - 1; i >= 0; i--)
        {
            p3 = Math.FusedMultiplyAdd(p3, u, p2);
            p2 = Math.FusedMultiplyAdd(p2, u, p1);
            p1 = Math.FusedMultiplyAdd(p1, u, p);
            p = Math.FusedMultiplyAdd(p, u, c[i]);
        }

        if (!(p > 0))
            return new SteadyDescent(double.PositiveInfinity, double.PositiveInfinity, 0, 0, 0);
        double a = law.Site.PerDistance(h);
        double twoK = p * law.DragAreaPerMass, halfK = 1 / twoK;                          // halfK is 1/(2k)
        double scaled = halfK * law.DragAreaPerMass * Scale;                              // Scale/rho
        double r = p1 * scaled, r2 = 2 * p2 * Scale * scaled, r3 = 6 * p3 * Scale * Scale * scaled;
        // R = (ln rho)' and its derivatives; (ln g)' = -2a with a' = -a^2.
        double R = r, dR = r2 - r * r, ddR = r3 - 3 * r2 * r + 2 * r * r * r;
        double L = -2 * a - R, dL = 2 * a * a - dR, ddL = -4 * a * a * a - ddR;
        double e = L * halfK;                                                             // (1/(2k))' = -R/(2k)
        double de = dL * halfK - e * R;
        double dde = ddL * halfK - dL * halfK * R - de * R - e * dR;
        double second = e * e + de * halfK;
        double dsecond = 2 * e * de + dde * halfK - de * halfK * R;
        double third = e * second + dsecond * halfK;
        // In air of exponentially decreasing density the terms are 1, e, 2 e^2, 6 e^3, 24 e^4: the next is about 4 e
        // times the last.
        double remainder = Math.Max(Math.Abs(second), Math.Abs(third)) <= LargestTerm
            ? 4 * Math.Abs(e) * Math.Max(Math.Abs(third), 3 * e * second)
            : double.PositiveInfinity;
        double g = law.Site.Gravity(h);
        return new SteadyDescent(2 * halfK * g * (1 + e + second + third), Math.Abs(remainder), twoK, R * twoK, g);
    }

    /// <summary>
    /// Where the profile has a kink: first order and its square, with density differenced. The kink itself is passed
    /// within 1/(2k).
    /// </summary>
    private static SteadyDescent NearKink(in DescentLaw law, double h)
    {
        double below = law.Site.At(h - DifferenceStep).Density_kg_per_m3, rho = law.Site.At(h).Density_kg_per_m3,
            above = law.Site.At(h + DifferenceStep).Density_kg_per_m3;
        if (!(rho > 0))
            return new SteadyDescent(double.PositiveInfinity, double.PositiveInfinity, 0, 0, 0);
        double halfK = 1 / (rho * law.DragAreaPerMass);
        double R = (above - below) / (2 * DifferenceStep * rho);
        double e = (-2 * law.Site.PerDistance(h) - R) * halfK;
        // The second term is 2 e^2 as in air of exponentially decreasing density, accurate to about a third; this cell
        // is a small part of a descent.
        double g = law.Site.Gravity(h);
        return new SteadyDescent(2 * halfK * g * (1 + e + 2 * e * e), ShareOfKink * e * e, 1 / halfK, R / halfK, g);
    }

    /// <summary>
    /// Part of the error near a kink that enters a whole descent: a cell of 1 km in several [-]. Judgement.
    /// </summary>
    private const double ShareOfKink = 0.1;
}
