using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Friction and heat loss of the wall against their closed forms, for gas that is the same in every cell.</summary>
public class WallLossesTests
{
    private const double Bore = 0.018;
    private static readonly GasConstants Air = new(Tubes.Air, 1.4);

    [Fact]
    public void Turbulent_friction_slows_a_stream_as_Blasius_says()
    {
        // du/dt = -(0.3164/2D) (mu/(rho D))^(1/4) u^(7/4), so u^(-3/4) grows evenly. The gas is dense and stays cold: mu does not change.
        const double rho = 60, u0 = 20, T = 288.15, time = 0.05;
        TubeArrays a = Uniform(rho, u0, T);
        for (int s = 0; s < 1000; s++)
            WallLosses<Lane1>.Apply(a, time / 1000, Bore, new WallExchange(0, 0, T), Air, Air);
        double mu = 1.458e-6 * T * Math.Sqrt(T) / (T + 110.4);
        double k = 0.3164 / (2 * Bore) * Math.Pow(mu / (rho * Bore), 0.25);
        double expected = Math.Pow(Math.Pow(u0, -0.75) + 0.75 * k * time, -4.0 / 3);
        Assert.InRange(a.Momentum[a.First] / rho / expected - 1, -1e-4, 1e-4);
        Assert.True(expected < 0.9 * u0, "friction matters here");
    }

    [Fact]
    public void Creeping_flow_slows_as_Hagen_and_Poiseuille_say()
    {
        const double rho = 1.2, u0 = 1e-3, T = 288.15, time = 0.05;
        TubeArrays a = Uniform(rho, u0, T);
        for (int s = 0; s < 1000; s++)
            WallLosses<Lane1>.Apply(a, time / 1000, Bore, new WallExchange(0, 0, T), Air, Air);
        double mu = 1.458e-6 * T * Math.Sqrt(T) / (T + 110.4);
        Assert.InRange(a.Momentum[a.First] / rho / (u0 * Math.Exp(-32 * mu / (rho * Bore * Bore) * time)) - 1, -1e-5, 1e-5);
    }

    [Fact]
    public void Heat_leaves_exponentially_and_is_counted_to_round_off()
    {
        const double rho = 0.3, T = 1500, wall = 288.15, h = 500, time = 5e-3;
        TubeArrays a = Uniform(rho, 0, T);
        double before = a.Energy[a.First], lost = 0;
        for (int s = 0; s < 200; s++)
            lost += WallLosses<Lane8>.Apply(a, time / 200, Bore, new WallExchange(h, 0, wall), Air, Air);
        double X = 4 * h / (Bore * rho * Air.Cv) * time, x = X / 200;
        double expected = (T - wall) * Math.Exp(-X), rise = a.Energy[a.First] / (rho * Air.Cv) - wall;

        // A step errs by x^3/6 of the rise (the next term of the exponential), all steps together by X x^2/6; a tenth more for higher terms.
        Assert.InRange(rise / expected - 1, 0, 1.1 * X * x * x / 6);
        Assert.InRange(lost / (a.Count * (before - a.Energy[a.First])) - 1, -1e-12, 1e-12);
    }

    [Fact]
    public void Products_radiate_by_the_law_of_the_inverse_cube_to_second_order()
    {
        // rho cv dT/dt = -(4/D) eps sigma T^4 before a wall without temperature.
        const double rho = 0.3, T = 1900, time = 0.002;
        double exact = Math.Pow(Math.Pow(T, -3) + 12 * 0.7 * 5.670374419e-8 * time / (Bore * rho * Air.Cv), -1 / 3.0);
        double Off(int steps)
        {
            TubeArrays a = Uniform(rho, 0, T);
            a.Density.CopyTo(a.Products, 0);
            for (int s = 0; s < steps; s++)
                WallLosses<Lane8>.Apply(a, time / steps, Bore, new WallExchange(0, 0.7, 1e-9), Air, Air);
            return Math.Abs(a.Energy[a.First] / (rho * Air.Cv) - exact);
        }

        Assert.InRange(exact, 1000, 1700);
        Assert.InRange(Off(200), 0, 1e-4 * exact);
        Assert.InRange(Off(100) / Off(200), 3.7, 4.3);
    }

    [Fact]
    public void No_step_is_too_long()
    {
        TubeArrays a = Uniform(1e-6, 500, 2000);
        WallLosses<Lane8>.Apply(a, 10, Bore, new WallExchange(20000, 0.9, 288.15), Air, Air);
        double T = (a.Energy[a.First] - 0.5 * a.Momentum[a.First] * a.Momentum[a.First] / 1e-6) / (1e-6 * Air.Cv);
        Assert.InRange(T, 288.14, 300);
        Assert.InRange(a.Momentum[a.First], 0, 1e-8);
    }

    [Fact]
    public void Every_number_of_lanes_gives_the_same_bits()
    {
        TubeArrays one = Varied(), four = Varied(), eight = Varied();
        WallLosses<Lane1>.Apply(one, 1e-4, Bore, new WallExchange(200, 0.5, 288.15), new GasConstants(150, 1.15), Air);
        WallLosses<Lane4>.Apply(four, 1e-4, Bore, new WallExchange(200, 0.5, 288.15), new GasConstants(150, 1.15), Air);
        WallLosses<Lane8>.Apply(eight, 1e-4, Bore, new WallExchange(200, 0.5, 288.15), new GasConstants(150, 1.15), Air);
        for (int i = one.First; i < one.End; i++)
        {
            Assert.Equal(one.Momentum[i], four.Momentum[i]);
            Assert.Equal(one.Energy[i], four.Energy[i]);
            Assert.Equal(one.Momentum[i], eight.Momentum[i]);
            Assert.Equal(one.Energy[i], eight.Energy[i]);
        }
    }

    private static TubeArrays Varied()
    {
        var a = new TubeArrays(37, 0);
        for (int i = a.First; i < a.End; i++)
        {
            a.Density[i] = 0.3 + 0.02 * i;
            a.Momentum[i] = 10 * Math.Sin(i);
            a.Energy[i] = 2.5e5 + 1e3 * i;
            a.Products[i] = a.Density[i] * i / 40;
        }

        return a;
    }

    private static TubeArrays Uniform(double rho, double u, double T)
    {
        var a = new TubeArrays(13, 0);
        for (int i = a.First; i < a.End; i++)
        {
            a.Density[i] = rho;
            a.Momentum[i] = rho * u;
            a.Energy[i] = rho * (Air.Cv * T + 0.5 * u * u);
        }

        return a;
    }
}
