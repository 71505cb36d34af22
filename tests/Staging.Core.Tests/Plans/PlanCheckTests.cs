using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Plans;

/// <summary>A check reports and never throws, whatever the parts of a plan are together.</summary>
public class PlanCheckTests
{
    private const string Gap = "Flight.Stages[1].Ignition.Gap";

    private static StagingPlan Demo => DemoPlan.Plan;

    [Fact]
    public void A_site_outside_its_atmosphere_is_reported_and_its_gaps_are_checked_all_the_same()
    {
        // Weather taken at 5000 m: that air begins at 4000 m, and the site lies at 100 m.
        var high = new SiteAtmosphere(new SiteConditions
        {
            Elevation = Length.FromMeters(5000),
            Pressure = Pressure.FromKilopascals(54),
            Temperature = Temperature.FromKelvins(256),
            RelativeHumidity = 0.3,
        });
        StagingPlan plan = At(Demo, Demo.Flight.Site with { Atmosphere = high, Elevation = Length.FromMeters(100) });
        ImmutableArray<ModelFinding> findings = With(plan, d => d with { Vents = [] }).Check();
        Assert.Contains(findings, f => f.Code == "FLT003" && f.Path == "Flight.Site.Elevation");
        Assert.Contains(findings, f => f.Code == "GAP003" && f.Path == Gap + ".Design.Vents");
    }

    [Fact]
    public void Air_that_no_gap_may_have_is_a_finding()
    {
        var cold = new UniformAtmosphere
        {
            Pressure = Pressure.FromKilopascals(100),
            Temperature = Temperature.FromKelvins(45),
            Density = Density.FromKilogramsPerCubicMeter(1.2),
            SoundSpeed = Speed.FromMetersPerSecond(340),
        };
        ModelFinding finding = Assert.Single(At(Demo, Demo.Flight.Site with { Atmosphere = cold }).Check(), f => f.Code == "PLN001");
        Assert.Equal((FindingSeverity.Error, Gap), (finding.Severity, finding.Path));
        Assert.Equal("Temperature is 45 K; it must be between 50 and 6000 K.", finding.Message);
    }

    [Fact]
    public void A_body_below_a_gram_is_a_finding()
    {
        // A booster of 1 mg of structure, whose motor is left with half a gram: no gap may push so little.
        Stage booster = Demo.Flight.Stages[0];
        booster = booster with
        {
            StructureMass = Mass.FromMilligrams(1),
            Motor = booster.Motor with { LoadedMass = booster.Motor.PropellantMass + Mass.FromGrams(0.5) },
        };
        StagingPlan plan = Demo with { Flight = Demo.Flight with { Stages = [booster, Demo.Flight.Stages[1]] } };
        ModelFinding finding = Assert.Single(plan.Check(), f => f.Code == "PLN001");
        Assert.StartsWith("MassBehind is 0.000501 kg; it must be between 0.001 and 200000 kg.", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>What the uppermost stage carries is ahead of its joint too.</summary>
    [Fact]
    public void A_body_of_hundreds_of_tons_is_a_finding()
    {
        Stage upper = Demo.Flight.Stages[1] with { StructureMass = Mass.FromTonnes(100) };
        StagingPlan plan = Demo with { Flight = Demo.Flight with { Stages = [Demo.Flight.Stages[0], upper], Payload = Mass.FromTonnes(99) } };
        Assert.DoesNotContain(plan.Check(), f => f.Code == "PLN001");
        upper = upper with { Motor = upper.Motor with { LoadedMass = Mass.FromTonnes(20) }, MotorCount = 3 };
        plan = plan with { Flight = plan.Flight with { Stages = [plan.Flight.Stages[0], upper] } };
        ModelFinding finding = Assert.Single(plan.Check(), f => f.Code == "PLN001");
        Assert.StartsWith("MassAhead is 259000 kg; it must be between 0.001 and 200000 kg.", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Products_that_carry_too_much_are_found_before_the_run()
    {
        DustyGas heavy = Bench.Powder(0.2) with { Gas = PerfectGas.FromMolarMass("heavy", MolarMass.FromGramsPerMole(200), 1.02, Bench.Invented), ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(5000) };
        GapProblem gap = Bench.Gap.With(d => d with { Source = d.Source with { Products = heavy } });
        Assert.Contains(gap.Check(), f => f.Code == "GAS003" && f.Path == "Source.Products.GasMassFraction");
        Assert.Contains(Assert.Throws<InvalidModelException>(() => gap.Solve()).Findings, f => f.Code == "GAS003");
        Assert.Contains(With(Demo, d => d with { Source = d.Source with { Products = heavy } }).Check(), f => f.Code == "GAS003" && f.Path == Gap + ".Design.Source.Products.GasMassFraction");
    }

    private static StagingPlan At(StagingPlan plan, LaunchSite site) => plan with { Flight = plan.Flight with { Site = site } };

    private static StagingPlan With(StagingPlan plan, Func<GapDesign, GapDesign> change)
    {
        Stage upper = plan.Flight.Stages[1];
        GapIgnition gap = upper.Gap()!;
        upper = upper with { Ignition = new StageIgnition.ByGap { Gap = gap with { Design = change(gap.Design) } } };
        return plan with { Flight = plan.Flight with { Stages = [plan.Flight.Stages[0], upper] } };
    }
}
