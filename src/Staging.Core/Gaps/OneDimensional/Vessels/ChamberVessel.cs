using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// One booster chamber: a stirred volume with fragments, a nozzle to the rear and an opening into the tube.
/// </summary>
internal sealed class ChamberVessel
{
    private readonly ChamberParameters c;
    private readonly GapParameters p;
    private Parcel gas;
    private double unburnt;

    public ChamberVessel(ChamberParameters c, GapParameters p)
    {
        this.c = c;
        this.p = p;
        Mouth = new ChamberOpening(c.OpeningLaw);
        gas = new Parcel(c.Pressure * c.Volume / (p.Products.R * c.FlameTemperature), 0, c.Pressure * c.Volume / (p.Products.Gamma - 1));
        unburnt = c.Plates is { Mass: > 0 } ? 1 : 0;
        BurntAt = unburnt > 0 ? double.PositiveInfinity : 0;
    }

    /// <summary>The opening into the tube.</summary>
    public ChamberOpening Mouth { get; }

    /// <summary>When plates of its own have burnt [s]: infinite while they burn, 0 where there are none.</summary>
    public double BurntAt { get; private set; }

    public double Pressure => gas.Zone(p).PressureVolume / c.Volume;

    public bool HoldsGas => gas.HoldsGas;

    public GapTotals Totals => new(gas.Mass, gas.Energy);

    /// <summary>Time in which sound would sweep the chamber's volume through an area [m2] [s].</summary>
    public double SweepTime(double area)
    {
        Zone zone = gas.Zone(p);
        return c.Volume / (area * Math.Sqrt(zone.Gamma * zone.R * zone.Temperature));
    }

    /// <summary>Burns fragments from one time to another [s]; returns what they gave.</summary>
    public GapTotals Burn(double from, double to)
    {
        (from, to) = (SinceStart(from), SinceStart(to));
        double m = (c.Pulse?.Between(from, to) ?? 0) + BurnPlates(from, to), energy = m * p.Products.Cp * c.FlameTemperature;
        gas.Add(m, 0, energy);
        return new GapTotals(m, energy);
    }

    /// <summary>Lets the nozzle to the rear pass gas from one time to another [s]; returns what left.</summary>
    public GapTotals Exhaust(double from, double to)
    {
        double time = SinceStart(to) - SinceStart(from);
        if (!(c.Nozzle.Area > 0 && time > 0))
            return default;
        Passed passed = VesselVent.Pass(ConstantCoefficientLaw.Ideal, c.Nozzle, ref gas, c.Volume, time, p.OutsidePressure, p);
        return new GapTotals(passed.Mass, passed.Enthalpy);
    }

    /// <summary>
    /// Sets the opening to its size in the middle of a step that begins at a time, and the gas before it to what half
    /// the step of the last flow through an area [m2] leaves of it.
    /// </summary>
    public void Open(double time, double step, double area)
    {
        Mouth.Begin(Pressure, c.Volume, step);
        double middle = time + 0.5 * step, ahead = area * 0.5 * step;
        double grown = Math.Min(SinceStart(middle) / c.OpeningTime, 1);
        Mouth.Opening = new OrificeSize(c.Opening.Area * grown * grown, c.Opening.Diameter * grown, c.Opening.Thickness);
        Parcel half = gas;
        Take(ref half, ahead);
        Zone zone = half.Zone(p);
        Mouth.Chamber = new OrificeSide(zone.PressureVolume / c.Volume, zone.Temperature, new GasConstants(zone.R, zone.Gamma));
        Mouth.Fraction = zone.ProductFraction;
    }

    /// <summary>Takes out what the opening has passed, for an area times a time [m2 s].</summary>
    public void Give(double passed) => Take(ref gas, passed);

    private void Take(ref Parcel parcel, double passed) =>
        parcel.Add(-passed * Mouth.Products, -passed * (Mouth.Mass - Mouth.Products), -passed * Mouth.Energy);

    private double SinceStart(double time) => Math.Max(0, time - c.Start);

    /// <summary>Mass that plates burn [kg], at the chamber pressure of the middle of the time.</summary>
    private double BurnPlates(double from, double to)
    {
        double time = to - from;
        if (c.Plates is not { } plates || !(unburnt > 0 && time > 0))
            return 0;
        Parcel half = gas;
        double ahead = Math.Min(0.5 * time * Rate(half), unburnt) * plates.Mass;
        half.Add(ahead, 0, ahead * p.Products.Cp * c.FlameTemperature);
        double rate = Rate(half), share = time * rate;
        if (share >= unburnt)
        {
            share = unburnt;
            BurntAt = c.Start + from + unburnt / rate;
        }

        unburnt -= share;
        return plates.Mass * share;
    }

    /// <summary>Rate at which the burnt share of the plates grows [1/s].</summary>
    private double Rate(in Parcel at) => c.Plates!.Rate(at.Zone(p).PressureVolume / c.Volume);
}
