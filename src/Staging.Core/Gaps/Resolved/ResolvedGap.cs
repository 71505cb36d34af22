using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.Resolved;

/// <summary>
/// Chamber, tube, vents, dead end and joint of one gap, advanced together: flow along the tube in one step, everything else in a source
/// step of equal length that straddles it (G. Strang, SIAM J. Numer. Anal. 5 (1968) 506: second order).
/// </summary>
internal sealed partial class ResolvedGap
{
    private readonly GapParameters p;
    private readonly double courant;
    private readonly ChamberParameters? motor;
    private readonly ReservoirEnd booster;
    private readonly ResolvedVent[] vents;
    private readonly ResolvedVent[] lastVents;
    private readonly DeadEndMixing? deadEnd;
    private readonly int origin;
    private readonly double lastStirring;
    private Parcel chamber;
    private double unburnt;
    private double sourceTime;

    public ResolvedGap(GapParameters p, GapModel.Resolved model, double length, double reach)
    {
        this.p = p;
        courant = model.CourantNumber;
        int cells = model.Cells;

        // The recess behind the nozzle plane is taken as a piece of tube of its volume.
        double recess = p.DeadEndVolume - (p.Profile.VolumeTo(length) - p.Profile.VolumeTo(length - p.DeadEndDepth));
        double dx = (length + recess / p.Profile.AreaBelow(length)) / cells;
        double stretch = p.Engagement * p.JointArea / p.Profile.FirstArea;
        int room = (int)(stretch / dx) + 3;
        Tube = new TubeFlow(cells, dx, p.Products, p.Air, room, bore: TubeBore.Of(p.Profile, cells, dx, room));
        origin = Tube.Cells.First;
        NozzleCell = Math.Min((int)Math.Round(length / dx), cells - 1);
        double rho = p.OutsidePressure / (p.Air.R * p.OutsideTemperature);
        for (int i = 0; i < cells; i++)
            Tube.Fill(i, rho, 0, p.OutsidePressure, 0);
        Tube.Look();

        motor = p.Chambers.SingleOrDefault();
        booster = new ReservoirEnd(motor?.OpeningLaw ?? p.Law, p.Profile.FirstArea) { Opening = default };
        Tube.Left = booster;
        if (motor is not null)
        {
            double mass = motor.Pressure * motor.Volume / (p.Products.R * motor.FlameTemperature);
            chamber = new Parcel(mass, 0, motor.Pressure * motor.Volume / (p.Products.Gamma - 1));
            unburnt = motor.Fragments >= 0 && motor.FragmentMass > 0 ? 1 : 0;
        }

        SourceEnd = unburnt > 0 ? double.PositiveInfinity : p.KnownSourceEnd;
        if (p.Vents.Length == 0)
        {
            vents = lastVents = [];
            return;
        }

        VentParameters last = p.Vents.MaxBy(v => v.Station);
        vents = [.. p.Vents.Select(v => new ResolvedVent(v, last, dx, cells))];
        lastVents = [.. vents.Where(v => v.IsLast)];
        lastStirring = last.Stirring;
        deadEnd = new DeadEndMixing(p, Tube, length, NozzleCell, reach, lastVents);
    }

    public TubeFlow Tube { get; }

    /// <summary>First cell behind the nozzle plane, counted from the tube's original left end.</summary>
    public int NozzleCell { get; }

    public double Time { get; private set; }

    /// <summary>Length of the last step [s].</summary>
    public double LastStep { get; private set; }

    /// <summary>Travel of the joint [m] and its speed [m/s].</summary>
    public double Slide { get; private set; }

    public double SlideSpeed { get; private set; }

    /// <summary>Mass and energy that the source has given.</summary>
    public GapTotals Given { get; private set; }

    /// <summary>When the source ends [s]; infinite while that is not known.</summary>
    public double SourceEnd { get; private set; }

    /// <summary>Mass and energy that have left: through vents and nozzle, as wall heat, as work on the joint.</summary>
    public GapTotals Left { get; private set; }

    /// <summary>
    /// Volume that leaves per second and stirs as if it left through the last vents [m3/s]: each vent counts by its share of stirring over theirs.
    /// </summary>
    public double StreamVolumeFlow { get; private set; }

    /// <summary>Speed of the stirring that reaches the nozzle plane [m/s].</summary>
    public double SpeedAtNozzle => StreamVolumeFlow / p.BoreArea * lastStirring;

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public double Stretch => Slide * p.JointArea / p.Profile.FirstArea;

    public Zone Chamber => chamber.Zone(p);

    /// <summary>Pressure in the chamber; the gap's where there is no chamber [Pa].</summary>
    public double ChamberPressure => motor is null ? Pressure : Chamber.PressureVolume / motor.Volume;

    /// <summary>Mean pressure of the tube by volume: what pushes the joint [Pa].</summary>
    public double Pressure
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double sum = 0, volume = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double v = Tube.VolumeOf(i);
                sum += v * a.Pressure[i];
                volume += v;
            }

            return sum / volume;
        }
    }

    /// <summary>Mass fraction of products in what stands before the last vents [-].</summary>
    public double ProductsAtLastVent
    {
        get
        {
            TubeArrays a = Tube.Cells;
            if (lastVents.Length == 0)
                return a.Fraction[CellAt(p.LastVent)];
            double sum = 0;
            foreach (ResolvedVent vent in lastVents)
            {
                for (int k = 0; k < vent.Share.Length; k++)
                    sum += vent.Share[k] * a.Fraction[origin + vent.First + k];
            }

            return sum / lastVents.Length;
        }
    }

    /// <summary>The gas behind the nozzle plane, as one parcel, with its mean pressure.</summary>
    public Zone Nozzle(out double pressure)
    {
        TubeArrays a = Tube.Cells;
        var sum = default(Parcel);
        double volume = 0;
        int from = origin + NozzleCell;
        for (int i = from; i < a.End; i++)
        {
            double v = Tube.VolumeOf(i);
            volume += v;
            sum.Add(v * a.Products[i], v * (a.Density[i] - a.Products[i]), v * (a.Energy[i] - 0.5 * a.Momentum[i] * a.Velocity[i]));
        }

        Zone zone = sum.Zone(p);
        pressure = zone.PressureVolume / volume;
        return zone;
    }

    /// <summary>Index of the cell at a station of the tube as it was before the joint slid.</summary>
    public int CellAt(double station) => Math.Min(origin + (int)(station / Tube.CellLength), Tube.Cells.End - 1);

    /// <summary>Middle of a cell, from the booster's end as it was before the joint slid [m].</summary>
    public double StationOf(int i)
    {
        double right = (i - origin + 1) * Tube.CellLength;
        return right - 0.5 * Tube.LengthOf(i);
    }

    public GapTotals Totals
    {
        get
        {
            TubeArrays a = Tube.Cells;
            double mass = 0, energy = 0;
            for (int i = a.First; i < a.End; i++)
            {
                double v = Tube.VolumeOf(i);
                mass += v * a.Density[i];
                energy += v * a.Energy[i];
            }

            return new GapTotals(chamber.Mass + p.Profile.FirstArea * mass, chamber.Energy + p.Profile.FirstArea * energy);
        }
    }

    /// <summary>Takes one step, not past a time; acceleration is that of the joint while it slides. Returns false when no step could be taken.</summary>
    public bool Step(double until, bool sliding, double acceleration)
    {
        double dt = Math.Min(Tube.LongestStep(courant), LongestChamberStep());
        double left = until - Time;
        dt = dt >= left ? left : Math.Min(dt, 0.5 * left);

        Sources(0.5 * (LastStep + dt));
        Tube.Look();
        double speed = sliding ? Math.Max(0, SlideSpeed + 0.5 * dt * acceleration) : 0;
        booster.Recede(speed * p.JointArea / p.Profile.FirstArea);
        OpenTo(Time + 0.5 * dt, 0.5 * dt);
        double taken = Tube.Step(dt);
        if (taken == 0)
            return false;

        EndFlux flux = booster.Last;
        double area = p.Profile.FirstArea * taken;
        chamber.Add(-area * flux.Products, -area * (flux.Mass - flux.Products), -area * booster.EnergyFromChamber);
        Left = new GapTotals(Left.Mass, Left.Energy + area * (booster.EnergyFromChamber - flux.Energy));
        Slide += taken * speed;
        SlideSpeed = sliding ? SlideSpeed + taken * acceleration : 0;
        LastStep = taken;
        Time = taken == left ? until : Time + taken;
        return true;
    }

    /// <summary>Brings the joint to rest.</summary>
    public void Rest() => SlideSpeed = 0;

    /// <summary>Time in which sound in the bore would sweep the chamber's volume, for the Courant number [s].</summary>
    private double LongestChamberStep()
    {
        if (motor is null)
            return double.PositiveInfinity;
        Zone zone = Chamber;
        return courant * motor.Volume / (p.Profile.FirstArea * Math.Sqrt(zone.Gamma * zone.R * zone.Temperature));
    }

    /// <summary>Sets the opening to its size at a time, and the chamber to what it will be after a while at the last step's flow.</summary>
    private void OpenTo(double time, double ahead)
    {
        if (motor is null)
            return;
        double grown = Math.Min(time / motor.OpeningTime, 1);
        booster.Opening = new OrificeSize(motor.Opening.Area * grown * grown, motor.Opening.Diameter * grown, motor.Opening.Thickness);
        Parcel half = chamber;
        double area = p.Profile.FirstArea * ahead;
        EndFlux flux = booster.Last;
        half.Add(-area * flux.Products, -area * (flux.Mass - flux.Products), -area * booster.EnergyFromChamber);
        Zone zone = half.Zone(p);
        booster.Chamber = new OrificeSide(zone.PressureVolume / motor.Volume, zone.Temperature, new GasConstants(zone.R, zone.Gamma));
        booster.ChamberFraction = zone.ProductFraction;
    }
}
