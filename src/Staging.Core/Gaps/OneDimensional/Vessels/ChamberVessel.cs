using Staging.Core.Discharge;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// One booster chamber: a stirred volume with fragments or a ring, a nozzle to the rear and an opening into the tube.
/// </summary>
internal sealed class ChamberVessel
{
    private readonly ChamberParameters c;
    private readonly GapParameters p;
    private Parcel gas;

    /// <summary>
    /// Share that is left of the plates' mass or of the ring's growth: a chamber has one or none of them [-].
    /// </summary>
    private double left;

    public ChamberVessel(ChamberParameters c, GapParameters p)
    {
        this.c = c;
        this.p = p;
        Mouth = new ChamberOpening(c.OpeningLaw);
        gas = new Parcel(c.Pressure * c.Volume / (p.Products.R * c.FlameTemperature), 0, c.Pressure * c.Volume / (p.Products.Gamma - 1));
        left = c.Plates is { Mass: > 0 } || c.Ring is not null ? 1 : 0;
        BurntAt = left > 0 ? double.PositiveInfinity : 0;
    }

    /// <summary>The opening into the tube.</summary>
    public ChamberOpening Mouth { get; }

    /// <summary>When plates or ring have burnt [s]: infinite while they burn, 0 where there are none.</summary>
    public double BurntAt { get; private set; }

    public double Pressure => gas.Zone(p).PressureVolume / c.Volume;

    public bool HoldsGas => gas.HoldsGas;

    public GapTotals Totals => new(gas.Mass, gas.Energy);

    /// <summary>Time in which sound would sweep the chamber's volume through an area [m2] [s].</summary>
    public double SweepTime(double area)
    {
        Zone<Real> zone = gas.Zone(p);
        return c.Volume / (area * Math.Sqrt(zone.Gamma * zone.R * zone.Temperature));
    }

    /// <summary>Burns fragments and ring from one time to another [s]; returns what they gave.</summary>
    public GapTotals Burn(double from, double to)
    {
        (from, to) = (SinceStart(from), SinceStart(to));
        double m = (c.Pulse?.Between(from, to) ?? 0) + BurnByPressure(from, to), energy = m * p.Products.Cp * c.FlameTemperature;
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
    /// Sets the opening to its size in the middle of a step that begins at a time, up to which the ring has burnt, and
    /// the gas before it to what half the step of the last flow through an area [m2] leaves of it.
    /// </summary>
    public void Open(double time, double step, double area)
    {
        Mouth.Begin(Pressure, c.Volume, step);
        double middle = time + 0.5 * step, ahead = area * 0.5 * step;
        double grown = c.Grown<Real>(SinceStart(middle), c.Ring?.Growth<Real>(left) ?? 0.0);
        Mouth.Opening = new OrificeSize(c.Opening.Area * grown * grown, c.Opening.Diameter * grown, c.Opening.Thickness);
        Parcel half = gas;
        Take(ref half, ahead);
        Zone<Real> zone = half.Zone(p);
        Mouth.Chamber = new OrificeSide(zone.PressureVolume / c.Volume, zone.Temperature, new GasConstants(zone.R, zone.Gamma));
        Mouth.Fraction = zone.ProductFraction;
    }

    /// <summary>Takes out what the opening has passed, for an area times a time [m2 s].</summary>
    public void Give(double passed) => Take(ref gas, passed);

    private void Take(ref Parcel parcel, double passed) =>
        parcel.Add(-passed * Mouth.Products, -passed * (Mouth.Mass - Mouth.Products), -passed * Mouth.Energy);

    private double SinceStart(double time) => Math.Max(0, time - c.Start);

    /// <summary>
    /// Mass that plates or the ring burn [kg], at the chamber pressure of the middle of the time. It is what their
    /// shape loses, so that all of it has burnt in the end.
    /// </summary>
    private double BurnByPressure(double from, double to)
    {
        double time = to - from;
        if (!(left > 0 && time > 0))
            return 0;
        Parcel half = gas;
        double ahead = MassOf(left) - MassOf(Math.Max(0, left - 0.5 * time * Rate(half)));
        half.Add(ahead, 0, ahead * p.Products.Cp * c.FlameTemperature);
        double rate = Rate(half), before = left;
        left = Math.Max(0, before - time * rate);
        if (left == 0)
            BurntAt = c.Start + from + before / rate;
        return MassOf(before) - MassOf(left);
    }

    /// <summary>Rate at which the share that is left falls [1/s].</summary>
    private double Rate(in Parcel at)
    {
        double pressure = at.Zone(p).PressureVolume / c.Volume;
        return c.Ring is { } ring ? ring.Speed<Real>(pressure) / ring.Hole.End : c.Plates!.Rate<Real>(pressure);
    }

    /// <summary>Mass of what is left of plates or ring at a share [kg].</summary>
    private double MassOf(double share) =>
        c.Ring is { } ring ? ring.Density * ring.Hole.VolumeAt(ring.Growth<Real>(share)) : c.Plates!.Mass * share;
}
