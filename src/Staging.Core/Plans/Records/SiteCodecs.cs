using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>The launch site: air, gravity and guide.</summary>
internal static class SiteCodecs
{
    public static readonly UnionCodec<IAtmosphere> Atmosphere = new("atmosphere", "The air above the site.",
    [
        new UnionCase<IAtmosphere, StandardAtmosphere>("usStandard1976",
            new("usStandard1976", "The US Standard Atmosphere 1976.", f => v => StandardAtmosphere.Us1976)),
        new UnionCase<IAtmosphere, SiteAtmosphere>("site", new("siteAir", "The standard profile shifted to the weather at the ground.", f =>
        {
            var elevation = f.Required("elevation", Quantities.Length, x => x.Conditions.Elevation,
                "Elevation above mean sea level at which the weather was taken.");
            var pressure = f.Required("pressure", Quantities.Pressure, x => x.Conditions.Pressure,
                "Absolute pressure at that elevation, not reduced to sea level.");
            var temperature = f.Required("temperature", Quantities.Temperature, x => x.Conditions.Temperature, "Air temperature.");
            var humidity = f.Required("relativeHumidity", NumberCodec.Ratio, x => x.Conditions.RelativeHumidity, "Relative humidity.");
            f.AskForRanges(Conditions);
            return v => new SiteAtmosphere(Conditions(v));

            SiteConditions Conditions(FieldValues v) => new()
            {
                Elevation = elevation[v],
                Pressure = pressure[v],
                Temperature = temperature[v],
                RelativeHumidity = humidity[v],
            };
        })),
        new UnionCase<IAtmosphere, UniformAtmosphere>("uniform",
            new("uniformAir", "The same air at every height: for checks, not for flights.", f =>
        {
            var pressure = f.Required("pressure", Quantities.Pressure, x => x.Pressure, "Pressure.");
            var temperature = f.Required("temperature", Quantities.Temperature, x => x.Temperature, "Temperature.");
            var density = f.Required("density", Quantities.Density, x => x.Density, "Density.");
            var sound = f.Required("soundSpeed", Quantities.Speed, x => x.SoundSpeed, "Speed of sound.");
            return v => new UniformAtmosphere { Pressure = pressure[v], Temperature = temperature[v], Density = density[v],
                SoundSpeed = sound[v] };
        })),
    ]);

    public static readonly UnionCodec<Gravity> Gravity = new("gravity", "Gravity above the site.",
    [
        new UnionCase<Gravity, Gravity>("inverseSquare",
            new("inverseSquare", "Falls with the square of the distance from the centre of the Earth.", f =>
        {
            var acceleration = f.Required("atSeaLevel", Quantities.Acceleration, x => x.AtSeaLevel, "Acceleration at sea level.");
            var radius = f.Required("radius", new OptionalNumberCodec<UnitsNet.Length>(Quantities.Length), x => x.Radius,
                "Distance of sea level from the centre.");
            return v => new Gravity { AtSeaLevel = acceleration[v], Radius = radius[v] };
        }), x => x.Radius is not null),
        new UnionCase<Gravity, Gravity>("uniform", new("uniformGravity", "The same at every height.", f =>
        {
            var acceleration = f.Required("atSeaLevel", Quantities.Acceleration, x => x.AtSeaLevel, "Acceleration.");
            return v => new Gravity { AtSeaLevel = acceleration[v], Radius = null };
        })),
    ]);

    public static readonly RecordCodec<LaunchGuide> Guide = new("launchGuide", "The rod or rail.", f =>
    {
        var length = f.Required("length", Quantities.Length, x => x.Length, "Length of travel along the guide.");
        var elevation = f.Required("elevation", Quantities.Angle, x => x.Elevation, "Angle above the horizontal; 90 deg is straight up.");
        var friction = f.Optional("frictionCoefficient", NumberCodec.Ratio, x => x.FrictionCoefficient, 0.0,
            "Sliding friction over the load that a leaning guide carries; 0 when left out.");
        var constant = f.Optional("constantFriction", Quantities.Force, x => x.ConstantFriction, UnitsNet.Force.Zero,
            "Friction that does not depend on the load; none when left out.");
        return v => new LaunchGuide
        {
            Length = length[v],
            Elevation = elevation[v],
            FrictionCoefficient = friction[v],
            ConstantFriction = constant[v]
        };
    });

    public static readonly RecordCodec<LaunchSite> Site = new("launchSite", "Where the flight takes place.", f =>
    {
        var atmosphere = f.Optional("atmosphere", Atmosphere, x => x.Atmosphere, StandardAtmosphere.Us1976,
            "The air above the site; the US Standard Atmosphere 1976 when left out.");
        var elevation = f.Required("elevation", Quantities.Length, x => x.Elevation, "Height of the site above sea level.");
        var wind = f.Required("wind", Quantities.Speed, x => x.Wind, "Steady wind, for the estimate of drift.");
        var gravity = f.Optional("gravity", Gravity, x => x.Gravity, Flight.Gravity.Standard,
            "Gravity; standard gravity, 9.80665 m/s2 over a radius of 6356.766 km, when left out.");
        return v => new LaunchSite { Atmosphere = atmosphere[v], Elevation = elevation[v], Wind = wind[v], Gravity = gravity[v] };
    });
}
