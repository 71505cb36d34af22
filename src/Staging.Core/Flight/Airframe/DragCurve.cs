namespace Staging.Core.Flight;

/// <summary>
/// A drag table in SI numbers: straight lines of half the drag area against Mach number, D = rho v |v| *
/// HalfArea(M).
/// </summary>
internal sealed class DragCurve
{
    /// <summary>
    /// How far a line reaches below its lower corner [-]: a Mach number exactly on a corner lies on the line above it,
    /// and leaves it when it falls.
    /// </summary>
    private const double Overlap = 1e-12;

    private readonly DragSegment[] lines;

    public DragCurve(double referenceArea, ReadOnlySpan<double> mach, ReadOnlySpan<double> coefficient)
    {
        double half = 0.5 * referenceArea;
        lines = new DragSegment[mach.Length + 1];
        int made = 0;
        if (mach[0] > 0)
            lines[made++] = DragSegment.Fixed(half * coefficient[0]);
        for (int i = 0; i < mach.Length; i++)
        {
            double slope = i + 1 < mach.Length ? half * (coefficient[i + 1] - coefficient[i]) / (mach[i + 1] - mach[i]) : 0;
            var line = new DragSegment(half * coefficient[i] - slope * mach[i], slope, double.NegativeInfinity, double.PositiveInfinity);
            if (made == 0)
            {
                lines[made++] = line;
            }
            else if (line.Slope != lines[made - 1].Slope)
            {
                // A corner only where the slope changes: a constant is one line without ends.
                lines[made - 1] = lines[made - 1] with { High = mach[i] };
                lines[made++] = line with { Low = mach[i] * (1 - Overlap) };
            }
        }
    }

    /// <summary>A line by its number.</summary>
    public DragSegment this[int line] => lines[line];

    /// <summary>Number of the line that holds a Mach number; a corner belongs to the line above it.</summary>
    public int LineOf(double M)
    {
        int i = 0;
        while (M >= lines[i].High)
            i++;
        return i;
    }

    /// <summary>Half the drag area [m2] at a Mach number.</summary>
    public double HalfArea(double M) => lines[LineOf(M)].HalfArea(M);
}
