namespace Staging.Core.Studies;

/// <summary>
/// An interval of an axis on which a condition holds. Both edges are values at which it was found to hold.
/// </summary>
public sealed class Window
{
    internal Window(double low, bool lowIsEnd, double high, bool highIsEnd) =>
        (Low, LowIsEndOfSearch, High, HighIsEndOfSearch) = (low, lowIsEnd, high, highIsEnd);

    /// <summary>Lower edge [Unit].</summary>
    public double Low { get; }

    /// <summary>Upper edge [Unit].</summary>
    public double High { get; }

    /// <summary>Whether the condition still held at the low end of the axis, so that no lower edge was found.</summary>
    public bool LowIsEndOfSearch { get; }

    /// <summary>
    /// Whether the condition still held at the high end of the axis, so that no upper edge was found.
    /// </summary>
    public bool HighIsEndOfSearch { get; }

    /// <summary>Both edges; an end of the search is marked.</summary>
    /// <returns>For example <c>39.1 to 411 (end of the search)</c>.</returns>
    public override string ToString() => Invariant.Text(
        $"{Low:G4}{(LowIsEndOfSearch ? " (end of the search)" : "")} to {High:G4}{(HighIsEndOfSearch ? " (end of the search)" : "")}");
}
