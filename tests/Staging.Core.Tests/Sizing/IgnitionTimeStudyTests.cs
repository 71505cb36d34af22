using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Hygiene.Sources;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>How the time to ignition answers to its inputs: a study like any other.</summary>
public class IgnitionTimeStudyTests
{
    /// <summary>Lit in good time, so that a step of some percent does not put it out.</summary>
    private static readonly GapProblem Lighting = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(200) });

    [Fact]
    public void Conductivity_density_and_heat_capacity_count_alike()
    {
        ImmutableArray<TornadoBar> bars = Lighting.IgnitionTimeStudy(0.02).Bars(tail: 0.4);
        double Of(string path) => Assert.Single(bars, b => b.Input.Name == path).Slope!.Value;
        // Only their product is felt; what differs is the error of the differences.
        Assert.Equal(Of("grain.conductivity"), Of("grain.density"), 1e-5);
        Assert.Equal(Of("grain.conductivity"), Of("grain.heat-capacity"), 1e-5);
        Assert.True(Of("grain.conductivity") > 0);
        Assert.True(Of("grain.ignition") > 0);
        Assert.True(Of("closures.particle-efficiency") < 0);
        Assert.True(Of("closures.dead-end-exchange") < 0);
        Assert.All(bars, b => Assert.InRange(b.SlopeError!.Value, 0, 0.01));
    }

    [Fact]
    public void Slopes_do_not_depend_on_the_step()
    {
        ImmutableArray<TornadoBar> wide = Lighting.IgnitionTimeStudy(0.1).Bars(tail: 0.4), narrow = Lighting.IgnitionTimeStudy(0.05).Bars(tail: 0.4);
        foreach (TornadoBar bar in wide)
        {
            TornadoBar other = Assert.Single(narrow, b => b.Input.Name == bar.Input.Name);
            // Each errs by its own step. A time to ignition is good to 1e-6 (flux linear over 20 microseconds, wherever within them it
            // falls), which half the narrow step, 0.005, makes 2e-4 of slope, and the estimates of the errors 1e-4 more.
            Assert.Equal(bar.Slope!.Value, other.Slope!.Value, bar.SlopeError!.Value + other.SlopeError!.Value + 3e-4);
        }
    }

    [Fact]
    public void A_gap_that_does_not_light_is_refused_with_the_reason()
    {
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => Bench.Gap.With(d => d with { Joint = Bench.Joint(1) }).IgnitionTimeStudy()).Findings);
        Assert.Equal("SIZ005", finding.Code);
        Assert.Contains("does not light", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Inputs_that_are_zero_or_leave_their_range_are_left_out()
    {
        GapProblem gap = Lighting.With(d => d with { MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0.97 } });
        string[] paths = [.. gap.IgnitionTimeStudy(0.05).Inputs.Inputs.Select(i => i.Path)];
        Assert.Equal(11, paths.Length);
        Assert.DoesNotContain("closures.wall-heat", paths);
        Assert.DoesNotContain("closures.emissivity", paths);
    }

    [Fact]
    public void The_table_and_the_shares_of_the_page_are_those_of_the_run()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(100) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        FrictionJoint joint = start.Design.Joint.Coupler with { BreakawayForce = Force.FromNewtons(60), SlidingForce = Force.FromNewtons(48) };
        GapProblem gap = start.With(d => d with { Tube = tube, Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))], Joint = joint });
        string page = Assert.Single(Repository.Files("docs", "ignition.md")).Text;
        #region ignition-time-study
        ImmutableArray<TornadoBar> bars = gap.IgnitionTimeStudy(0.05).Bars(tail: 0.4); // Slope is d ln(time)/d ln(input)
        #endregion
        Assert.Equal(13, bars.Length);
        GrainHeat heat = gap.Solve().HeatAtLighting()!;
        Assert.All(bars, b => Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"| `{b.Input.Name}` | {b.Slope:F2} |\n"), page, StringComparison.Ordinal));
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"particles bring {100 * heat.ParticlesShare:F1} %, convection {100 * heat.ConvectionShare:F1} %, radiation {100 * heat.RadiationShare:F1} %"),
            page,
            StringComparison.Ordinal);
    }
}
