using Staging.Core.Gases;

namespace Staging.Core.Validation.Twin;

/// <summary>
/// What constant heat capacities cost. The library's gases are calorically perfect; here the same front is computed with heat
/// capacities that follow temperature (NASA fits, gas composition frozen, particles constant) and the times are compared. The numbers are
/// shown in docs/theory/gases.md.
/// </summary>
public class GasHeatCapacityStudy
{
    private const double T_air = 288.15;
    private const double p_a = 101325;

    private static readonly double Flame = BlackPowderProducts.FlameTemperature.Nominal;

    private static readonly HeatTable Air = HeatTable.Air();

    private static readonly HeatTable Hot =
        HeatTable.Products(BlackPowderProducts.GasMassFraction.Nominal, BlackPowderProducts.ParticleHeatCapacity.Nominal);

    [Fact]
    public void The_table_agrees_with_the_constant_gas_where_it_is_frozen()
    {
        Assert.Equal(1.14, Hot.Gamma(Flame), 0.005);
        Assert.Equal(1.4, Air.Gamma(300), 0.001);
        double gamma = Hot.Gamma(Flame);
        HeatTable frozen = Hot.FrozenAt(Flame);
        double flux = IsentropicFlow.CriticalFlowFactor(gamma) / Math.Sqrt(frozen.R * Flame);
        Assert.Equal(1, frozen.Flux(Flame, 0.1) / flux, 1e-10);
        double unchoked = IsentropicFlow.ThroatMassFlow(0.8, gamma) / Math.Sqrt(frozen.R * Flame);
        Assert.Equal(1, frozen.Flux(Flame, 0.8) / unchoked, 1e-10);
    }

    [Fact]
    public void Front_at_ambient_pressure_from_a_chamber_that_blows_down()
    {
        (double half, double most) = AmbientFront(Hot);
        (double constantHalf, double constantMost) = AmbientFront(Hot.FrozenAt(Flame));
        Assert.Equal(0.02, Percent(constantHalf, half), 0.01);
        Assert.Equal(-0.06, Percent(constantMost, most), 0.01);
    }

    [Theory]
    [InlineData(1.5, -0.02)]
    [InlineData(2, -0.06)]
    [InlineData(3, -0.11)]
    public void Front_and_pressure_in_a_closed_gap(double pressure, double percent)
    {
        double variable = ClosedGapMass(pressure * p_a, Hot, Air);
        double constant = ClosedGapMass(pressure * p_a, Hot.FrozenAt(Flame), Air.FrozenAt(300));
        Assert.Equal(percent, Percent(constant, variable), 0.01);
    }

    [Theory]
    [InlineData(1600, 0.14, -0.04)]
    [InlineData(1200, 1.26, -0.38)]
    [InlineData(900, 4.23, -1.21)]
    [InlineData(600, 15.03, -3.73)]
    public void Front_of_products_that_lose_heat_evenly_on_the_way(double arrival, double temperature, double time)
    {
        HeatTable frozen = Hot.FrozenAt(Flame);
        double lost = frozen.Enthalpy(arrival, Flame);
        Assert.Equal(temperature, Percent(arrival, After(Hot, lost)), 0.01);
        Assert.Equal(time, Percent(TravelTime(frozen), TravelTime(Hot)), 0.01);

        // At ambient pressure the front moves with mdot R T/(p A): its time goes with the mean of 1/T.
        double TravelTime(HeatTable gas)
        {
            const int n = 400;
            double sum = 0;
            for (int i = 0; i < n; i++)
                sum += 1 / After(gas, lost * (i + 0.5) / n);
            return sum / n;
        }

        static double After(HeatTable gas, double loss) => HeatTable.Bisect(300, Flame, t => loss - gas.Enthalpy(t, Flame));
    }

    private static double Percent(double constant, double variable) => 100 * (constant / variable - 1);

    /// <summary>
    /// A chamber at 10 bar empties, without heat loss, into a gap that its vents hold at ambient pressure; every slice of products keeps the
    /// temperature at which it left. Times (in chamber volume over opening area) at which the front has swept half and nine tenths of
    /// the volume that it sweeps with constant values until the chamber is down to 1.05 times ambient.
    /// </summary>
    private static (double Half, double Max) AmbientFront(HeatTable gas)
    {
        const double p0 = 10 * p_a, step = 2e-3;
        double whole = 0.96 * Swept(Hot.FrozenAt(Flame), double.MaxValue).Volume;
        return (Swept(gas, 0.5 * whole).Time, Swept(gas, 0.9 * whole).Time);

        static (double Time, double Volume) Swept(HeatTable g, double until)
        {
            (double t, double V, double ln) = (0, 0, 0);
            while (true)
            {
                // Chamber gas expands isentropically; the slice from ln p to ln p - step leaves at the mean state.
                double p = p0 * Math.Exp(ln - step / 2);
                double T = g.Isentrope(Flame, p / p0);
                double before = p0 * Math.Exp(ln) / (g.R * g.Isentrope(Flame, Math.Exp(ln)));
                double after = p0 * Math.Exp(ln - step) / (g.R * g.Isentrope(Flame, Math.Exp(ln - step)));
                double dm = before - after;
                double dt = dm / (p * g.Flux(T, p_a / p));
                double dV = dm * g.R * T / p_a;
                if (V + dV >= until)
                    return (t + dt * (until - V) / dV, until);
                (t, V, ln) = (t + dt, V + dV, ln - step);
                if (p0 * Math.Exp(ln - step) < 1.05 * p_a)
                    return (t, V);
            }
        }
    }

    /// <summary>
    /// Mass of products, per volume of a closed gap [kg/m3], that has entered at flame temperature when the pressure has reached p: air
    /// ahead of the front compressed isentropically, energy of both zones balanced. At constant inflow it is the time.
    /// </summary>
    private static double ClosedGapMass(double p, HeatTable hot, HeatTable air)
    {
        double T_c = air.Isentrope(T_air, p / p_a);
        double m_c = p_a / (air.R * T_air);
        double V_h = 1 - m_c * air.R * T_c / p;
        double workOnAir = m_c * (air.Enthalpy(T_air, T_c) - air.R * (T_c - T_air));
        double T_h = HeatTable.Bisect(400, 3500, t =>
        {
            double m = p * V_h / (hot.R * t);
            return workOnAir - m * (hot.Enthalpy(t, Flame) + hot.R * t);
        });
        return p * V_h / (hot.R * T_h);
    }
}
