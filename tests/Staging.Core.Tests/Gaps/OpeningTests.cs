using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>Openings along a tube, whole and in parts, to the outside and into a jacket, in all three models.</summary>
public class OpeningTests
{
    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(40) };

    /// <summary>Four holes of 5 mm over 95 mm, the uppermost below the nozzle.</summary>
    private static readonly Vent Slot = new()
    {
        Station = Length.FromMillimeters(200),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 4 },
        AxialLength = Length.FromMillimeters(95),
    };

    public static TheoryData<GapModel> Models => [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 60 }];

    /// <summary>For an open side: its many cells of hole cost most of a run.</summary>
    public static TheoryData<GapModel> Coarse => [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 30 }];

    /// <summary>A hole of 0.5 mm has a four-hundredth of the area of the slot; where it begins must not decide where the dead end is.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void A_pinhole_within_a_slot_changes_next_to_nothing(GapModel model)
    {
        double alone = Peak(model, Slot), within = Peak(model, Slot, Pinhole(160)), below = Peak(model, Slot, Pinhole(150));
        Assert.InRange(within - alone, -12, 12);
        Assert.InRange(below - alone, -12, 12);
    }

    /// <summary>Nor does one above the vents: it is too small to end the stream.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void A_pinhole_above_the_vents_changes_next_to_nothing(GapModel model)
    {
        Vent ring = Slot with { Station = Length.FromMillimeters(240), AxialLength = null };
        Assert.InRange(Peak(model, ring, Pinhole(249.5)) - Peak(model, ring), -15, 15);
    }

    /// <summary>Holes spread over a length stir the dead end from their own depths, as they do written ring by ring: within 35 K, where one depth for all had made some 150 K of it.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void A_long_opening_stirs_as_its_rings_do(GapModel model)
    {
        Vent whole = Slot with { Station = Length.FromMillimeters(235), AxialLength = Length.FromMillimeters(28), Holes = Slot.Holes with { Count = 14, Diameter = Length.FromMillimeters(4) } };
        Vent[] rings = [.. Enumerable.Range(0, 7).Select(i => whole with { Station = Length.FromMillimeters(223 + 4 * i), AxialLength = null, Holes = whole.Holes with { Count = 2 } })];
        Assert.InRange(Peak(model, rings) - Peak(model, whole), -35, 35);
    }

    /// <summary>They share holes, not the open share of the wall: a part in a thousand of the gap's volume.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void Two_slots_that_are_halves_of_the_holes_of_one_are_that_one(GapModel model)
    {
        Vent half = Slot with { Holes = Slot.Holes with { Count = 2 } };
        Assert.InRange(Peak(model, half, half) - Peak(model, Slot), -1, 1);
    }

    /// <summary>Cut into parts that lie end to end, an open side leaves the grain as cold as it does whole: some 500 K, where the same holes without the jet light it.</summary>
    [Theory]
    [MemberData(nameof(Coarse))]
    public void An_open_side_stays_open_however_it_is_cut_into_vents(GapModel model)
    {
        GapProblem shorter = Held.With(d => d with { Tube = Bench.Tube(200), Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.3) } } });
        double whole = Peak(shorter, model, [Side(shorter, 0, 1)]);
        double quarters = Peak(shorter, model, [Side(shorter, 0, 4), Side(shorter, 1, 4), Side(shorter, 2, 4), Side(shorter, 3, 4)]);
        Assert.InRange(whole, 288, 550);
        Assert.InRange(quarters, 288, 600);
    }

    /// <summary>A slot with little open area is wall for the most part: the gas over it belongs to the gap.</summary>
    [Fact]
    public void A_stretch_under_a_few_holes_holds_gas()
    {
        GapParameters slotted = GapToSi.ToSi(Held.With(d => d with { Vents = [Slot] }));
        double whole = Held.Design.Tube.Volume.CubicMeters + Held.Design.Grain.RecessVolume.CubicMeters;
        double open = Slot.Holes.TotalArea.SquareMeters / (Math.PI * 18e-3 * 90e-3);
        Assert.Equal(whole - open * Math.PI / 4 * 18e-3 * 18e-3 * 90e-3, slotted.TubeVolume + slotted.DeadEndVolume, 1e-15);

        // The lumped front then comes as late as the resolved one: both to the middle of the slot.
        double lumped = Arrival(new GapModel.TwoZone()), resolved = Arrival(new GapModel.OneDimensional { Cells = 120 });
        Assert.InRange(lumped / resolved, 0.85, 1.1);

        static double Arrival(GapModel model) => Held.With(d => d with { Vents = [Slot] }).Solve(model).TimeOf(GapEventKind.FrontAtLastVent)!.Value.Milliseconds;
    }

    /// <summary>
    /// Nothing leaves a sealed gap, and no outside air gets in through holes that lead into a jacket. Within 12 ms the chamber has blown down into
    /// gap and jacket; cells exchange with the jacket at every step, so fewer cells and a shorter time make it cheap.
    /// </summary>
    [Theory]
    [MemberData(nameof(Coarse))]
    public void A_sealed_gap_with_an_open_side_into_a_jacket_stays_sealed(GapModel model)
    {
        GapProblem gap = Sealed() with { Horizon = Duration.FromMilliseconds(12) };
        GapRun run = gap.Solve(model);
        Assert.Equal(0, run.Ledger.Left.Kilograms, 1e-15);
        double volume = gap.Design.Tube.Volume.CubicMeters + gap.Design.Grain.RecessVolume.CubicMeters + 60e-6, chamber = gap.Motor().ChamberVolume.CubicMeters;
        double air = 101325 * volume / (gap.Surroundings.Gas.Constants.R * 288.15);
        double products = 800e3 * chamber / (gap.Motor().Products.Equivalent().Constants.R * 1900);
        Assert.InRange(run.Ledger.InitialMass.Kilograms / (air + products) - 1, -1e-9, 1e-9);
    }

    [Theory]
    [MemberData(nameof(Models))]
    public void An_outlet_in_a_vacuum_of_its_own_is_refused(GapModel model)
    {
        GapProblem gap = Held.With(d => d with { Vents = [d.Vents[0] with { To = VentTarget.Outside(-1.5) }] }) with { DynamicPressure = Pressure.FromKilopascals(100) };
        ModelFinding finding = Assert.Single(gap.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal("GAP030", finding.Code);
        Assert.Equal("Vents[0].To.PressureCoefficient", finding.Path);
        Assert.Throws<InvalidModelException>(() => gap.Solve(model));
        Assert.DoesNotContain((gap with { DynamicPressure = Pressure.FromKilopascals(60) }).Check(), f => f.Severity == FindingSeverity.Error);
    }

    /// <summary>A hole beside the booster that sucks before the burn-through has opened: there are no products yet that it could draw.</summary>
    [Theory]
    [MemberData(nameof(Models))]
    public void A_hole_beside_the_booster_that_sucks_draws_air_at_first(GapModel model)
    {
        var low = new Vent { Station = Length.FromMillimeters(5), Holes = Slot.Holes, To = VentTarget.Outside(-0.2) };
        GapRun run = (Held.With(d => d with { Vents = [.. d.Vents, low] }) with { DynamicPressure = Pressure.FromKilopascals(10), Horizon = Duration.FromMilliseconds(15) }).Solve(model);
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    private static double Peak(GapModel model, params Vent[] vents) => Peak(Held, model, vents);

    private static double Peak(GapProblem gap, GapModel model, Vent[] vents) => gap.With(d => d with { Vents = [.. vents] }).Solve(model).PeakGrainSurface.Kelvins;

    private static Vent Pinhole(double station) => new()
    {
        Station = Length.FromMillimeters(station),
        Holes = new VentHoles { Diameter = Length.FromMillimeters(0.5), WallThickness = Length.FromMillimeters(0.5), Count = 1 },
    };

    /// <summary>A part of an open side of 150 mm, as large in all as eight bores of tube without a wall.</summary>
    private static Vent Side(GapProblem gap, int part, int of)
    {
        double bore = gap.Design.Tube.Bore.Meters, area = 8 * Math.PI * bore * bore / of, length = 0.150 / of;
        int count = (int)Math.Round(area / (Math.PI / 4 * 16e-6));
        return new Vent
        {
            Station = gap.Design.Tube.Length - Length.FromMeters(0.150 - (part + 0.5) * length),
            Holes = new VentHoles { Diameter = Length.FromMeters(Math.Sqrt(4 * area / (Math.PI * count))), WallThickness = Length.FromMillimeters(0.5), Count = count },
            AxialLength = Length.FromMeters(length),
        };
    }

    private static GapProblem Sealed() => Held.With(d => d with
    {
        Tube = Bench.Tube(200),
        Vents = [Side(Held.With(e => e with { Tube = Bench.Tube(200) }), 0, 1) with { To = VentTarget.IntoJacket("jacket") }],
        Jackets = [new Jacket { Name = "jacket", Volume = Volume.FromCubicCentimeters(60), WallArea = Area.Zero, Openings = [] }],
        Source = d.Motor() with { NozzleThroatDiameter = Length.Zero },
        MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 },
    });
}
