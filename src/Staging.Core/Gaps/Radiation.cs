namespace Staging.Core.Gaps;

/// <summary>What a black body radiates.</summary>
internal static class Radiation
{
    /// <summary>Stefan-Boltzmann constant [W/(m2 K4)], CODATA 2018.</summary>
    public const double StefanBoltzmann = 5.670374419e-8;

    /// <summary>A temperature to the fourth power.</summary>
    public static double Fourth(double temperature) => temperature * temperature * (temperature * temperature);
}
