namespace Staging.Core.Discharge;

/// <summary>
/// The Reader-Harris/Gallagher (1998) equation of ISO 5167-2:2003, equation 4, and its uncertainty, on plain numbers.
/// </summary>
internal static class ReaderHarrisGallagher
{
    private const double Inch = 0.0254;

    /// <summary>Discharge coefficient C [-] for beta = d/D, pipe diameter D [m] and pipe Reynolds number.</summary>
    public static double Coefficient(double beta, double diameter, PressureTappings tappings, double reynolds)
    {
        (double l1, double l2) = tappings switch
        {
            PressureTappings.Corner => (0.0, 0.0),
            PressureTappings.DAndHalfD => (1.0, 0.47),
            _ => (Inch / diameter, Inch / diameter),
        };
        double b2 = beta * beta;
        double b4 = b2 * b2;
        double a = Math.Pow(19000 * beta / reynolds, 0.8);
        double m2 = 2 * l2 / (1 - beta);
        double c = 0.5961 + 0.0261 * b2 - 0.216 * b4 * b4
            + 0.000521 * Math.Pow(1e6 * beta / reynolds, 0.7)
            + (0.0188 + 0.0063 * a) * Math.Pow(beta, 3.5) * Math.Pow(1e6 / reynolds, 0.3)
            + (0.043 + 0.080 * Math.Exp(-10 * l1) - 0.123 * Math.Exp(-7 * l1)) * (1 - 0.11 * a) * b4 / (1 - b4)
            - 0.031 * (m2 - 0.8 * Math.Pow(m2, 1.1)) * Math.Pow(beta, 1.3);
        // 71.12 mm is 2.8 inches.
        return diameter < 2.8 * Inch ? c + 0.011 * (0.75 - beta) * (2.8 - diameter / Inch) : c;
    }

    /// <summary>Relative uncertainty of C [-] at 95 %; ISO 5167-2:2003, 5.3.3.1.</summary>
    public static double Uncertainty(double beta, double diameter, double reynolds)
    {
        double percent = beta < 0.2 ? 0.7 - beta : beta <= 0.6 ? 0.5 : 1.667 * beta - 0.5;
        if (diameter < 2.8 * Inch)
            percent += 0.9 * (0.75 - beta) * (2.8 - diameter / Inch);
        if (beta > 0.5 && reynolds < 10e3)
            percent += 0.5;
        return percent / 100;
    }
}
