using Staging.Core.Discharge;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>The chamber's opening as an end of the tube: below and above the speed of sound, shut, and run backwards.</summary>
public class ReservoirEndTests
{
    private const double Bore = 2.5e-4;
    private static readonly GasConstants Gas = new(150, 1.15);
    private static readonly GasConstants Air = new(Tubes.Air, 1.4);

    [Fact]
    public void A_shut_opening_is_a_wall()
    {
        ReservoirEnd end = Chamber(800e3, 0);
        var inside = new EndState(1.2, -30, 101325, 0, 1.4);
        Assert.Equal(new ClosedEnd().Flow(inside), end.Flow(inside));
    }

    [Fact]
    public void At_equal_pressures_and_at_rest_nothing_flows()
    {
        EndFlux flux = Chamber(101325, 0.4).Flow(new EndState(1.2, 0, 101325, 0, 1.4));
        Assert.InRange(flux.Mass, -1e-6, 1e-6);
        Assert.InRange(flux.Momentum / 101325 - 1, -1e-8, 1e-8);
    }

    [Theory]
    [InlineData(1.15, 1e-5)]
    [InlineData(1.15, -1e-5)]
    [InlineData(1.4, 1e-5)]
    [InlineData(1.4, -1e-5)]
    public void A_weak_wave_is_sound_whether_it_compresses_or_expands(double gamma, double rise)
    {
        // du = dp/(rho a) and drho = dp/a^2; the next terms are of the size of the rise.
        var inside = new EndState(1.2, 20, 101325, 0, gamma);
        double a = inside.SoundSpeed, dp = rise * 101325, tolerance = 2 * Math.Abs(rise);
        Assert.Equal(1, (inside.VelocityAt(101325 + dp) - 20) / (dp / (1.2 * a)), tolerance);
        Assert.Equal(1, (inside.DensityAt(101325 + dp) - 1.2) / (dp / (a * a)), tolerance);
    }

    [Theory]
    [InlineData(105e3)]
    [InlineData(130e3)]
    [InlineData(800e3)]
    public void Law_tube_and_filled_bore_agree_on_one_pressure(double pressure)
    {
        ChamberOpening mouth = Mouth(pressure, 0.3);
        var end = new ReservoirEnd(Bore, mouth);
        var inside = new EndState(1.2, 5, 101325, 0, 1.4);
        EndFlux flux = end.Flow(inside);
        double p = end.LastPressure, H = Gas.Cp * 1900;
        double byLaw = OrificeKernel.SignedMassFlow(
            ConstantCoefficientLaw.Ideal, mouth.Opening, mouth.Chamber, new OrificeSide(p, 1900, Gas)) / Bore;
        double u = (flux.Momentum - p) / flux.Mass, T = p * u / (flux.Mass * Gas.R);
        Assert.InRange(flux.Mass / byLaw - 1, -1e-9, 1e-9);
        Assert.InRange((Gas.Cp * T + 0.5 * u * u) / H - 1, -1e-9, 1e-9);
        Assert.InRange(u - inside.VelocityAt(p), -1e-6, 1e-6);
        Assert.Equal(flux.Mass * H, flux.Energy, 1e-9 * flux.Mass * H);
    }

    [Fact]
    public void Into_near_vacuum_the_flow_is_choked_and_no_faster_than_its_widening_allows()
    {
        ReservoirEnd end = Chamber(800e3, 0.25);
        EndFlux flux = end.Flow(new EndState(1e-5, 0, 1, 0, 1.4));
        double choked = 0.25 * 800e3 / Math.Sqrt(Gas.R * 1900) * IsentropicFlow.CriticalFlowFactor(Gas.Gamma);
        double M = IsentropicFlow.SupersonicMach(4, Gas.Gamma), T = 1900 * IsentropicFlow.TemperatureRatio(M, Gas.Gamma);
        double u = M * Math.Sqrt(Gas.Gamma * Gas.R * T);
        Assert.InRange(flux.Mass / choked - 1, -1e-9, 1e-9);
        Assert.InRange((flux.Momentum - end.LastPressure) / flux.Mass / u - 1, -1e-9, 1e-9);
    }

    [Fact]
    public void A_tube_at_higher_pressure_runs_back_with_its_own_gas()
    {
        EndFlux flux = Chamber(101325, 0.3).Flow(new EndState(1.2, 0, 150e3, 0.25, 1.4));
        Assert.True(flux.Mass < 0);
        Assert.Equal(0.25 * flux.Mass, flux.Products, 12);
    }

    /// <summary>Critical mass flux of gas at rest: every wave that could hold it back is carried out by the flow itself.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(40)]
    public void Gas_at_rest_leaves_at_most_with_the_speed_of_sound_however_wide_the_opening(double openShare)
    {
        var inside = new EndState(4, 0, 1e6, 1, Gas.Gamma);
        double unhindered = inside.Density * inside.SoundSpeed
            * Math.Pow(2 / (Gas.Gamma + 1), (Gas.Gamma + 1) / (Gas.Gamma - 1)), a = 2 / (Gas.Gamma + 1) * inside.SoundSpeed;
        EndFlux flux = Chamber(10, openShare).Flow(inside);
        Assert.InRange(flux.Mass, -unhindered * (1 + 1e-9), 0);
        if (openShare == 1)
            return;
        Assert.Equal(-1, flux.Mass / unhindered, 1e-9);
        Assert.Equal(-a, (flux.Momentum - 1e6 * Math.Pow(a / inside.SoundSpeed, 2 * Gas.Gamma / (Gas.Gamma - 1))) / flux.Mass, 1e-6 * a);
    }

    [Fact]
    public void Gas_that_comes_faster_than_sound_leaves_as_it_comes_where_the_openings_pass_it()
    {
        var inside = new EndState(0.9, -2500, 100e3, 0.5, Gas.Gamma);
        EndFlux free = new OpenEnd().Flow(inside), flux = Chamber(101325, 40).Flow(inside);
        Assert.Equal(1, flux.Mass / free.Mass, 1e-9);
        Assert.Equal(1, flux.Momentum / free.Momentum, 1e-9);
        Assert.Equal(1, flux.Energy / free.Energy, 1e-9);
        Assert.Equal(1, flux.Products / free.Products, 1e-9);
    }

    /// <summary>From a wall to no hindrance at all, gas at rest, in flight, and faster than sound.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(-400)]
    [InlineData(-2500)]
    public void What_leaves_does_not_jump_where_the_tube_no_longer_hears_the_openings(double velocity)
    {
        var inside = new EndState(4, velocity, 1e6, 1, Gas.Gamma);
        EndFlux before = Chamber(101325, 0.01).Flow(inside);
        for (double share = 0.01; share < 20; share *= 1.002)
        {
            ChamberOpening mouth = Mouth(101325, share);
            EndFlux flux = new ReservoirEnd(Bore, mouth).Flow(inside);
            Assert.InRange(flux.Mass / before.Mass, 1 - 1e-9, 1.0021);
            Assert.InRange(flux.Momentum / before.Momentum, 0.98, 1.02);
            Assert.Equal(flux.Mass, mouth.Mass, 1e-12 * Math.Abs(flux.Mass));
            Assert.Equal(flux.Energy, mouth.Energy, 1e-12 * Math.Abs(flux.Energy));
            before = flux;
        }
    }

    [Fact]
    public void A_long_tube_fills_until_it_holds_the_pressure_of_its_chamber()
    {
        var tube = new TubeFlow(60, 1.0 / 60, Gas, Air) { Left = Chamber(150e3, 0.3) };
        for (int i = 0; i < 60; i++)
            tube.Fill(i, 1.2, 0, 101325, 0);
        tube.Look();
        tube.RunTo(0.3);
        Assert.All(tube.Cells.Pressure[tube.Cells.First..tube.Cells.End], p => Assert.InRange(p / 150e3, 0.98, 1.02));
    }

    [Theory]
    [InlineData(800e3, 0.2, 101325)]
    [InlineData(140e3, 0.05, 101325)]
    [InlineData(115e3, 0.02, 250e3)]
    public void Two_chambers_and_the_tube_balance_whichever_way_they_flow(double loud, double openShare, double inside)
    {
        ChamberOpening one = Mouth(loud, openShare), quiet = Mouth(102e3, 0.3);
        quiet.Fraction = 0.4;
        var end = new ReservoirEnd(Bore, one, quiet);
        EndFlux flux = end.Flow(new EndState(1.2, 0, inside, 0.1, 1.4));
        Assert.True(quiet.Mass < 0, "the quiet chamber takes gas in");
        double scale = Math.Abs(one.Mass) + Math.Abs(quiet.Mass);
        Assert.InRange((one.Mass + quiet.Mass - flux.Mass) / scale, -1e-14, 1e-14);
        Assert.InRange((one.Products + quiet.Products - flux.Products) / scale, -1e-14, 1e-14);
        Assert.InRange((one.Energy + quiet.Energy - flux.Energy) / (scale * one.Enthalpy), -1e-14, 1e-14);

        // What goes in lies between what the loud chamber and the tube hold; it is the loud one's alone where that gives enough.
        double fraction = quiet.Products / quiet.Mass;
        Assert.InRange(fraction, 0.1, 1 + 1e-14);
        Assert.Equal(flux.Mass > 0, fraction > 1 - 1e-12);
    }

    [Fact]
    public void Equal_chambers_are_one_with_their_openings_together()
    {
        var inside = new EndState(1.2, -20, 120e3, 0.1, 1.4);
        foreach (double pressure in (double[])[800e3, 130e3, 101325])
        {
            EndFlux whole = new ReservoirEnd(Bore, Mouth(pressure, 0.3)).Flow(inside);
            EndFlux parts = new ReservoirEnd(Bore, Mouth(pressure, 0.1), Mouth(pressure, 0.2)).Flow(inside);
            Assert.InRange(parts.Mass / whole.Mass - 1, -1e-9, 1e-9);
            Assert.InRange(parts.Momentum / whole.Momentum - 1, -1e-9, 1e-9);
            Assert.InRange(parts.Energy / whole.Energy - 1, -1e-9, 1e-9);
        }
    }

    [Fact]
    public void What_passes_does_not_jump_where_the_quiet_chamber_begins_to_draw_on_the_tube()
    {
        // The loud chamber's opening is narrowed until the quiet one takes all that it gives and more: the flow into the tube passes through zero.
        double before = double.NaN;
        int turned = 0;
        for (double share = 0.2; share > 0.002; share *= 0.97)
        {
            EndFlux flux = new ReservoirEnd(Bore, Mouth(400e3, share), Mouth(102e3, 0.3)).Flow(new EndState(1.2, 0, 120e3, 0.1, 1.4));
            if (double.IsFinite(before))
                Assert.InRange(Math.Abs(flux.Mass - before), 0, 12);
            turned += before > 0 && flux.Mass <= 0 ? 1 : 0;
            before = flux.Mass;
        }

        Assert.Equal(1, turned);
    }

    [Fact]
    public void A_loud_chamber_behind_a_pinhole_changes_next_to_nothing_of_what_a_quiet_one_takes()
    {
        var inside = new EndState(1.2, 0, 150e3, 0.25, 1.4);
        EndFlux alone = Chamber(102e3, 0.3).Flow(inside), both = new ReservoirEnd(Bore, Mouth(800e3, 1e-6), Mouth(102e3, 0.3)).Flow(inside);
        Assert.InRange(both.Mass / alone.Mass - 1, -1e-4, 1e-4);
        Assert.InRange(both.Energy / alone.Energy - 1, -1e-4, 1e-4);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(2000)]
    public void A_known_flow_enters_whatever_the_pressure_and_fills_the_bore_at_most_at_the_speed_of_sound(double mass)
    {
        double H = Gas.Cp * 1900;
        var end = new ReservoirEnd(Bore) { Feed = new EndFeed(mass, H, Gas) };
        EndFlux flux = end.Flow(new EndState(0.6, 10, 101325, 0.2, 1.4));
        Assert.Equal(mass, flux.Mass);
        Assert.Equal(mass, flux.Products);
        Assert.Equal(mass * H, flux.Energy, 1e-12 * mass * H);
        double u = (flux.Momentum - end.LastPressure) / mass, T = 1900 - 0.5 * u * u / Gas.Cp;
        Assert.InRange(u / Math.Sqrt(Gas.Gamma * Gas.R * T), 0, 1 + 1e-9);
        Assert.InRange(end.LastPressure * u / (mass * Gas.R * T) - 1, -1e-9, 1e-9);
    }

    private static ReservoirEnd Chamber(double pressure, double openShare) => new(Bore, Mouth(pressure, openShare));

    private static ChamberOpening Mouth(double pressure, double openShare) => new(ConstantCoefficientLaw.Ideal)
    {
        Opening = new OrificeSize(openShare * Bore, Math.Sqrt(4 / Math.PI * openShare * Bore), 0),
        Chamber = new OrificeSide(pressure, 1900, Gas),
        Fraction = 1,
    };
}
