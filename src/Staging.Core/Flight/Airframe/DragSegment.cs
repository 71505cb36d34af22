namespace Staging.Core.Flight;

/// <summary>
/// One straight line of a drag table: half the drag area [m2] as a function of the Mach number, with the Mach numbers
/// at which the next line takes over. A flight stays on one line until its Mach number crosses an end, so that every
/// step is smooth.
/// </summary>
/// <param name="Intercept">Half the drag area the line has at Mach 0 [m2].</param>
/// <param name="Slope">Its change a Mach number [m2].</param>
/// <param name="Low">Lower end [-]; minus infinity on the first line.</param>
/// <param name="High">Upper end [-]; infinity on the last line.</param>
internal readonly record struct DragSegment(double Intercept, double Slope, double Low, double High)
{
    /// <summary>A drag area that does not depend on the Mach number.</summary>
    public static DragSegment Fixed(double halfArea) => new(halfArea, 0, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Half the drag area [m2]; beyond the ends the line continues.</summary>
    public double HalfArea(double M) => Math.FusedMultiplyAdd(Slope, M, Intercept);
}
