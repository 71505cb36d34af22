namespace Staging.Core.Gaps;

/// <summary>Mass [kg] and energy [J] of chambers, gap and jackets together, or what of them has come or left.</summary>
internal readonly record struct GapTotals(double Mass, double Energy)
{
    /// <summary>What all parcels of a lumped state hold: those that every gap has, chambers and jackets.</summary>
    public static GapTotals Of(GapParameters p, ReadOnlySpan<double> y)
    {
        double mass = 0, energy = 0;
        for (int at = StateLayout.FirstParcel; at < p.FirstShare; at += StateLayout.Parcel)
        {
            mass += y[at] + y[at + 1];
            energy += y[at + 2];
        }

        return new GapTotals(mass, energy);
    }

    public static GapTotals operator +(in GapTotals a, in GapTotals b) => new(a.Mass + b.Mass, a.Energy + b.Energy);
}
