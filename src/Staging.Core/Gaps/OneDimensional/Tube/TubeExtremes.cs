namespace Staging.Core.Gaps.OneDimensional;

/// <summary>What one look at all cells finds: greatest |u| + a, least density, least pressure.</summary>
internal readonly record struct TubeExtremes(double Fastest, double MinDensity, double MinPressure)
{
    /// <summary>Whether every cell holds a gas; not a number counts as none.</summary>
    public bool AllPositive => MinDensity > 0 && MinPressure > 0 && double.IsFinite(Fastest);
}
