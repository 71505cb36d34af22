namespace Staging.Core.Campaign.Drawing;

/// <summary>What a number may be.</summary>
/// <param name="Usual">The value to which a failing case is shrunk.</param>
/// <param name="Low">Least that is realistic.</param>
/// <param name="High">Most that is realistic.</param>
/// <param name="Least">Least that the library accepts.</param>
/// <param name="Most">Most that it accepts.</param>
internal readonly record struct Span(double Usual, double Low, double High, double Least, double Most)
{
    /// <summary>Decades below the greater limit that are drawn where the lesser one is zero.</summary>
    private const double Decades = 9;

    /// <summary>A realistic value at a share of the way [-]: evenly in the logarithm where the ends are far apart.</summary>
    public double Realistic(double share) =>
        Low > 0 && High > 3 * Low ? Low * Math.Pow(High / Low, share) : Low + (High - Low) * share;

    /// <summary>A value anywhere within the limits: a limit itself in one of five cases.</summary>
    public double Anywhere(double share)
    {
        if (share < 0.1)
            return Least;
        if (share < 0.2)
            return Most;
        double s = (share - 0.2) / 0.8;
        if (Least < 0)
            return s < 0.5 ? -Scaled(0, -Least, 2 * s) : Scaled(0, Most, 2 * s - 1);
        return Scaled(Least, Most, s);
    }

    private static double Scaled(double least, double most, double s)
    {
        if (most <= 0)
            return 0;
        double from = least > 0 ? least : most * Math.Pow(10, -Decades);
        return Math.Clamp(from * Math.Pow(most / from, s), least, most);
    }
}
