using Staging.Core.Flight;
using Staging.Core.Gases;

namespace Staging.Core.Plans.Forms;

/// <summary>The ground and the air above it.</summary>
internal static class SiteForms
{
    private static readonly RecordForm<StandardAtmosphere> UsStandard = new("US Standard Atmosphere 1976", _ => _ => StandardAtmosphere.Us1976);

    private static readonly RecordForm<SiteAtmosphere> AtSite = new("air at a site", k =>
    {
        var elevation = k.Needs("elevation", Quantities.Length, x => x.Conditions.Elevation);
        var pressure = k.Needs("pressure", Quantities.Pressure, x => x.Conditions.Pressure);
        var temperature = k.Needs("temperature", Quantities.Temperature, x => x.Conditions.Temperature);
        var humidity = k.Needs("relativeHumidity", NumberForm.Ratio, x => x.Conditions.RelativeHumidity);
        return v => new SiteAtmosphere(new SiteConditions
        {
            Elevation = elevation(v), Pressure = pressure(v), Temperature = temperature(v), RelativeHumidity = humidity(v),
        });
    });

    private static readonly RecordForm<UniformAtmosphere> Uniform = new("uniform air", k =>
    {
        var pressure = k.Needs("pressure", Quantities.Pressure, x => x.Pressure);
        var temperature = k.Needs("temperature", Quantities.Temperature, x => x.Temperature);
        var density = k.Needs("density", Quantities.Density, x => x.Density);
        var sound = k.Needs("soundSpeed", Quantities.Speed, x => x.SoundSpeed);
        return v => new UniformAtmosphere { Pressure = pressure(v), Temperature = temperature(v), Density = density(v), SoundSpeed = sound(v) };
    });

    public static UnionForm<IAtmosphere> Atmosphere { get; } = new("an atmosphere",
    [
        new UnionCase<IAtmosphere, StandardAtmosphere>("usStandard1976", UsStandard),
        new UnionCase<IAtmosphere, SiteAtmosphere>("site", AtSite),
        new UnionCase<IAtmosphere, UniformAtmosphere>("uniform", Uniform),
    ]);

    public static RecordForm<Gravity> Gravity { get; } = new("gravity", k =>
    {
        var sea = k.Needs("atSeaLevel", Quantities.Acceleration, x => x.AtSeaLevel);
        var radius = k.MayNumber("radius", Quantities.Length, x => x.Radius);
        return v => new Gravity { AtSeaLevel = sea(v), Radius = radius(v) };
    });

    public static RecordForm<LaunchSite> Site { get; } = new("launch site", k =>
    {
        var atmosphere = k.Needs("atmosphere", Atmosphere, x => x.Atmosphere);
        var elevation = k.Needs("elevation", Quantities.Length, x => x.Elevation);
        var wind = k.Needs("wind", Quantities.Speed, x => x.Wind);
        var gravity = k.Or("gravity", Gravity, x => x.Gravity, Flight.Gravity.Standard);
        return v => new LaunchSite { Atmosphere = atmosphere(v), Elevation = elevation(v), Wind = wind(v), Gravity = gravity(v) };
    });

    public static RecordForm<LaunchGuide> Guide { get; } = new("launch guide", k =>
    {
        var length = k.Needs("length", Quantities.Length, x => x.Length);
        var elevation = k.Needs("elevation", Quantities.Angle, x => x.Elevation);
        var friction = k.Needs("frictionCoefficient", NumberForm.Ratio, x => x.FrictionCoefficient);
        var constant = k.Needs("constantFriction", Quantities.Force, x => x.ConstantFriction);
        return v => new LaunchGuide { Length = length(v), Elevation = elevation(v), FrictionCoefficient = friction(v), ConstantFriction = constant(v) };
    });
}
