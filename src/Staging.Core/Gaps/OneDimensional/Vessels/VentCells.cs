using Staging.Core.Discharge;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Holes of one station, shared out over the cells they cover: by the slice of a round hole that lies over each, and
/// evenly where holes spread along the tube.
/// </summary>
internal sealed class VentCells
{
    private readonly VentParameters vent;
    private readonly double[] share;

    /// <param name="vent">The holes.</param>
    /// <param name="isLast">Whether it draws where the last vent does.</param>
    /// <param name="lastStirring">Share of the stirring of the last vent that reaches the nozzle plane [-].</param>
    /// <param name="cellLength">Length of a cell [m].</param>
    /// <param name="cells">Cells in the tube.</param>
    public VentCells(in VentParameters vent, bool isLast, double lastStirring, double cellLength, int cells)
    {
        this.vent = vent;
        IsLast = isLast;
        Stirring = lastStirring > 0 ? vent.Stirring / lastStirring : isLast ? 1 : 0;
        double middle = vent.Middle, half = 0.5 * (vent.Outlet.Size.Diameter + vent.Spread);
        int from = Math.Clamp((int)((middle - half) / cellLength), 0, cells - 1);
        int to = Math.Clamp((int)((middle + half) / cellLength), from, cells - 1);
        First = from;
        share = new double[to - from + 1];
        double sum = 0;
        for (int i = from; i <= to; i++)
            sum += share[i - from] = Before(((i + 1) * cellLength - middle) / half) - Before((i * cellLength - middle) / half);
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

    /// <summary>Whether it draws where the last vent does.</summary>
    public bool IsLast { get; }

    /// <summary>Share of its stirring that reaches the nozzle plane, over that of the last vent [-].</summary>
    public double Stirring { get; }

    /// <summary>Area of the holes [m2].</summary>
    public double Area => vent.Outlet.Size.Area;

    /// <summary>Index of the jacket behind the holes; -1 outside.</summary>
    public int Jacket => vent.Outlet.Jacket;

    /// <summary>Pressure behind the holes [Pa], where they lead outside.</summary>
    public double Behind => vent.Outlet.OutsidePressure;

    /// <summary>Share of the hole area over each covered cell [-].</summary>
    public ReadOnlySpan<double> Share => share;

    public OrificeSize Over(int k) => new(vent.Outlet.Size.Area * share[k], vent.Outlet.Size.Diameter, vent.Outlet.Size.Thickness);

    /// <summary>
    /// Share of the area that lies before z half-lengths from the middle [-]: of a circle, or of an even strip.
    /// </summary>
    private double Before(double z)
    {
        z = Math.Clamp(z, -1, 1);
        return vent.Spread > 0 ? 0.5 * (1 + z) : 0.5 + (z * Math.Sqrt(1 - z * z) + Math.Asin(z)) / Math.PI;
    }
}
