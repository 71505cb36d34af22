using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Turns a source into chambers and a feed in plain SI numbers.</summary>
internal static class SourceToSi
{
    /// <summary>
    /// Turns a source into SI numbers; the places of chambers and fragments in the state vector follow from their order
    /// and the number of jackets.
    /// </summary>
    public static (ChamberParameters[] Chambers, FeedParameters? Feed) ToSi(GapSource source, int jackets)
    {
        if (source is GapSource.Tabulated tabulated)
            return ([], tabulated.ToSi());
        EquatableArray<GapSource.Booster> motors = source is GapSource.Cluster cluster ? cluster.Motors : [(GapSource.Booster)source];
        var chambers = new ChamberParameters[motors.Length];
        int fragments = StateLayout.Fixed + StateLayout.Parcel * (motors.Length + jackets);
        for (int i = 0; i < motors.Length; i++)
        {
            int at = StateLayout.Fixed + StateLayout.Parcel * i;
            GapSource.Booster motor = motors[i];
            chambers[i] = motor.Web.Match(
                over => Chamber(motor, at, over.Time.Seconds, 0, 0, -1),
                by => Chamber(motor, at, 0, 2 * by.Rate.RateAtOneAtmosphere.MetersPerSecond / by.Thickness.Meters,
                    by.Rate.PressureExponent, fragments++));
        }

        return (chambers, null);
    }

    private static ChamberParameters Chamber(
        GapSource.Booster motor, int at, double burnTime, double shareRate, double exponent, int fragments)
    {
        double opening = motor.OpeningDiameter.Meters, throat = motor.NozzleThroatDiameter.Meters;
        return new ChamberParameters
        {
            Start = motor.Delay.Seconds,
            FlameTemperature = motor.FlameTemperature.Kelvins,
            Volume = motor.ChamberVolume.CubicMeters,
            Pressure = motor.ChamberPressure.Pascals,
            Opening = new OrificeSize(Math.PI / 4 * opening * opening, opening, 0),
            OpeningLaw = ConstantCoefficientLaw.Ideal with { Coefficient = motor.OpeningCoefficient, Provenance = motor.Provenance },
            OpeningTime = motor.OpeningTime.Seconds,
            Nozzle = new OrificeSize(Math.PI / 4 * throat * throat, throat, 0),
            FragmentMass = motor.Web.Mass.Kilograms,
            FragmentBurnTime = burnTime,
            ShareRate = shareRate,
            PressureExponent = exponent,
            Fragments = fragments,
            At = at,
        };
    }
}
