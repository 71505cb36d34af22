namespace Staging.Core.Campaign.Drawing;

/// <summary>
/// The values of one case, each drawn by its name from seed and number of the case alone: a value that is put back to its usual
/// one moves no other, so a failing case can be shrunk value by value.
/// </summary>
internal sealed class Draws
{
    /// <summary>Shares of values that are drawn from the whole accepted range, one of which each case at the edges takes.</summary>
    private static readonly double[] Wildness = [0.04, 0.15, 1];

    private readonly IReadOnlyDictionary<string, double>? kept;
    private readonly SortedDictionary<string, double> drawn = new(StringComparer.Ordinal);
    private readonly ulong key;
    private readonly double wild;

    /// <summary>The draws of a case.</summary>
    public Draws(ulong seed, long index, DrawRange range)
    {
        key = Mixed(Mixed(seed + 0x9E3779B97F4A7C15) ^ (ulong)index);
        wild = range == DrawRange.Realistic ? 0 : Wildness[Mixed(key) % (ulong)Wildness.Length];
    }

    /// <summary>The draws of a kept case: what it does not name is usual.</summary>
    public Draws(IReadOnlyDictionary<string, double> kept) => this.kept = kept;

    /// <summary>What was drawn and differs from the usual.</summary>
    public IReadOnlyDictionary<string, double> Unusual => drawn;

    /// <summary>A number.</summary>
    public double Number(string name, in Span span)
    {
        if (kept is not null)
            return Noted(name, kept.TryGetValue(name, out double value) ? value : span.Usual, span.Usual);
        ulong own = Mixed(key ^ Named(name));
        double share = Share(Mixed(own + 1));
        return Noted(name, Share(own) < wild ? span.Anywhere(share) : span.Realistic(share), span.Usual);
    }

    /// <summary>A whole number.</summary>
    public int Count(string name, in Span span) => (int)Math.Round(Number(name, span));

    /// <summary>One of some choices, evenly; the first of them is the usual one.</summary>
    public int Choice(string name, int choices)
    {
        if (kept is not null)
            return (int)Noted(name, kept.TryGetValue(name, out double value) ? Math.Clamp(value, 0, choices - 1) : 0, 0);
        return (int)Noted(name, Mixed(key ^ Named(name)) % (ulong)choices, 0);
    }

    private double Noted(string name, double value, double usual)
    {
        if (value != usual)
            drawn[name] = value;
        return value;
    }

    private static double Share(ulong bits) => (bits >> 11) * (1.0 / (1UL << 53));

    /// <summary>Fowler-Noll-Vo hash of a name, 64 bit.</summary>
    private static ulong Named(string name)
    {
        ulong hash = 14695981039346656037;
        foreach (char c in name)
            hash = (hash ^ c) * 1099511628211;
        return hash;
    }

    /// <summary>The finaliser of SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, OOPSLA 2014).</summary>
    private static ulong Mixed(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
