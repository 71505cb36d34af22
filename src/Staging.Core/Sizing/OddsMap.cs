using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>How likely a gap lights, over its length and its vent area: every cell counts the same cases.</summary>
public sealed class OddsMap
{
    internal OddsMap(SweepMap<GapOdds> cells, int cases, long runs) => (Cells, Cases, Runs) = (cells, cases, runs);

    /// <summary>The counts of each cell: gap length across in mm, total vent area up in mm2.</summary>
    public SweepMap<GapOdds> Cells { get; }

    /// <summary>Cases of each cell.</summary>
    public int Cases { get; }

    /// <summary>
    /// Gap runs that were made; the other cells of a case are surrounded by one answer and have it too.
    /// </summary>
    public long Runs { get; }

    /// <summary>
    /// The cell with the highest odds; of equal ones that with the least vent area, then the shortest gap.
    /// </summary>
    public GapOdds Best => Cells.Results[BestIndex];

    /// <summary>Gap length of <see cref="Best"/>.</summary>
    public Length BestGap => Length.FromMillimeters(Cells.Across.Values[BestIndex % Cells.Across.Values.Length]);

    /// <summary>Total vent area of <see cref="Best"/>.</summary>
    public Area BestArea => Area.FromSquareMillimeters(Cells.Up.Values[BestIndex / Cells.Across.Values.Length]);

    /// <summary>Counts of one cell.</summary>
    /// <param name="gap">Which gap length, from 0.</param>
    /// <param name="area">Which vent area, from 0.</param>
    /// <returns>The counts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such value.</exception>
    public GapOdds At(int gap, int area) => Cells.At(gap, area);

    /// <summary>Writes lengths, areas, odds and counts as comma-separated values, a line a cell.</summary>
    /// <param name="writer">Where to.</param>
    public void WriteCsv(TextWriter writer) => Cells.WriteCsv(writer, GapOdds.Measures);

    /// <summary>The best cell, and what the map took.</summary>
    /// <returns>Two lines.</returns>
    public override string ToString() => Invariant.Text($"Best at a gap of {BestGap.Millimeters:G4} mm with "
        + $"{BestArea.SquareMillimeters:G4} mm2 of vents: {Best.Odds.Estimate:P1} ({Best}).\n")
        + Invariant.Text($"{Cells.Results.Length} cells of {Cases} cases each by {Runs} runs.");

    private int BestIndex => Enumerable.Range(0, Cells.Results.Length).MaxBy(i => Cells.Results[i].Lit);
}
