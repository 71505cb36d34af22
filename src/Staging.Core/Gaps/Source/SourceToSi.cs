using System.Collections.Immutable;
using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Turns a source into chambers and a feed in plain SI numbers.</summary>
internal static class SourceToSi
{
    /// <summary>
    /// Lowers a source; the places of chambers and fragments in the state vector follow from their order and the number
    /// of jackets.
    /// </summary>
    public static (ChamberParameters[] Chambers, FeedParameters? Feed) ToSi(GapSource source, int jackets)
    {
        if (source is GapSource.Tabulated tabulated)
            return ([], tabulated.Feed.ToSi());
        ImmutableArray<ClusterMotor> motors = source is GapSource.Cluster cluster
            ? cluster.Motors
            : [new ClusterMotor { Source = source, Delay = default }];
        var chambers = new ChamberParameters[motors.Length];
        int fragments = StateLayout.Fixed + StateLayout.Parcel * (motors.Length + jackets);
        for (int i = 0; i < motors.Length; i++)
        {
            int at = StateLayout.Fixed + StateLayout.Parcel * i;
            double start = motors[i].Delay.Seconds;
            chambers[i] = motors[i].Source switch
            {
                GapSource.Afterburn x => Timed(x.Motor, start, at),
                GapSource.Fragments x => Plates(x, start, at, fragments++),
                _ => throw new InvalidOperationException("A cluster of something else than motors was not refused."),
            };
        }

        return (chambers, null);
    }

    private static ChamberParameters Timed(BurnThroughSource motor, double start, int at) => Chamber(
        motor.Chamber, motor.Provenance, start, at, motor.FragmentMass.Kilograms, motor.FragmentBurnTime.Seconds, 0, 0, -1);

    private static ChamberParameters Plates(GapSource.Fragments x, double start, int at, int fragments) => Chamber(
        x.Chamber, x.Provenance, start, at, x.Mass.Kilograms, 0, 2 * x.Rate.RateAtOneAtmosphere.MetersPerSecond / x.Thickness.Meters,
        x.Rate.PressureExponent, fragments);

    private static ChamberParameters Chamber(
        BoosterChamber chamber, Provenance source, double start, int at, double mass, double burnTime, double shareRate, double exponent,
        int fragments)
    {
        double opening = chamber.OpeningDiameter.Meters, throat = chamber.NozzleThroatDiameter.Meters;
        return new ChamberParameters
        {
            Start = start,
            FlameTemperature = chamber.FlameTemperature.Kelvins,
            Volume = chamber.Volume.CubicMeters,
            Pressure = chamber.Pressure.Pascals,
            Opening = new OrificeSize(Math.PI / 4 * opening * opening, opening, 0),
            OpeningLaw = ConstantCoefficientLaw.Ideal with { Coefficient = chamber.OpeningCoefficient, Provenance = source },
            OpeningTime = chamber.OpeningTime.Seconds,
            Nozzle = new OrificeSize(Math.PI / 4 * throat * throat, throat, 0),
            FragmentMass = mass,
            FragmentBurnTime = burnTime,
            ShareRate = shareRate,
            PressureExponent = exponent,
            Fragments = fragments,
            At = at,
        };
    }
}
