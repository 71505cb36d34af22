namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// A tube of piecewise constant bore: cross-sections cell by cell, and how much of each is open to its neighbours.
/// </summary>
internal sealed class TubeBore
{
    /// <param name="areas">Cross-sections cell by cell [m2].</param>
    /// <param name="room">Cells that a receding left end may add, as wide as the first.</param>
    public TubeBore(ReadOnlySpan<double> areas, int room = 0)
    {
        int n = areas.Length, first = room + TubeArrays.Border, all = first + n + TubeArrays.Idle;
        OpenLeft = new double[all];
        OpenRight = new double[all];
        Relative = new double[all];
        Diameter = new double[all];
        Array.Fill(OpenLeft, 1, 0, first);
        Array.Fill(OpenRight, 1, 0, first);
        FirstArea = areas[0];
        for (int i = 0; i < all; i++)
        {
            double area = areas[Math.Clamp(i - first, 0, n - 1)];
            Relative[i] = area / FirstArea;
            Diameter[i] = Math.Sqrt(4 * area / Math.PI);
        }

        for (int i = 0; i < n; i++)
        {
            OpenLeft[first + i] = i > 0 ? Math.Min(areas[i - 1], areas[i]) / areas[i] : 1;
            OpenRight[first + i] = i < n - 1 ? Math.Min(areas[i + 1], areas[i]) / areas[i] : 1;
        }
    }

    /// <summary>
    /// The bore of a gap in cells of one length [m], each as wide as its volume asks; null where the tube has one bore.
    /// </summary>
    public static TubeBore? Of(BoreProfile profile, int cells, double cellLength, int room)
    {
        if (profile.IsUniform)
            return null;
        var areas = new double[cells];
        for (int i = 0; i < cells; i++)
            areas[i] = (profile.VolumeTo((i + 1) * cellLength) - profile.VolumeTo(i * cellLength)) / cellLength;
        return new TubeBore(areas, room);
    }

    /// <summary>Cross-section of the first cell [m2].</summary>
    public double FirstArea { get; }

    /// <summary>Open share of the cross-section at the left face [-], at the index of the cell in its arrays.</summary>
    public double[] OpenLeft { get; }

    /// <summary>The same at the right face.</summary>
    public double[] OpenRight { get; }

    /// <summary>Cross-section over that of the first cell [-].</summary>
    public double[] Relative { get; }

    /// <summary>Diameter of a round cell [m].</summary>
    public double[] Diameter { get; }
}
