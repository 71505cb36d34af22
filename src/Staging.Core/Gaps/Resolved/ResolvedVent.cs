using Staging.Core.Discharge;

namespace Staging.Core.Gaps.Resolved;

/// <summary>Holes of one station, shared out over the cells they cover by the slice of a round hole that lies over each.</summary>
internal sealed class ResolvedVent
{
    private readonly VentParameters vent;
    private readonly double[] share;

    /// <param name="vent">The holes.</param>
    /// <param name="cellLength">Length of a cell [m].</param>
    /// <param name="cells">Cells in the tube.</param>
    public ResolvedVent(in VentParameters vent, double cellLength, int cells)
    {
        this.vent = vent;
        double radius = 0.5 * vent.Size.Diameter;
        int first = Math.Clamp((int)((vent.Station - radius) / cellLength), 0, cells - 1);
        int last = Math.Clamp((int)((vent.Station + radius) / cellLength), first, cells - 1);
        First = first;
        share = new double[last - first + 1];
        double sum = 0;
        for (int i = first; i <= last; i++)
            sum += share[i - first] = Slice((((i + 1) * cellLength) - vent.Station) / radius) - Slice((i * cellLength - vent.Station) / radius);
        if (sum > 0)
        {
            for (int k = 0; k < share.Length; k++)
                share[k] /= sum;
        }
        else
        {
            share[0] = 1;
        }
    }

    /// <summary>First covered cell, counted from the left of the tube as it was before the joint slid.</summary>
    public int First { get; }

    public bool IsLast => vent.IsLast;

    /// <summary>Share of the hole area over each covered cell [-].</summary>
    public ReadOnlySpan<double> Share => share;

    public OrificeSize Over(int k) => vent.Share(share[k]);

    /// <summary>Share of a unit circle's area to the left of z [-].</summary>
    private static double Slice(double z)
    {
        z = Math.Clamp(z, -1, 1);
        return 0.5 + (z * Math.Sqrt(1 - z * z) + Math.Asin(z)) / Math.PI;
    }
}
