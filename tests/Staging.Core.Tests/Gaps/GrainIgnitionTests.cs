using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

public class GrainIgnitionTests
{
    private static readonly UpperGrain Grain = Bench.Design.Grain;

    /// <summary>Lit in good time, so that a step of some percent does not put it out.</summary>
    private static readonly GapProblem Lighting = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(200) });

    [Fact]
    public void Time_to_light_is_when_the_surface_gets_there()
    {
        HeatFlux flux = HeatFlux.FromKilowattsPerSquareMeter(2000);
        HeatTransferCoefficient h = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1500);
        Temperature gas = Temperature.FromKelvins(1700);
        Assert.Equal(773, Grain.SurfaceUnderFlux(flux, Grain.TimeUnderFlux(flux)).Kelvins, 1e-9);
        Duration lit = Grain.TimeUnderConvection(h, gas)!.Value;
        Assert.Equal(773, Grain.SurfaceUnderConvection(h, gas, lit).Kelvins, 1e-8);
    }

    [Fact]
    public void Gas_cooler_than_the_ignition_temperature_never_lights()
    {
        HeatTransferCoefficient h = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1e5);
        Assert.Null(Grain.TimeUnderConvection(h, Temperature.FromKelvins(772)));
        // Hot enough by a thousandth of the excess, and by a tenth of that.
        double initial = Grain.InitialTemperature.Kelvins, rise = Grain.IgnitionTemperature.Kelvins - initial;
        Assert.NotNull(Grain.TimeUnderConvection(h, Temperature.FromKelvins(initial + 1.001 * rise)));
        Assert.Null(Grain.TimeUnderConvection(h, Temperature.FromKelvins(initial + 1.0001 * rise)));
        Assert.Null(Grain.TimeUnderConvection(h, Temperature.FromKelvins(250)));
        Assert.NotNull(Grain.TimeUnderConvection(h, Temperature.FromKelvins(780)));
    }

    [Fact]
    public void Doses_are_the_integrals_of_the_fluxes_and_their_shares_are_whole()
    {
        GapRun run = Lighting.Solve();
        GrainHeat heat = run.HeatAtLighting()!;
        Assert.Equal(run.TimeOf(GapEventKind.Lit), heat.Time);
        Assert.Equal(1, heat.ConvectionShare + heat.RadiationShare + heat.ParticlesShare, 1e-12);
        Assert.All([heat.ConvectionShare, heat.RadiationShare, heat.ParticlesShare], share => Assert.InRange(share, 0.01, 0.99));
        // A semi-infinite solid at 773 K has taken between sqrt(pi/4) and 1 times what a constant flux would need for it, for any rising flux; here a sanity of scale.
        double constant = heat.Total.WattsPerSquareMeter * heat.Time.Seconds;
        Assert.InRange(heat.TotalDose.JoulesPerSquareMeter, 0.05 * constant, constant);
        GrainHeat later = run.HeatAt(run.End);
        Assert.True(later.TotalDose > heat.TotalDose);
    }

    [Fact]
    public void An_unlit_run_has_no_heat_at_lighting() => Assert.Null(Bench.Gap.With(d => d with { Joint = Bench.Joint(1) }).Solve().HeatAtLighting());

    [Fact]
    public void The_last_mark_is_read_as_it_stands_however_many_there_are()
    {
        GapParameters p = GapToSi.ToSi(Bench.Gap);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        GrainHeating heating = new LumpedView(p, y).HeatingAt(0);
        var tracker = new IgnitionTracker(p);
        tracker.Start(heating);
        for (int mark = 1; mark <= 600; mark++)
        {
            tracker.March(heating);
            Assert.Equal(tracker.Surface, tracker.SurfaceAt(IgnitionTracker.TimeOf(mark + 1)));
        }
    }
}
