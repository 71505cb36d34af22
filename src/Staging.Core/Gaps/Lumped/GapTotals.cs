namespace Staging.Core.Gaps;

/// <summary>Mass [kg] and energy [J] of chambers, gap and jackets together, or what of them has come or left.</summary>
internal readonly record struct GapTotals(double Mass, double Energy)
{
    /// <summary>What all parcels of a lumped state hold: those that every gap has, chambers and jackets.</summary>
    public static GapTotals Of(GapParameters p, ReadOnlySpan<double> y)
    {
        GapTotals sum = Sum(y[..StateLayout.Slide]), more = Sum(y[StateLayout.Fixed..p.FirstShare]);
        return new GapTotals(sum.Mass + more.Mass, sum.Energy + more.Energy);
    }

    public static GapTotals operator +(in GapTotals a, in GapTotals b) => new(a.Mass + b.Mass, a.Energy + b.Energy);

    private static GapTotals Sum(ReadOnlySpan<double> parcels)
    {
        double mass = 0, energy = 0;
        for (int at = 0; at < parcels.Length; at += StateLayout.Parcel)
        {
            mass += parcels[at] + parcels[at + 1];
            energy += parcels[at + 2];
        }

        return new GapTotals(mass, energy);
    }
}
