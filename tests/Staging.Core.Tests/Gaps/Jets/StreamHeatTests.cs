using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Gaps.Jets;

/// <summary>What a stream of products brings to the grain, each part worked by hand from its law.</summary>
public class StreamHeatTests
{
    private const double Sigma = 5.670374419e-8, P = 3e5, T = 1500, Speed = 40;

    private static readonly GapParameters Gap = GapToSi.ToSi(Bench.Gap);

    /// <summary>Of the powder of the bench 35 % are particles: the gas alone makes the boundary layer, and the particles that strike give up a share of their heat.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(1)]
    public void Convection_particles_and_radiation_by_hand(double products)
    {
        GrainHeating heating = Heating(products);
        double R = products * Gap.Products.R + (1 - products) * Gap.Air.R, cp = products * Gap.Products.Cp + (1 - products) * Gap.Air.Cp;
        double particles = 0.35 * products, flux = P / (R * T) * Speed, d = 3.5e-3, mu = 1.458e-6 * T * Math.Sqrt(T) / (T + 110.4);
        double convective = 0.763 * Math.Sqrt((1 - particles) * flux * d / mu) * Math.Pow(0.7, 0.4) * mu * cp / 0.7 / d;
        Assert.Equal(convective * 1000, heating.Convection(500), 1e-9 * convective * 1000);
        Assert.Equal(0.25 * particles * flux * 1200 * 1000, heating.Particles(500), 1e-9 * convective * 1000);
        Assert.Equal(0.5 * products * Sigma * (Math.Pow(T, 4) - Math.Pow(500, 4)), heating.Radiation(500), 1e-9 * convective * 1000);
        Assert.Equal(heating.Convection(500) + heating.Particles(500) + heating.Radiation(500), heating.Total(500), 1e-6);
    }

    /// <summary>Near is a share: with the pressure, and with it the flow, a fifth higher particles bring a fifth more, and all the way to there counts in proportion.</summary>
    [Theory]
    [InlineData(0.001)]
    [InlineData(0.1)]
    [InlineData(1)]
    public void Near_is_within_a_share_of_each_quantity(double way)
    {
        GrainHeating one = Heating(1, P), other = one.Towards(Heating(1, 1.2 * P), way);
        Assert.True(one.IsNear(other, 0.2 * way * (1 + 1e-6)));
        Assert.False(one.IsNear(other, 0.2 * way * (1 - 1e-6)));
    }

    private static GrainHeating Heating(double products, double P = P)
    {
        double R = products * Gap.Products.R + (1 - products) * Gap.Air.R, density = P / (R * T);
        double energy = density * (products * Gap.Products.Cv + (1 - products) * Gap.Air.Cv) * T;
        return new GrainHeating(new Zone<Real>(density * products, density * (1 - products), energy, Gap.Products, Gap.Air), P, Speed, Gap);
    }
}
