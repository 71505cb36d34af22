using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Discharge.DischargeTestGas;

namespace Staging.Core.Tests.Discharge;

public class DischargeLawTests
{
    [Fact]
    public void A_constant_coefficient_of_a_sharp_hole_is_19_percent_low_at_the_critical_ratio_and_29_percent_low_against_a_vacuum()
    {
        double critical = IsentropicFlow.CriticalPressureRatio(1.4);
        Assert.Equal(-0.19, 0.6 / SharpEdgedLaw.Coefficient(critical) - 1, 0.005);
        Assert.Equal(-0.29, 0.6 / SharpEdgedLaw.Coefficient(0) - 1, 0.005);
    }

    [Fact]
    public void A_short_tube_through_a_thin_wall_is_a_sharp_edge()
    {
        for (double r = 0; r <= 1; r += 0.05)
            Assert.Equal(SharpEdgedLaw.Coefficient(r), ShortTubeLaw.Coefficient(r, 1.4, 0.3), 12);
    }

    [Theory]
    [InlineData(2, 0.81)]
    [InlineData(6, 0.776)]
    public void A_short_tube_has_the_incompressible_coefficient_at_equal_pressures_and_the_plateau_when_choked(double length, double equal)
    {
        Assert.Equal(equal, ShortTubeLaw.Coefficient(1, 1.4, length), 12);
        Assert.Equal(0.863, ShortTubeLaw.Coefficient(0.5, 1.4, length), 12);
        Assert.Equal(0.863, ShortTubeLaw.Coefficient(0.1, 1.4, length), 12);
    }

    [Fact]
    public void A_short_tube_refuses_a_pipe()
    {
        ArgumentOutOfRangeException e = Assert.Throws<ArgumentOutOfRangeException>(() => ShortTubeLaw.Coefficient(0.5, 1.4, 21));
        Assert.Contains("between 0 and 20", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.1, false)]
    [InlineData(2, true)]
    public void Only_a_thick_hole_levels_off(double length, bool levels) =>
        Assert.Equal(levels, ShortTubeLaw.SquareInlet.LevelsOffWhenChoked(length));

    [Fact]
    public void Jobson_starts_from_its_incompressible_contraction()
    {
        foreach (double ci in (double[])[0.5, 0.6, 0.75, 0.9])
            Assert.Equal(ci, new JobsonLaw { IncompressibleContraction = ci }.Coefficient(1, 1.3), 12);
    }

    [Fact]
    public void Jobson_follows_the_exact_plane_jet_within_half_a_percent_for_air()
    {
        var law = new JobsonLaw { IncompressibleContraction = Math.PI / (Math.PI + 2) };
        for (double r = 0.53; r <= 1; r += 0.01)
            Assert.Equal(ChaplyginSlit.ContractionCoefficient(r, 1.4), law.Coefficient(r, 1.4), 0.005);
    }

    [Fact]
    public void The_plane_jet_is_refused_below_the_critical_ratio() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ChaplyginSlit.ContractionCoefficient(0.5, 1.4));

    [Fact]
    public void The_plane_jet_contracts_less_the_faster_it_is()
    {
        foreach (double gamma in (double[])[1.02, 1.1, 1.25, 1.4, 5.0 / 3])
        {
            double last = 0;
            double critical = IsentropicFlow.CriticalPressureRatio(gamma);
            for (int i = 0; i <= 100; i++)
            {
                double cc = ChaplyginSlit.ContractionCoefficient(1 - (1 - critical) * i / 100, gamma);
                Assert.InRange(cc, last, 0.76);
                last = cc;
            }
        }
    }

    [Fact]
    public void A_component_of_ideal_conductance_passes_the_choked_flow_of_a_nozzle_for_any_gas()
    {
        Area area = Area.FromSquareMillimeters(3);
        var law = new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = SonicConductanceLaw.OfIdealNozzle_m3_per_sPa(area),
            CriticalRatio = 0.528,
            SubsonicIndex = 0.5,
            ReferenceArea = area,
            Provenance = new Provenance { Source = "ideal nozzle", How = Evidence.ComputedFromFormula },
        };
        foreach ((double R, double gamma) in ((double, double)[])[(287, 1.4), (240, 1.15), (2077, 5.0 / 3)])
        {
            var choked = new OrificeConditions(4e5, 900, 1e5, R, gamma, 1e-3, 1e-3);
            double ideal = ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(choked);
            Assert.Equal(ideal, law.MassFlux_kg_per_m2s(choked), 1e-12 * ideal);
        }
    }

    [Fact]
    public void The_ellipse_of_a_component_lies_within_a_third_of_a_percent_of_a_nozzle()
    {
        Area area = Area.FromSquareMillimeters(3);
        var law = new SonicConductanceLaw
        {
            SonicConductance_m3_per_sPa = SonicConductanceLaw.OfIdealNozzle_m3_per_sPa(area),
            CriticalRatio = IsentropicFlow.CriticalPressureRatio(1.4),
            SubsonicIndex = 0.5,
            ReferenceArea = area,
            Provenance = new Provenance { Source = "ideal nozzle", How = Evidence.ComputedFromFormula },
        };
        double worst = 0;
        for (double r = 0; r < 0.999; r += 0.001)
        {
            var at = new OrificeConditions(1e5, 300, r * 1e5, 287, 1.4, 1e-3, 1e-3);
            worst = Math.Max(worst, Math.Abs(law.MassFlux_kg_per_m2s(at) / ConstantCoefficientLaw.Ideal.MassFlux_kg_per_m2s(at) - 1));
        }
        Assert.InRange(worst, 0.0029, 0.0031);
    }

    [Fact]
    public void A_law_of_the_users_own_needs_two_members()
    {
        OrificeFlow flow = Orifice.Flow(Air(2e5, 300), Air(1e5, 300), Hole(3, 1), new Leak());
        Assert.Equal(Math.PI / 4 * 9e-6 * 1e-4 * 1e5, flow.MassFlow.KilogramsPerSecond, 15);
        Assert.Equal(IsentropicFlow.CriticalPressureRatio(1.4), flow.CriticalPressureRatio);
        Assert.False(flow.AnswersToDownstream);
        Assert.Equal(["DIS001", "DIS003"], flow.Findings.Select(f => f.Code));
        Assert.Contains("holds from 0.6 ", flow.Findings[1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1e5, 5e4)]
    [InlineData(1e5, 1e5)]
    [InlineData(1e5, 0)]
    public void A_law_without_slopes_of_its_own_gets_them_from_differences(double upstream, double downstream)
    {
        // The leak is linear: its slopes are the coefficient itself, so that differences have round-off alone.
        IDischargeLaw leak = new Leak();
        (double flux, double byUpstream, double byDownstream) = leak.SlopesAt(new OrificeConditions(upstream, 300, downstream, 287, 1.4, 1e-3, 1e-3));
        Assert.Equal(1e-4 * (upstream - downstream), flux, 1e-12);
        Assert.Equal(1e-4, byUpstream, 1e-12);
        Assert.Equal(-1e-4, byDownstream, 1e-12);
    }

    [Fact]
    public void An_opening_whose_wall_does_not_suit_its_law_gets_a_finding()
    {
        var opening = new Opening { Holes = Hole(2, 4), Law = SharpEdgedLaw.Perry };
        ModelFinding finding = Assert.Single(opening.Check("Vents[0]"));
        Assert.Equal(("DIS001", "Vents[0]", FindingSeverity.Warning), (finding.Code, finding.Path, finding.Severity));
        Assert.Contains("2 hole diameters", finding.Message, StringComparison.Ordinal);
        Assert.Empty((opening with { Law = ShortTubeLaw.SquareInlet }).Check("Vents[0]"));
    }

    [Fact]
    public void An_opening_so_long_that_its_law_has_no_answer_gets_an_error()
    {
        var opening = new Opening { Holes = Hole(0.2, 4.1), Law = ShortTubeLaw.SquareInlet };
        ModelFinding finding = Assert.Single(opening.Check("Vents[0]"));
        Assert.Equal(("DIS002", "Vents[0]", FindingSeverity.Error), (finding.Code, finding.Path, finding.Severity));
        Assert.Contains("20.5 hole diameters", finding.Message, StringComparison.Ordinal);
        Assert.Contains("beyond 20", finding.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Orifice.Flow(Air(2e5, 300), Air(1e5, 300), opening.Holes, opening.Law));

        Opening longest = opening with { Holes = Hole(0.2, 4) };
        Assert.Equal("DIS001", Assert.Single(longest.Check("Vents[0]")).Code);
        Assert.True(Orifice.Flow(Air(2e5, 300), Air(1e5, 300), longest.Holes, longest.Law).MassFlow.KilogramsPerSecond > 0);
    }

    [Fact]
    public void The_sharp_edge_and_the_short_tube_differ_by_no_more_than_the_doubt_that_the_sharp_edge_states()
    {
        double atThin = 0, atLimit = 0;
        for (double r = 0; r <= 1; r += 0.01)
        {
            atThin = Math.Max(atThin, Math.Abs(ShortTubeLaw.Coefficient(r, 1.4, 0.3) / SharpEdgedLaw.Coefficient(r) - 1));
            atLimit = Math.Max(atLimit, Math.Abs(ShortTubeLaw.Coefficient(r, 1.4, SharpEdgedLaw.Perry.Validity.MaxThicknessToDiameter) / SharpEdgedLaw.Coefficient(r) - 1));
        }

        Assert.Equal(0, atThin, 1e-12);
        Assert.Equal(0.047, atLimit, 0.0005);
    }

    [Fact]
    public void Dry_air_passes_a_component_by_the_root_of_its_gas_constant_to_that_of_the_reference_atmosphere()
    {
        SonicConductanceLaw law = Component(0.35);
        double R = PerfectGas.DryAir.GasConstant.JoulesPerKilogramKelvin;
        double standard = 1e-8 * 1.185 * 7e5;
        double dry = 1e-6 * law.MassFlux_kg_per_m2s(new OrificeConditions(7e5, 293.15, 1e5, R, 1.4, 1e-3, 1e-3));
        Assert.Equal(1.0014, dry / standard, 5e-5);
        Assert.Equal(Math.Sqrt(100e3 / (1.185 * 293.15) / R), dry / standard, 1e-12);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Nothing_is_allocated_by_an_evaluation(bool slopes)
    {
        ImmutableArray<IDischargeLaw> laws =
            [ConstantCoefficientLaw.Ideal, SharpEdgedLaw.Perry, ShortTubeLaw.SquareInlet, new JobsonLaw { IncompressibleContraction = 0.6 }, Component(0.35)];
        var at = new OrificeConditions(2e5, 300, 1.5e5, 287, 1.4, 3e-3, 3e-3);
        double sum = 0;
        Assert.Equal(0, Allocated.By(() => sum = Evaluate(laws, at, slopes)));
        Assert.True(sum > 0);
    }

    private static double Evaluate(ImmutableArray<IDischargeLaw> laws, in OrificeConditions at, bool slopes)
    {
        double sum = 0;
        foreach (IDischargeLaw law in laws)
            sum += slopes ? law.SlopesAt(at).MassFlux_kg_per_m2s : law.MassFlux_kg_per_m2s(at);
        return sum;
    }

    private static SonicConductanceLaw Component(double b) => new()
    {
        SonicConductance_m3_per_sPa = 1e-8,
        CriticalRatio = b,
        SubsonicIndex = 0.5,
        ReferenceArea = Area.FromSquareMillimeters(1),
        Provenance = new Provenance { Source = "invented for a test", How = Evidence.Invented },
    };

    private static VentHoles Hole(double d_mm, double wall_mm) => new()
    {
        Diameter = Length.FromMillimeters(d_mm),
        WallThickness = Length.FromMillimeters(wall_mm),
        Count = 1,
    };

    /// <summary>A law that is linear in the pressure difference.</summary>
    private sealed class Leak : IDischargeLaw
    {
        public ValidityRange Validity { get; } = new(0.6, 1, 10, new Provenance { Source = "invented", How = Evidence.Invented });

        public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
            1e-4 * (conditions.UpstreamPressure_Pa - conditions.DownstreamPressure_Pa);
    }
}
