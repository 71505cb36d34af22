namespace Staging.Core.Gaps.Resolved;

/// <summary>A tube of piecewise constant bore: how much of each cell's cross-section is open to its neighbours.</summary>
internal sealed class TubeBore
{
    /// <summary>Cross-sections cell by cell [m2], for a tube whose left end does not move.</summary>
    public TubeBore(ReadOnlySpan<double> areas)
    {
        int n = areas.Length;
        OpenLeft = new double[1 + n + TubeArrays.Idle];
        OpenRight = new double[1 + n + TubeArrays.Idle];
        for (int i = 0; i < n; i++)
        {
            OpenLeft[1 + i] = i > 0 ? Math.Min(areas[i - 1], areas[i]) / areas[i] : 1;
            OpenRight[1 + i] = i < n - 1 ? Math.Min(areas[i + 1], areas[i]) / areas[i] : 1;
        }
    }

    /// <summary>Open share of the cross-section at the left face [-], at the index of the cell in its arrays.</summary>
    public double[] OpenLeft { get; }

    /// <summary>The same at the right face.</summary>
    public double[] OpenRight { get; }
}
