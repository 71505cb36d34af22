namespace Staging.Core.Validation.Twin;

/// <summary>
/// A second implementation of a gap with thrown pieces: some hundred parcels of gas in a row, at one pressure, that never mix. The chamber appends parcels at its
/// end, the pieces heat those they pass, the hole draws on those before it.
/// </summary>
/// <remarks>
/// No grid that gas flows through, no waves, no kinetic energy, no friction; nothing of the library is used, inputs are plain SI numbers. Plain Euler steps. No heat
/// loss, no stirring, a joint that holds.
/// </remarks>
internal sealed class ParcelTube
{
    public const double Length = 0.25, Area = Math.PI / 4 * 0.018 * 0.018, Recess = 0.3e-6, Outside = 101325, AirTemperature = 288.15;

    private const double Total = Length * Area + Recess;
    private readonly double size;
    private readonly List<Parcel> row = [];
    private Parcel chamber = new(0, 0, 0);
    private double pressure = Outside;

    /// <param name="parcels">Parcels of air at first.</param>
    public ParcelTube(int parcels) => size = Total / parcels;

    /// <summary>Gas constant and heat capacity at constant pressure [J/(kg K)].</summary>
    public readonly record struct Gas(double R, double Cp);

    public required Gas Air { get; init; }

    public required Gas Fire { get; init; }

    public required double Flame { get; init; }

    /// <summary>Chamber: volume, pressure, diameters of opening and throat, coefficient, opening time.</summary>
    public required (double Volume, double Pressure, double Opening, double Throat, double Coefficient, double OpeningTime) Chamber { get; init; }

    /// <summary>Pieces: mass, old and fresh faces, delay of the latter, speed, size.</summary>
    public required (double Mass, double Old, double Fresh, double FreshAt, double Speed, double Size) Pieces { get; init; }

    /// <summary>Burning: density times rate at one atmosphere, exponent.</summary>
    public required (double Flux, double Exponent) Burning { get; init; }

    /// <summary>The hole: diameter, station, coefficient.</summary>
    public required (double Diameter, double Station, double Coefficient) Hole { get; init; }

    public double Burnt { get; private set; }

    public double Time { get; private set; }

    public double Peak { get; private set; }

    public double Pressure => pressure;

    /// <summary>Runs on to a time in steps of at most another [s].</summary>
    public void RunTo(double end, double step)
    {
        if (row.Count == 0)
        {
            chamber = Filled(Chamber.Volume, Chamber.Pressure, Flame, isFire: true);
            for (double filled = 0; filled < Total - 0.5 * size; filled += size)
                row.Add(Filled(size, Outside, AirTemperature, isFire: false));
        }

        while (Time < end)
        {
            double dt = Math.Min(step, end - Time), middle = Time + 0.5 * dt;
            Through(dt, middle);
            Fly(dt, middle);
            Vent(dt);
            Settle();
            Time = dt == end - Time ? end : Time + dt;
            Peak = Math.Max(Peak, pressure);
        }
    }

    private Parcel Filled(double volume, double p, double T, bool isFire)
    {
        Gas gas = isFire ? Fire : Air;
        double mass = p * volume / (gas.R * T);
        return new Parcel(isFire ? mass : 0, isFire ? 0 : mass, mass * (gas.Cp - gas.R) * T) { Volume = volume };
    }

    /// <summary>Chamber and tube exchange gas by the greater pressure; the throat lets gas go to the rear.</summary>
    private void Through(double dt, double middle)
    {
        double d = Chamber.Opening * Math.Min(1, middle / Chamber.OpeningTime), area = dt * Chamber.Coefficient * Math.PI / 4 * d * d;
        double inside = chamber.PressureVolume(this) / Chamber.Volume;
        double rear = dt * Math.PI / 4 * Chamber.Throat * Chamber.Throat * Flux(chamber, inside, Outside);
        if (inside > pressure)
        {
            if (row[0].Volume > size)
                row.Insert(0, new Parcel(0, 0, 0));
            Move(chamber, row[0], area * Flux(chamber, inside, pressure));
        }
        else
        {
            double m = area * Flux(row[0], pressure, inside);
            for (; m >= row[0].Mass; row.RemoveAt(0))
            {
                m -= row[0].Mass;
                Move(row[0], chamber, row[0].Mass);
            }

            Move(row[0], chamber, m);
        }

        Move(chamber, null, rear);
    }

    private void Fly(double dt, double middle)
    {
        double x = Math.Min(Pieces.Speed * middle, Length), from = Math.Max(0, x - 0.5 * Pieces.Size), to = Math.Min(Length, x + 0.5 * Pieces.Size);
        double faces = Pieces.Old + (middle > Pieces.FreshAt ? Pieces.Fresh : 0);
        double m = Math.Min(dt * Burning.Flux * Math.Pow(pressure / 101325, Burning.Exponent) * faces, Pieces.Mass - Burnt);
        Burnt += m;
        Over(from, to, (parcel, share) => parcel.Add(m * share, 0, m * share * Fire.Cp * Flame));
    }

    private void Vent(double dt)
    {
        double area = dt * Hole.Coefficient * Math.PI / 4 * Hole.Diameter * Hole.Diameter;
        Over(Hole.Station - 0.5 * Hole.Diameter, Hole.Station + 0.5 * Hole.Diameter, (parcel, share) =>
        {
            if (pressure > Outside)
                Move(parcel, null, share * area * Flux(parcel, pressure, Outside));
        });
    }

    /// <summary>Does something with every parcel over a stretch of the tube, by its share of it.</summary>
    private void Over(double from, double to, Action<Parcel, double> what)
    {
        double left = 0;
        foreach (Parcel parcel in row)
        {
            double right = left + parcel.Volume / Area, over = Math.Min(to, right) - Math.Max(from, left);
            if (over > 0)
                what(parcel, over / (to - from));
            left = right;
        }
    }

    private void Move(Parcel from, Parcel? to, double m)
    {
        double share = m / from.Mass, heat = share * (from.Energy + from.PressureVolume(this)), fire = share * from.Fire, air = share * from.Air;
        from.Add(-fire, -air, -heat);
        to?.Add(fire, air, heat);
    }

    /// <summary>
    /// Parcels that have gained or lost push the others until all are at one pressure again: each does the work p dV, along its own isentrope.
    /// </summary>
    private void Settle()
    {
        double gained = 0, soft = 0;
        foreach (Parcel x in row)
        {
            double gamma = x.Gamma(this);
            gained += (x.PressureVolume(this) - pressure * x.Volume) / gamma;
            soft += x.Volume / gamma;
        }

        double rise = gained / soft;
        foreach (Parcel x in row)
            x.Add(0, 0, -(x.PressureVolume(this) - pressure * x.Volume - x.Volume * rise) / x.Gamma(this));
        pressure = Sum(x => x.PressureVolume(this)) / Total;
        foreach (Parcel x in row)
            x.Volume = x.PressureVolume(this) / pressure;
    }

    private double Sum(Func<Parcel, double> of)
    {
        double sum = 0;
        foreach (Parcel x in row)
            sum += of(x);
        return sum;
    }

    /// <summary>Isentropic mass flux of a parcel's gas, choked below the critical ratio [kg/(m2 s)].</summary>
    private double Flux(Parcel from, double high, double low)
    {
        double g = from.Gamma(this), r = Math.Max(Math.Min(1, low / high), Math.Pow(2 / (g + 1), g / (g - 1)));
        return high / Math.Sqrt(from.PressureVolume(this) / from.Mass) * Math.Sqrt(2 * g / (g - 1) * (Math.Pow(r, 2 / g) - Math.Pow(r, (g + 1) / g)));
    }

    private sealed class Parcel(double fire, double air, double energy)
    {
        public double Fire { get; private set; } = fire;

        public double Air { get; private set; } = air;

        public double Energy { get; private set; } = energy;

        public double Volume { get; set; }

        public double Mass => Fire + Air;

        public void Add(double fire, double air, double energy) => (Fire, Air, Energy) = (Fire + fire, Air + air, Energy + energy);

        public double PressureVolume(ParcelTube t) => Mass > 0 ? (Gamma(t) - 1) * Energy : 0;

        public double Gamma(ParcelTube t) =>
            Mass > 0 ? (Fire * t.Fire.Cp + Air * t.Air.Cp) / (Fire * (t.Fire.Cp - t.Fire.R) + Air * (t.Air.Cp - t.Air.R)) : 1.4;
    }
}
