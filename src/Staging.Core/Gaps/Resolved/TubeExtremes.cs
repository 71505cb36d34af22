namespace Staging.Core.Gaps.Resolved;

/// <summary>What one look at all cells finds: greatest |u| + a, least density, least pressure.</summary>
internal readonly record struct TubeExtremes(double Fastest, double LeastDensity, double LeastPressure)
{
    /// <summary>Whether every cell holds a gas; not a number counts as none.</summary>
    public bool AllPositive => LeastDensity > 0 && LeastPressure > 0 && double.IsFinite(Fastest);
}
