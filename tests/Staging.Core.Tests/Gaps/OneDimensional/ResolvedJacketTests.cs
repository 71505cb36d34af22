using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>Nested tubes on the resolved model: their limits, their ledgers, and the displacement model where both must agree.</summary>
public class ResolvedJacketTests
{
    private static readonly GapModel.OneDimensional Coarse = new() { Cells = 60 };
    private static readonly GapProblem Held = Bench.Adiabatic.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(12) };

    [Theory]
    [InlineData(130e3)]
    [InlineData(400e3)]
    public void A_jacket_that_vanishes_is_holes_in_series(double pressure)
    {
        // The last cell of a wide tube, hardly emptied through holes of 6 and 4 mm one behind the other: the jacket between, a state of its own, against the pressure
        // at which both walls pass the same. What is left is its lag, which falls with its volume.
        double Off(double cubicMillimetres)
        {
            GapProblem gap = Nested(cubicMillimetres * 1e-9, 4, 6).With(d => d with { Tube = d.Tube with { Bore = Length.FromMillimeters(60) } });
            GapParameters p = GapToSi.ToSi(gap);
            var tube = new TubeFlow(25, 0.01, p.Products, p.Air) { FirstArea = p.Profile.FirstArea };
            for (int i = 0; i < 25; i++)
                tube.Fill(i, pressure / (p.Air.R * 500), 0, pressure, 0);
            tube.Look();
            var vent = new VentCells(p.Vents[0], isLast: true, 1, 0.01, 25);
            var network = new JacketNetwork(p, tube, tube.Cells.First, [vent]);
            for (int s = 0; s < 100; s++)
                network.Pass(2e-6, out _);
            tube.Look();
            GasState air = Held.Surroundings, inside = air with
            {
                Pressure = Pressure.FromPascals(tube.Cells.Pressure[tube.Cells.First + 24]),
                Temperature = Temperature.FromKelvins(tube.Cells.Pressure[tube.Cells.First + 24] / (tube.Cells.Density[tube.Cells.First + 24] * p.Air.R)),
            };
            EquatableArray<Opening> series = [new Opening { Holes = Holes(6), Law = SharpEdgedLaw.Perry }, new Opening { Holes = Holes(4), Law = SharpEdgedLaw.Perry }];
            return Math.Abs(network.PressureOf(0) / Orifice.InSeries(inside, air, series).Between[0].Pascals - 1);
        }

        double large = Off(100), small = Off(10);
        Assert.InRange(small, 0, 1e-4);
        Assert.True(small < 0.2 * large, $"100 mm3: {large:E2}, 10 mm3: {small:E2}");
    }

    [Fact]
    public void A_very_large_jacket_is_the_outside()
    {
        // A cubic metre rises by less than 1e-5 of its pressure; what crosses the hole is the same but for that.
        GapRun nested = Nested(1, 4, 6).Solve(Coarse), open = Held.Solve(Coarse);
        Assert.InRange(nested.PeakGaugePressure / open.PeakGaugePressure - 1, -1e-4, 1e-4);
        Assert.InRange(nested.TimeOf(GapEventKind.FrontAtLastVent)!.Value / open.TimeOf(GapEventKind.FrontAtLastVent)!.Value - 1, -1e-4, 1e-4);
    }

    [Fact]
    public void A_jacket_with_a_huge_way_out_is_no_jacket()
    {
        // 60 cm3 behind one hole of 6 mm, with two hundred times its area out of them: the jacket stands at the outside pressure but for (1/200)^2 of the
        // difference. Beside that the two runs differ by their substeps, so far less than by the length of the step itself.
        GapRun nested = Nested(60e-6, 85, 6).Solve(Coarse), open = Held.Solve(Coarse), finer = Held.Solve(Coarse with { CourantNumber = 0.4 });
        double ofStep = Math.Abs(finer.PeakGaugePressure / open.PeakGaugePressure - 1);
        Assert.InRange(Math.Abs(nested.PeakGaugePressure / open.PeakGaugePressure - 1), 0, 0.2 * ofStep);
        Assert.InRange(nested.TimeOf(GapEventKind.FrontAtLastVent)!.Value / open.TimeOf(GapEventKind.FrontAtLastVent)!.Value - 1, -1e-4, 1e-4);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(100)]
    public void Jackets_too_small_to_hold_anything_are_all_the_same_two_walls(double cubicMillimetres)
    {
        // 60 mm behind 6 mm: the outer wall takes (6/60)^4 of the difference. The volume between them is nothing beside the tube's 64 cm3.
        GapProblem held = Held with { Horizon = Duration.FromMilliseconds(5) };
        GapRun nested = Bench.SolvedThoughImpossible(Nested(cubicMillimetres * 1e-9, 60, 6) with { Horizon = held.Horizon }, Coarse), open = held.Solve(Coarse);
        Assert.InRange(nested.PeakGaugePressure / open.PeakGaugePressure - 1, -2e-3, 2e-3);
        Assert.InRange(nested.Ledger.Left / open.Ledger.Left - 1, -2e-3, 2e-3);
        Closes(nested);
    }

    [Fact]
    public void Without_holes_in_the_outer_wall_gap_and_jacket_fill_to_the_pressure_of_their_energy()
    {
        GapProblem shut = Nested(20e-6, null, 6) with { Horizon = Duration.FromMilliseconds(60) };
        GapRun run = shut.Solve(Coarse);
        GapSnapshot end = run.At(run.End);
        double chamber = shut.Motor().ChamberVolume.CubicMeters, volume = shut.Design.Tube.Volume.CubicMeters + 0.3e-6 + 20e-6;
        double cp = shut.Surroundings.Gas.HeatCapacityAtConstantPressure.JoulesPerKilogramKelvin;
        double burnt = shut.Motor().Web.Mass.Kilograms * cp * 1900;
        double expected = (800e3 * chamber + 101325 * volume + 0.4 * burnt) / (chamber + volume);

        // One gamma: the energy alone says it. What still sloshes 35 ms after the source ended stays below a part in a thousand.
        Assert.InRange(end.JacketPressures[0] / end.GapPressure - 1, -1e-3, 1e-3);
        Assert.InRange(end.GapPressure.Pascals / expected - 1, -1e-3, 1e-3);
    }

    [Fact]
    public void Jackets_one_in_another_and_rear_passages_keep_their_ledgers()
    {
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("inner") }, Bench.Hole(d.Tube, 3) with { Station = Length.FromMillimeters(120), To = VentTarget.IntoJacket("outer") }, Bench.Hole(d.Tube, 2) with { Station = Length.FromMillimeters(125) }],
            Jackets =
            [
                new Jacket { Name = "inner", Volume = Volume.FromCubicCentimeters(5), WallArea = Area.FromSquareCentimeters(20), Openings = [To(5, VentTarget.IntoJacket("outer"))] },
                Jacket.Between("outer", Length.FromMillimeters(24), Length.FromMillimeters(40), Length.FromMillimeters(200), To(4, VentTarget.Air), To(3, VentTarget.Outside(-0.15))),
            ],
        }) with
        { DynamicPressure = Pressure.FromPascals(2000) };
        GapRun run = gap.Solve(Coarse);
        Assert.NotNull(run.TimeOf(GapEventKind.JointMoves));
        Closes(run);
        ImmutableArray<Pressure> p = run.At(Duration.FromMilliseconds(4)).JacketPressures;
        Assert.True(run.At(Duration.FromMilliseconds(4)).GapPressure > p[0] && p[0] > p[1] && p[1] > gap.Surroundings.Pressure);
    }

    [Fact]
    public void Gas_comes_back_from_a_jacket_into_a_tube_that_bleeds_faster()
    {
        // A jacket without a way out, and the tube vented well: what the blow has pressed into it comes back, and the ledger stays closed.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Joint = Bench.Joint(2000),
            Vents = [Bench.Hole(d.Tube, 6, 4), Bench.Hole(d.Tube, 5) with { Station = Length.FromMillimeters(100), To = VentTarget.IntoJacket("pocket") }],
            Jackets = [new Jacket { Name = "pocket", Volume = Volume.FromCubicCentimeters(20), WallArea = Area.FromSquareCentimeters(50), Openings = [] }],
        });
        GapRun run = gap.Solve(Coarse);
        Pressure peak = Enumerable.Range(0, 100).Max(i => run.At(0.01 * i * run.End).JacketPressures[0]), last = run.At(run.End).JacketPressures[0];
        Assert.True(peak.Pascals > 1.1 * 101325 && last.Pascals < 1.02 * 101325, $"{peak.Kilopascals:F1}, then {last.Kilopascals:F1} kPa");
        Closes(run);
    }

    [Fact]
    public void Slow_against_the_acoustic_time_gap_and_jacket_stand_where_the_displacement_model_has_them()
    {
        // As without jackets: fragments over 25 ms against 0.3 ms for sound along 100 mm, no wall heat, a thin front; left out is the time in which the
        // dead end fills.
        GapProblem gap = Bench.Gap.With(d => d with
        {
            Tube = Bench.Tube(100),
            Vents = [Bench.Hole(Bench.Tube(100), 5, 2) with { To = VentTarget.IntoJacket("jacket") }],
            Jackets = [new Jacket { Name = "jacket", Volume = Volume.FromCubicCentimeters(10), WallArea = Area.Zero, Openings = [To(8, VentTarget.Air)] }],
            Joint = Bench.Joint(2000),
            MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0, FrontThicknessInBores = 0.05 },
        }) with
        { Horizon = Duration.FromMilliseconds(15) };
        GapRun resolved = gap.Solve(new GapModel.OneDimensional { Cells = 100 }), displaced = gap.Solve();
        foreach (double t in (double[])[3, 3.5, 4, 8, 9, 10, 11, 12, 13, 14, 15])
        {
            GapSnapshot a = resolved.At(Duration.FromMilliseconds(t)), b = displaced.At(Duration.FromMilliseconds(t));
            Assert.InRange(a.GapPressure / b.GapPressure - 1, -0.01, 0.01);
            Assert.InRange(a.JacketPressures[0] / b.JacketPressures[0] - 1, -0.01, 0.01);
        }
    }

    [Theory]
    [InlineData(1e-9)]
    [InlineData(20e-6)]
    public void A_step_with_jackets_a_cluster_and_tape_allocates_nothing(double cubicMetres)
    {
        GapProblem gap = Nested(cubicMetres, 4, 6).With(d => d with
        {
            Source = Bench.Pair(d.Motor(), d.Motor(), 50e-6),
            Joint = StageJoint.Taped(Bench.Joint(5), JointTape.PaperTape),
        });
        Assert.Equal(0, ResolvedSteps.Allocated(gap, Coarse, JointPhase.Held, acceleration: 0));
    }

    private static void Closes(GapRun run)
    {
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    private static GapProblem Nested(double cubicMetres, double? out_mm, double in_mm) => Held.With(d => d with
    {
        Vents = [Bench.Hole(d.Tube, in_mm) with { To = VentTarget.IntoJacket("jacket") }],
        Jackets =
        [
            new Jacket
            {
                Name = "jacket",
                Volume = Volume.FromCubicMeters(cubicMetres),
                WallArea = Area.Zero,
                Openings = out_mm is { } hole ? [To(hole, VentTarget.Air)] : [],
            },
        ],
    });

    private static VentHoles Holes(double millimetres) => new() { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = 1 };

    private static JacketOpening To(double millimetres, VentTarget target) => new() { Holes = Holes(millimetres), To = target };
}
