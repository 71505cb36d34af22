namespace Staging.Core.Flight;

/// <summary>
/// Joins a subsonic and a supersonic correlation across the speed of sound by a smooth step from Mach 0.8 to 1.2, where
/// neither holds. Engineering judgement: drag rise of slender bodies begins near 0.8 to 0.9 and is complete by about
/// 1.2.
/// </summary>
internal static class TransonicBlend
{
    public const double From = 0.8;
    public const double To = 1.2;

    public static double Of(double M, double subsonic, double supersonic)
    {
        double x = Math.Clamp((M - From) / (To - From), 0, 1);
        double weight = x * x * (3 - 2 * x);
        return (1 - weight) * subsonic + weight * supersonic;
    }
}
