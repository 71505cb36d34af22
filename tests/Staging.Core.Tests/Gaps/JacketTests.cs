using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Nested tubes: jackets as a network of stirred volumes.</summary>
public class JacketTests
{
    private static readonly GapProblem Held = Bench.Adiabatic.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(15) };

    [Fact]
    public void A_jacket_that_vanishes_is_holes_in_series()
    {
        // The pressure between two walls, found as a state of its own, against the one at which both walls pass the same, while air leaves. What is
        // left is the lag of the jacket, its mass over the flow, against the time in which the gap changes: it falls with the volume.
        double Off(double cubicMillimetres)
        {
            GapRun run = Nested(cubicMillimetres * 1e-9, 4).Solve();
            double worst = 0, arrival = run.TimeOf(GapEventKind.FrontAtLastVent)!.Value.Seconds;
            for (double share = 0.3; share < 0.8; share += 0.1)
            {
                GapSnapshot s = run.At(Duration.FromSeconds(share * arrival));
                GasState air = Held.Surroundings;
                double isentrope = air.Temperature.Kelvins * Math.Pow(s.GapPressure / air.Pressure, 0.4 / 1.4);
                EquatableArray<Opening> series = [new Opening { Holes = Holes(6), Law = SharpEdgedLaw.Perry }, new Opening { Holes = Holes(4), Law = SharpEdgedLaw.Perry }];
                OpeningsFlow flow = Orifice.InSeries(air with { Pressure = s.GapPressure, Temperature = Temperature.FromKelvins(isentrope) }, air, series);
                worst = Math.Max(worst, Math.Abs(s.JacketPressures[0] / flow.Between[0] - 1));
            }

            return worst;
        }

        double large = Off(64), small = Off(8);
        Assert.InRange(small, 0, 1e-3);
        Assert.True(small < 0.4 * large, $"64 mm3: {large:E2}, 8 mm3: {small:E2}");
    }

    [Fact]
    public void A_very_large_jacket_is_the_outside()
    {
        GapRun nested = Nested(1, 4).Solve(), open = Held.Solve();
        Assert.InRange(nested.PeakGaugePressure / open.PeakGaugePressure - 1, -1e-4, 1e-4);
        Assert.InRange(nested.TimeOf(GapEventKind.FrontAtLastVent)!.Value / open.TimeOf(GapEventKind.FrontAtLastVent)!.Value - 1, -1e-4, 1e-4);
    }

    [Fact]
    public void Without_holes_in_the_outer_wall_the_jacket_fills_to_the_gap_pressure()
    {
        GapProblem shut = Nested(20e-6, null) with { Horizon = Duration.FromMilliseconds(60) };
        GapRun run = shut.Solve();
        GapSnapshot end = run.At(run.End);
        Assert.InRange(end.JacketPressures[0] / end.GapPressure - 1, -1e-3, 1e-3);
        double chamber = shut.Motor().ChamberVolume.CubicMeters, volume = shut.Design.Tube.Volume.CubicMeters + 0.3e-6 + 20e-6;
        double cp = shut.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double burnt = shut.Motor().Web.Mass.Kilograms * cp * 1900;
        double expected = (800e3 * chamber + 101325 * volume + 0.4 * burnt) / (chamber + volume);
        Assert.InRange(end.GapPressure.Pascals / expected - 1, -1e-3, 1e-3);
    }

    [Fact]
    public void Jackets_one_in_another_and_rear_passages_keep_their_ledgers()
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("inner") }],
            Jackets =
            [
                new Jacket { Name = "inner", Volume = Volume.FromCubicCentimeters(5), WallArea = Area.FromSquareCentimeters(20), Openings = [To(5, VentTarget.IntoJacket("outer"))] },
                Jacket.Between("outer", Length.FromMillimeters(24), Length.FromMillimeters(40), Length.FromMillimeters(200), To(4, VentTarget.Air), To(3, VentTarget.Outside(-0.15))),
            ],
        }) with
        { DynamicPressure = Pressure.FromPascals(2000) };
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred()])
        {
            GapRun run = gap.Solve(model);
            Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
            Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
            ImmutableArray<Pressure> p = run.At(Duration.FromMilliseconds(4)).JacketPressures;
            Assert.True(run.At(Duration.FromMilliseconds(4)).GapPressure > p[0] && p[0] > p[1] && p[1] > gap.Surroundings.Pressure);
        }
    }

    [Fact]
    public void An_outlet_in_a_wake_vents_to_a_lower_pressure()
    {
        GapProblem Behind(double coefficient) => Bench.Gap.With(d => d with { Vents = [d.Vents[0] with { To = VentTarget.Outside(coefficient) }] }) with
        {
            DynamicPressure = Pressure.FromKilopascals(20),
        };
        Assert.True(Behind(-0.5).Solve().PeakGaugePressure < Behind(0).Solve().PeakGaugePressure);
        Assert.Equal(Bench.Gap.Solve().PeakGaugePressure.Pascals, Behind(0).Solve().PeakGaugePressure.Pascals, 1e-6);
    }

    [Theory]
    [InlineData("GAP023")]
    [InlineData("GAP024")]
    [InlineData("GAP025")]
    [InlineData("GAP026")]
    [InlineData("GAP027")]
    [InlineData("GAP028")]
    [InlineData("GAP037")]
    public void What_does_not_hang_together_is_found(string code)
    {
        Jacket good = new() { Name = "jacket", Volume = Volume.FromCubicCentimeters(5), WallArea = Area.Zero, Openings = [To(4, VentTarget.Air)] };
        ImmutableArray<Jacket> jackets = code switch
        {
            "GAP023" => [good, good],
            "GAP024" => [good with { Openings = [To(4, VentTarget.Air), To(4, VentTarget.IntoJacket("nowhere"))] }],
            "GAP025" => [good with { Openings = [] }],
            "GAP026" => [good, good with { Name = "forgotten" }],
            "GAP027" => [good with { Openings = [To(4, VentTarget.Air), To(4, VentTarget.IntoJacket("jacket"))] }],
            "GAP037" => [good with { Volume = Volume.FromCubicMillimeters(1) }],
            _ => [good with { Openings = [To(4, VentTarget.Air) with { Station = Bench.Design.Tube.Length + Length.FromMillimeters(1) }] }],
        };
        GapProblem gap = Bench.Gap.With(d => d with { Jackets = jackets, Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("jacket") }] });
        Assert.Equal(code, Assert.Single(gap.Check()).Code);
    }

    [Theory]
    [InlineData(18, 1)]
    [InlineData(19.5, 0)]
    public void An_outer_wall_is_wider_than_the_guide_tube(double bore, int findings)
    {
        Jacket jacket = new() { Name = "jacket", Volume = Volume.FromCubicCentimeters(5), WallArea = Area.Zero, OuterBore = Length.FromMillimeters(bore), Openings = [To(4, VentTarget.Air)] };
        GapProblem gap = Bench.Gap.With(d => d with { Jackets = [jacket], Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("jacket") }] });
        Assert.Equal(findings, gap.Check().Count(f => f.Path == "Jackets[0].OuterBore"));
    }

    private static GapProblem Nested(double cubicMetres, double? millimetres) => Held.With(d => d with
    {
        Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("jacket") }],
        Jackets =
        [
            new Jacket
            {
                Name = "jacket",
                Volume = Volume.FromCubicMeters(cubicMetres),
                WallArea = Area.Zero,
                Openings = millimetres is { } hole ? [To(hole, VentTarget.Air)] : [],
            },
        ],
    });

    private static VentHoles Holes(double millimetres) => new() { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = 1 };

    private static JacketOpening To(double millimetres, VentTarget target) => new() { Holes = Holes(millimetres), To = target };
}
