using Staging.Core.Gaps;

namespace Staging.Core.Tests.Gaps;

/// <summary>The marched surface temperature against exact solutions of Duhamel's integral.</summary>
public class HeatedSurfaceTests
{
    private const double Effusivity = 714.0;

    [Fact]
    public void Constant_flux_gives_the_square_root_of_time()
    {
        var surface = new HeatedSurface(Effusivity, 20e-6, 0.2);
        surface.Start(1e6);
        for (int i = 1; i <= 5000; i++)
        {
            surface.Settle(20e-6);
            surface.Advance(1e6);
            double exact = 2e6 * Math.Sqrt(i * 20e-6 / Math.PI) / Effusivity;
            Assert.InRange(surface.Rise / exact - 1, -1e-6, 1e-6);
        }
    }

    [Fact]
    public void Linear_flux_is_marched_exactly()
    {
        // q = a t: theta = 4 a t^1.5 / (3 sqrt(pi) e).
        var surface = new HeatedSurface(Effusivity, 20e-6, 0.2);
        surface.Start(0);
        for (int i = 1; i <= 2000; i++)
        {
            double t = i * 20e-6;
            surface.Settle(20e-6);
            surface.Advance(1e9 * t);
            double exact = 4e9 * Math.Pow(t, 1.5) / (3 * Math.Sqrt(Math.PI) * Effusivity);
            Assert.InRange(surface.Rise / exact - 1, -1e-6, 1e-6);
        }
    }

    [Fact]
    public void A_curved_flux_converges_to_second_order()
    {
        // q = a t^2: theta = 16 a t^2.5 / (15 sqrt(pi) e).
        double Error(double h)
        {
            var surface = new HeatedSurface(Effusivity, h, 0.2);
            surface.Start(0);
            int n = (int)Math.Round(0.01 / h);
            for (int i = 1; i <= n; i++)
            {
                surface.Settle(h);
                surface.Advance(1e12 * i * h * i * h);
            }

            double exact = 16e12 * Math.Pow(0.01, 2.5) / (15 * Math.Sqrt(Math.PI) * Effusivity);
            return Math.Abs(surface.Rise / exact - 1);
        }

        double order = Math.Log2(Error(1e-3) / Error(5e-4));
        Assert.InRange(order, 1.7, 2.3);
    }

    [Fact]
    public void A_look_ahead_of_any_size_agrees_with_the_step()
    {
        var surface = new HeatedSurface(Effusivity, 20e-6, 0.2);
        surface.Start(2e5);
        for (int i = 0; i < 100; i++)
        {
            surface.Settle(20e-6);
            surface.Advance(2e5 + 1e3 * i);
        }

        double ahead = surface.Settle(7e-6) + surface.Gain * 3e5;
        surface.Advance(3e5);
        Assert.Equal(ahead, surface.Rise, 9);
    }

    [Fact]
    public void Heating_then_cooling_returns_towards_the_start()
    {
        var surface = new HeatedSurface(Effusivity, 20e-6, 0.2);
        surface.Start(1e6);
        double last = 0;
        for (int i = 1; i <= 3000; i++)
        {
            surface.Settle(20e-6);
            surface.Advance(i <= 500 ? 1e6 : 0);
            if (i == 500)
                last = surface.Rise;
        }

        // After a pulse of length t1: theta = 2 q (sqrt(t) - sqrt(t - t1)) / (sqrt(pi) e). The flux falls over one step: half a step more.
        double expected = 2e6 * (Math.Sqrt(0.06) - Math.Sqrt(0.06 - 0.01001)) / (Math.Sqrt(Math.PI) * Effusivity);
        Assert.InRange(surface.Rise, 0, 0.3 * last);
        Assert.InRange(surface.Rise / expected - 1, -1e-6, 1e-6);
    }

    [Theory]
    [InlineData(20e-6, 0.2)]
    [InlineData(50e-6, 10)]
    [InlineData(1e-3, 10)]
    public void The_kernel_keeps_its_error_from_the_first_step_to_the_longest_time(double h, double longest)
    {
        // A jump at zero is the hardest start. 1e-6: trapezoidal 2e-7, lumped modes 1e-7, fast modes exp(-16).
        var surface = new HeatedSurface(Effusivity, h, longest);
        surface.Start(1e6);
        int n = (int)Math.Round(longest / h);
        for (int i = 1; i <= n; i++)
        {
            surface.Settle(h);
            surface.Advance(1e6);
            double exact = 2e6 * Math.Sqrt(i * h / Math.PI) / Effusivity;
            Assert.InRange(surface.Rise / exact - 1, -1e-6, 1e-6);
        }
    }

    [Fact]
    public void The_number_of_modes_follows_from_the_error_asked_for() => Assert.InRange(new HeatedSurface(Effusivity, 20e-6, 0.2).ModeCount, 25, 32);
}
