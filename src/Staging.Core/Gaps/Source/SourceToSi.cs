using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Turns a source into chambers and a feed in plain SI numbers.</summary>
internal sealed class SourceToSi
{
    private readonly GapProblem problem;
    private int nextShare;
    private int nextWay;

    /// <summary>Turns the source of a gap into SI numbers.</summary>
    /// <param name="problem">The gap.</param>
    /// <param name="jackets">Number of jackets: their parcels stand between those of the chambers and the
    /// shares.</param>
    public SourceToSi(GapProblem problem, int jackets)
    {
        this.problem = problem;
        GapSource source = problem.Design.Source;
        Feed = (source as GapSource.Tabulated)?.ToSi();
        EquatableArray<GapSource.Motor> motors = source.Match<EquatableArray<GapSource.Motor>>(
            booster => [booster], _ => [], cluster => cluster.Motors, endBurner => [endBurner]);
        double outside = problem.Surroundings.Pressure.Pascals;
        BurnThroughEstimate?[] broken =
            [.. motors.Select(m => m is GapSource.EndBurner grain ? new BurnThroughEstimate(grain, outside) : null)];
        FirstShare = nextShare = StateLayout.FirstChamber + StateLayout.Parcel * (motors.Length + jackets);
        FirstWay = nextWay = FirstShare + motors.Count(m => m is GapSource.Booster { Web: WebBurn.ByRateLaw })
            + broken.Sum(b => b is null ? 0 : b.Ring is null ? 1 : 2);
        Chambers = new ChamberParameters[motors.Length];
        for (int i = 0; i < motors.Length; i++)
        {
            int at = StateLayout.FirstChamber + StateLayout.Parcel * i;
            Chambers[i] = broken[i] is { } estimate ? Chamber(estimate, at) : Chamber((GapSource.Booster)motors[i], at);
        }
    }

    public ChamberParameters[] Chambers { get; }

    /// <summary>What is fed as known beforehand; null where nothing is.</summary>
    public FeedParameters? Feed { get; }

    /// <summary>Where the shares that are still to burn begin in the state vector.</summary>
    public int FirstShare { get; }

    /// <summary>Where the shares of their way that pieces have left begin.</summary>
    public int FirstWay { get; }

    /// <summary>Where these end.</summary>
    public int End => nextWay;

    private ChamberParameters Chamber(GapSource.Booster motor, int at)
    {
        double opening = motor.OpeningDiameter.Meters;
        return new ChamberParameters
        {
            Start = motor.Delay.Seconds,
            FlameTemperature = motor.FlameTemperature.Kelvins,
            Volume = motor.ChamberVolume.CubicMeters,
            Pressure = motor.ChamberPressure.Pascals,
            Opening = Circle(opening),
            OpeningLaw = LawOf(motor),
            OpeningTime = motor.OpeningTime.Seconds,
            Nozzle = Circle(motor.NozzleThroatDiameter.Meters),
            Pulse = motor.Web is WebBurn.OverTime over ? new PulseParameters(over.Mass.Kilograms, over.Time.Seconds) : null,
            Plates = motor.Web is WebBurn.ByRateLaw by
                ? new PlateParameters(by.Mass.Kilograms, 2 * by.Rate.RateAtOneAtmosphere.MetersPerSecond / by.Thickness.Meters,
                    by.Rate.PressureExponent, nextShare++)
                : null,
            At = at,
        };
    }

    private ChamberParameters Chamber(BurnThroughEstimate estimate, int at)
    {
        GapSource.EndBurner motor = estimate.Motor;
        PieceParameters pieces = EndBurnerToSi.Pieces(estimate, problem, nextShare++, nextWay++);
        RingParameters? ring = estimate.Ring is null ? null : EndBurnerToSi.Ring(estimate, nextShare++);
        return new ChamberParameters
        {
            Start = motor.Delay.Seconds,
            FlameTemperature = motor.FlameTemperature.Kelvins,
            Volume = estimate.ChamberVolume.CubicMeters,
            Pressure = estimate.ChamberPressure.Pascals,
            Opening = Circle(ring is null ? estimate.OpeningDiameter.Meters : motor.GrainDiameter.Meters),
            OpeningLaw = LawOf(motor),
            OpeningTime = estimate.OpeningTime.Seconds,
            Nozzle = Circle(motor.NozzleThroatDiameter.Meters),
            Ring = ring,
            Pieces = pieces,
            At = at,
        };
    }

    private static OrificeSize Circle(double diameter) => new(Math.PI / 4 * diameter * diameter, diameter, 0);

    private static ConstantCoefficientLaw LawOf(GapSource.Motor motor) =>
        ConstantCoefficientLaw.Ideal with { Coefficient = motor.OpeningCoefficient, Provenance = motor.Provenance };
}
