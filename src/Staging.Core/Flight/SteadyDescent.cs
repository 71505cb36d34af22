namespace Staging.Core.Flight;

/// <summary>
/// The speed to which a descent with fixed drag area settles. With w = v^2 the motion reads dw/dh = 2 (k w - g), k = rho CdA/(2 m): a
/// linear equation whose solutions all close on one, w = (g/k)(1 + e + e^2 + e'/(2k) + ...), within a height of 1/(2k). Here
/// e = (g'/g - rho'/rho)/(2k), primes are derivatives by height, and the series is the iteration w = (g + w'/2)/k carried two times.
/// </summary>
/// <param name="SpeedSquared">v^2 on the settled solution [m2/s2].</param>
/// <param name="Remainder">Estimate of the first neglected terms over the sum [-].</param>
internal readonly record struct SteadyDescent(double SpeedSquared, double Remainder)
{
    /// <summary>Largest remainder at which the series is used [-]; half of it enters the speed and the time of descent.</summary>
    private const double MostRemainder = 1e-8;

    /// <summary>Height over which density is differenced where there is no polynomial [m].</summary>
    private const double DifferenceStep = 10;

    /// <summary>Whether the series is good enough to be used.</summary>
    public bool Settles => Remainder <= MostRemainder;

    /// <summary>The settled speed at a height above the site [m].</summary>
    public static SteadyDescent At(in DescentLaw law, double h)
    {
        AirColumn air = law.Air;
        double radius = law.EarthRadius;
        (double rho, double slope, double curvature) = Density(air, h);
        if (!(rho > 0))
            return new SteadyDescent(double.PositiveInfinity, double.PositiveInfinity);
        double q = 1 / (1 + (h + air.SiteElevation) / radius);
        double g = law.SeaLevelGravity * q * q;
        double k = 0.5 * rho * law.DragAreaPerMass;
        double rhoLog = slope / rho;                              // rho'/rho
        double gLog = -2 * q / radius;                            // g'/g
        double L = gLog - rhoLog;
        double dL = 2 * (q / radius) * (q / radius) - curvature / rho + rhoLog * rhoLog;
        double e = L / (2 * k);
        double de = dL / (2 * k) - e * rhoLog;                    // k'/k = rho'/rho
        double second = e * e + de / (2 * k);
        // The next terms are e^3, e e'/(2k) and the like: products of the last two orders. Six counts their number generously.
        double remainder = 6 * (Math.Abs(e) * (e * e + Math.Abs(de / (2 * k))));
        return new SteadyDescent(g / k * (1 + e + second), remainder);
    }

    /// <summary>Density and its first two derivatives by height.</summary>
    private static (double Rho, double Slope, double Curvature) Density(AirColumn air, double h)
    {
        int index = AirColumn.CellOf(h);
        ReadOnlySpan<double> c = air.Cell(index);
        if (c.IsEmpty)
        {
            double below = air.At(h - DifferenceStep).Density_kg_per_m3, here = air.At(h).Density_kg_per_m3, above = air.At(h + DifferenceStep).Density_kg_per_m3;
            return (here, (above - below) / (2 * DifferenceStep), (above - 2 * here + below) / (DifferenceStep * DifferenceStep));
        }

        const double Scale = 2 / AirColumn.CellHeight;
        double u = (h - AirColumn.MiddleOf(index)) * Scale;
        double p = 0, p1 = 0, p2 = 0;
        for (int i = AirColumn.Terms - 1; i >= 0; i--)
        {
            p2 = p2 * u + p1;
            p1 = p1 * u + p;
            p = p * u + c[i];
        }

        return (p, p1 * Scale, 2 * p2 * Scale * Scale);
    }
}
