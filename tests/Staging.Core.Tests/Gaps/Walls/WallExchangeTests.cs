using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Gaps.Walls;

/// <summary>Convection and radiation to a wall.</summary>
public class WallExchangeTests
{
    private const double Sigma = 5.670374419e-8;

    [Fact]
    public void Products_radiate_by_the_fourth_powers_and_air_does_not()
    {
        var walls = new WallExchange(0, 0.5, 288);
        double flux = 0.5 * Sigma * (Math.Pow(1600, 4) - Math.Pow(288, 4));
        Assert.Equal(flux, walls.Coefficient<Real>(1600, 1).Value * (1600 - 288), 1e-9 * flux);
        Assert.Equal(0.3 * flux, walls.Coefficient<Real>(1600, 0.3).Value * (1600 - 288), 1e-9 * flux);
        Assert.Equal(0, walls.Coefficient<Real>(1600, 0).Value);

        // As much again as the wall takes by convection: 57 to 255 W/(m2 K) over the judged range of emissivities.
        Assert.Equal(141.5, walls.Coefficient<Real>(1600, 1).Value, 0.05);
    }

    [Fact]
    public void Without_emissivity_the_coefficient_is_the_given_one_to_the_last_bit()
    {
        var walls = new WallExchange(213.7, 0, 288.15);
        foreach (double T in (ReadOnlySpan<double>)[100, 288.15, 333.3, 1911.7])
        {
            Assert.Equal(213.7, walls.Coefficient<Real>(T, 0.77).Value);
            double x = 3e-4 * 213.7 * 0.02 / 0.7;
            Assert.Equal(1 - 1 / (1 + x + 0.5 * x * x), walls.ShareLost(3e-4, 0.02, 0.7, T, 0.77));
        }
    }

    [Fact]
    public void Before_a_wall_without_temperature_the_inverse_cube_of_the_temperature_grows_evenly_with_time()
    {
        // C dT/dt = -eps sigma A T^4: T^-3 = T0^-3 + 3 eps sigma A t/C; second order in the step.
        var walls = new WallExchange(0, 0.8, 1e-9);
        const double capacity = 0.3, area = 0.011, time = 0.02;
        double exact = Math.Pow(Math.Pow(2000, -3) + 3 * 0.8 * Sigma * area * time / capacity, -1 / 3.0);
        double Off(int steps)
        {
            double T = 2000;
            for (int i = 0; i < steps; i++)
                T -= T * walls.ShareLost(time / steps, area, capacity, T, 1);
            return Math.Abs(T - exact);
        }

        Assert.InRange(exact, 1500, 1700);
        Assert.InRange(Off(200), 0, 1e-5 * exact);
        Assert.InRange(Off(100) / Off(200), 3.7, 4.3);
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(1e6)]
    public void No_time_takes_more_than_there_is(double time) =>
        Assert.InRange(new WallExchange(20000, 1, 288).ShareLost(time, 1, 1e-3, 2500, 1), 0, 1);
}
