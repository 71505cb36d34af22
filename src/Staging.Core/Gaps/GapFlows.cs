using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>
/// Everything that follows from one state of the displacement model: pressure, front, flows, and the rate of the common pressure.
/// Hot products push the air ahead of a front without mixing; beyond the last vent lies a stirred dead end; all share one pressure.
/// </summary>
/// <remarks>
/// For a parcel at common pressure p with swelling rate S (the rate of p V at fixed volume): g p dV/dt = S - V dp/dt.
/// Summed over the tube, whose volume changes by the sliding joint only, this gives dp/dt. The dead end has a fixed volume, so
/// the flow into it is the one that makes its pressure follow p.
/// </remarks>
internal readonly ref struct GapFlows
{
    private readonly GapParameters p;

    public GapFlows(GapParameters p, double t, ReadOnlySpan<double> y, ref GapRates rates)
    {
        this.p = p;
        Chamber = ZoneAt(y, GapState.Chamber);
        Hot = ZoneAt(y, GapState.Hot);
        Cold = ZoneAt(y, GapState.Cold);
        DeadEnd = ZoneAt(y, GapState.DeadEnd);

        ChamberPressure = Chamber.PressureVolume / p.ChamberVolume;
        double stretch = JointMechanics.Extension(p, y) * p.JointArea;
        double tubeVolume = p.BoreArea * p.LastVent + stretch;
        Pressure = (Hot.PressureVolume + Cold.PressureVolume + DeadEnd.PressureVolume) / (tubeVolume + p.DeadEndVolume);
        Front = Hot.PressureVolume / Pressure / p.BoreArea;
        Stretch = stretch / p.BoreArea;
        ProductsAtLastVent = Passed(p.LastVent + Stretch);

        BurningRate = t < p.FragmentBurnTime
            ? p.FragmentMass * Math.PI / (2 * p.FragmentBurnTime) * Math.Sin(Math.PI * t / p.FragmentBurnTime)
            : 0;
        rates = default;
        rates.Chamber.Add(BurningRate, 0, BurningRate * p.Products.Cp * p.FlameTemperature);
        Nozzle(ref rates);
        Opening(t, ref rates);
        StreamVolumeFlow = Vents(ref rates);
        Annulus(JointMechanics.Annulus(p, y), ref rates);
        WallHeat(ref rates);
        Stir(ref rates);
    }

    public Zone Chamber { get; }

    public Zone Hot { get; }

    public Zone Cold { get; }

    public Zone DeadEnd { get; }

    public double ChamberPressure { get; }

    /// <summary>The common pressure of tube and dead end [Pa].</summary>
    public double Pressure { get; }

    /// <summary>Station of the front [m].</summary>
    public double Front { get; }

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public double Stretch { get; }

    /// <summary>How far the last vent has gone over from air (0) to products (1).</summary>
    public double ProductsAtLastVent { get; }

    /// <summary>Mass of fragments burning per second [kg/s].</summary>
    public double BurningRate { get; }

    /// <summary>Volume that leaves through the last vents per second [m3/s]; negative when air comes in.</summary>
    public double StreamVolumeFlow { get; }

    /// <summary>Speed of the stream in the tube at the last vent [m/s].</summary>
    public double StreamSpeed => Math.Max(StreamVolumeFlow, 0) / p.BoreArea;

    /// <summary>Speed of the stirring that reaches the nozzle plane [m/s].</summary>
    public double SpeedAtNozzle => StreamSpeed * p.StirringAtNozzle;

    private Zone ZoneAt(ReadOnlySpan<double> y, int at) => new(y[at], y[at + 1], y[at + 2], p.Products, p.Air);

    /// <summary>Share of products drawn by a hole: a smooth step over the front thickness, complete when the front stands at the hole.</summary>
    private double Passed(double station)
    {
        double s = Math.Clamp((Front - station) / p.FrontThickness + 1, 0, 1);
        return s * s * (3 - 2 * s);
    }

    private OrificeSide Outside => new(p.OutsidePressure, p.OutsideTemperature, p.Air);

    private static OrificeSide Side(in Zone zone, double pressure) => new(pressure, zone.Temperature, new GasConstants(zone.R, zone.Gamma));

    /// <summary>The booster's nozzle, still open to the rear.</summary>
    private void Nozzle(ref GapRates rates)
    {
        if (p.Nozzle.Area > 0)
            Through(ConstantCoefficientLaw.Ideal, p.Nozzle, Chamber, ChamberPressure, ref rates.Chamber, ref rates);
    }

    /// <summary>The forward opening of the chamber, whose diameter grows evenly with time.</summary>
    private void Opening(double t, ref GapRates rates)
    {
        double grown = Math.Min(t / p.OpeningTime, 1);
        var size = new OrificeSize(p.Opening.Area * grown * grown, p.Opening.Diameter * grown, p.Opening.Thickness);
        double m = OrificeKernel.SignedMassFlow(p.OpeningLaw, size, Side(Chamber, ChamberPressure), Side(Hot, Pressure));
        if (m >= 0)
            GapRates.Move(ref rates.Chamber, ref rates.Hot, Chamber, m);
        else
            GapRates.Move(ref rates.Hot, ref rates.Chamber, Hot, -m);
    }

    /// <summary>Flow through all vents; returns the volume that leaves through the last station per second.</summary>
    private double Vents(ref GapRates rates)
    {
        double volumeFlow = 0;
        foreach (VentParameters vent in p.Vents)
        {
            double products = Passed(vent.Station + Stretch);
            double hot = Through(p.Law, vent.Share(products), Hot, Pressure, ref rates.Hot, ref rates);
            double cold = Through(p.Law, vent.Share(1 - products), Cold, Pressure, ref rates.Cold, ref rates);
            if (vent.IsLast)
                volumeFlow += hot + cold;
        }

        return volumeFlow;
    }

    /// <summary>The annulus between the parted bodies, at the booster's end of the gap.</summary>
    private void Annulus(double area, ref GapRates rates)
    {
        if (area > 0)
            Through(p.Law, new OrificeSize(area, Math.Sqrt(4 * area / Math.PI), 0), Hot, Pressure, ref rates.Hot, ref rates);
    }

    /// <summary>Flow between a parcel and the outside; returns the volume that leaves per second, at the parcel's pressure.</summary>
    private double Through(
        IDischargeLaw law, in OrificeSize size, in Zone zone, double pressure, ref Account account, ref GapRates rates)
    {
        double m = OrificeKernel.SignedMassFlow(law, size, Side(zone, pressure), Outside);
        if (m >= 0)
        {
            rates.Leave(ref account, zone, m);
            return m * zone.R * zone.Temperature / pressure;
        }

        rates.Enter(ref account, p, -m);
        return m * p.Air.R * p.OutsideTemperature / pressure;
    }

    private void WallHeat(ref GapRates rates)
    {
        double perimeter = Math.PI * p.Bore;
        rates.Cool(ref rates.Hot, p.WallHeatTransfer * perimeter * Front * (Hot.Temperature - p.OutsideTemperature));
        double deadEndWall = 4 * p.DeadEndVolume / p.Bore + p.BoreArea;
        rates.Cool(ref rates.DeadEnd, p.WallHeatTransfer * deadEndWall * (DeadEnd.Temperature - p.OutsideTemperature));
    }

    /// <summary>Turbulent exchange of equal volumes between the passing stream and the dead end.</summary>
    private void Stir(ref GapRates rates)
    {
        double volume = p.DeadEndExchange * SpeedAtNozzle * p.BoreArea;
        double w = ProductsAtLastVent;
        GapRates.Move(ref rates.Hot, ref rates.DeadEnd, Hot, w * volume * Hot.DensityAt(Pressure));
        GapRates.Move(ref rates.Cold, ref rates.DeadEnd, Cold, (1 - w) * volume * Cold.DensityAt(Pressure));
        double back = volume * DeadEnd.DensityAt(Pressure);
        GapRates.Move(ref rates.DeadEnd, ref rates.Hot, DeadEnd, w * back);
        GapRates.Move(ref rates.DeadEnd, ref rates.Cold, DeadEnd, (1 - w) * back);
    }

    /// <summary>
    /// Adds the flow that keeps the dead end at the common pressure, and returns dp/dt [Pa/s].
    /// </summary>
    public double Equalise(double volumeRate, ref GapRates rates)
    {
        double pr = Pressure, w = ProductsAtLastVent;
        double sHot = rates.Hot.Swelling(Hot, p), sCold = rates.Cold.Swelling(Cold, p), sDead = rates.DeadEnd.Swelling(DeadEnd, p);
        double vHot = Hot.PressureVolume / pr, vCold = Cold.PressureVolume / pr, vDead = DeadEnd.PressureVolume / pr;
        double give = vHot / Hot.Gamma + vCold / Cold.Gamma;
        double drive = sHot / Hot.Gamma + sCold / Cold.Gamma - pr * volumeRate;
        double rhoHot = Hot.DensityAt(pr), rhoCold = Cold.DensityAt(pr), rhoDead = DeadEnd.DensityAt(pr);

        if (drive * vDead >= sDead * give)
        {
            // Into the dead end: volume flow phi from the tube, with vDead dp/dt = sDead + phi * swell.
            double swell = w * rhoHot * DeadEnd.Swelling(Hot) + (1 - w) * rhoCold * DeadEnd.Swelling(Cold);
            double dpdt = (drive + pr * sDead / swell) / (give + pr * vDead / swell);
            double phi = Math.Max(0, (vDead * dpdt - sDead) / swell);
            GapRates.Move(ref rates.Hot, ref rates.DeadEnd, Hot, w * phi * rhoHot);
            GapRates.Move(ref rates.Cold, ref rates.DeadEnd, Cold, (1 - w) * phi * rhoCold);
            return dpdt;
        }
        else
        {
            // Out of the dead end: phi from it, with vDead dp/dt = sDead - phi * gamma p.
            double own = DeadEnd.Gamma * pr;
            double swell = rhoDead * (w * Hot.Swelling(DeadEnd) / Hot.Gamma + (1 - w) * Cold.Swelling(DeadEnd) / Cold.Gamma);
            double dpdt = (drive + swell * sDead / own) / (give + swell * vDead / own);
            double phi = Math.Max(0, (sDead - vDead * dpdt) / own);
            GapRates.Move(ref rates.DeadEnd, ref rates.Hot, DeadEnd, w * phi * rhoDead);
            GapRates.Move(ref rates.DeadEnd, ref rates.Cold, DeadEnd, (1 - w) * phi * rhoDead);
            return dpdt;
        }
    }
}
