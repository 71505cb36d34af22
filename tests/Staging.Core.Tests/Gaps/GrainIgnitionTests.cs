using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Tests.Hygiene.Sources;
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
        Assert.Equal(773, GrainIgnition.SurfaceUnderFlux(Grain, flux, GrainIgnition.TimeUnderFlux(Grain, flux)).Kelvins, 1e-9);
        Duration lit = GrainIgnition.TimeUnderConvection(Grain, h, gas)!.Value;
        Assert.Equal(773, GrainIgnition.SurfaceUnderConvection(Grain, h, gas, lit).Kelvins, 1e-8);
    }

    [Fact]
    public void Gas_cooler_than_the_ignition_temperature_never_lights()
    {
        HeatTransferCoefficient h = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1e5);
        Assert.Null(GrainIgnition.TimeUnderConvection(Grain, h, Temperature.FromKelvins(772)));
        Assert.Null(GrainIgnition.TimeUnderConvection(Grain, h, Temperature.FromKelvins(250)));
        Assert.NotNull(GrainIgnition.TimeUnderConvection(Grain, h, Temperature.FromKelvins(780)));
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
    public void Conductivity_density_and_heat_capacity_count_alike()
    {
        ImmutableArray<IgnitionTimeSlope> slopes = Lighting.SensitivityOfIgnitionTime(0.02);
        double Of(string name) => Assert.Single(slopes, s => s.Input == name).Slope;
        // Only their product is felt; what differs is the error of the differences.
        Assert.Equal(Of("Grain.Conductivity"), Of("Grain.Density"), 1e-5);
        Assert.Equal(Of("Grain.Conductivity"), Of("Grain.HeatCapacity"), 1e-5);
        Assert.True(Of("Grain.Conductivity") > 0);
        Assert.True(Of("Grain.IgnitionTemperature") > 0);
        Assert.True(Of("Closures.ParticleEfficiency") < 0);
        Assert.True(Of("Closures.Emissivity") < 0);
        Assert.True(Of("Closures.DeadEndExchange") < 0);
        Assert.All(slopes, s => Assert.InRange(s.StepError, 0, 0.01));
    }

    [Fact]
    public void Slopes_do_not_depend_on_the_step()
    {
        ImmutableArray<IgnitionTimeSlope> wide = Lighting.SensitivityOfIgnitionTime(0.02), narrow = Lighting.SensitivityOfIgnitionTime(0.01);
        foreach (IgnitionTimeSlope slope in wide)
        {
            double other = Assert.Single(narrow, s => s.Input == slope.Input).Slope;
            // Extrapolated, each errs by far less than the halving of the step changed it. A lit time is good to 1e-6 (flux linear over 20
            // microseconds, wherever within them it falls), which half the narrow step, 0.005, makes 2e-4, and the extrapolation 3e-4.
            Assert.Equal(slope.Slope, other, slope.StepError + 3e-4);
        }
    }

    [Fact]
    public void A_gap_that_does_not_light_has_no_slopes() =>
        Assert.Empty(Bench.Gap.With(d => d with { Joint = Bench.Joint(1) }).SensitivityOfIgnitionTime(0.02));

    [Fact]
    public void The_table_and_the_shares_of_the_page_are_those_of_the_run()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(100) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        FrictionJoint joint = start.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(60), SlidingForce = Force.FromNewtons(48) };
        GapProblem gap = start.With(d => d with { Tube = tube, Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))], Joint = joint });
        string page = Assert.Single(Repository.Files("docs", "ignition.md")).Text;
        ImmutableArray<IgnitionTimeSlope> slopes = gap.SensitivityOfIgnitionTime(0.02);
        Assert.Equal(13, slopes.Length);
        Assert.All(slopes, s => Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"| `{s.Input}` | {s.Slope:F2} |\n"), page, StringComparison.Ordinal));
        GrainHeat heat = gap.Solve().HeatAtLighting()!;
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"particles bring {100 * heat.ParticlesShare:F1} %, convection {100 * heat.ConvectionShare:F1} %, radiation {100 * heat.RadiationShare:F1} %"),
            page,
            StringComparison.Ordinal);
    }
}
