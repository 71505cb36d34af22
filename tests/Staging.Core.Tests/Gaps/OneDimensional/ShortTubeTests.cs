using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>A resolved tube that is a fraction of a bore long: one volume, and no reason for steps of nanoseconds.</summary>
public class ShortTubeTests
{
    private static readonly GapModel.OneDimensional Default = new();

    [Fact]
    public void Motors_held_in_contact_are_followed_to_their_end_with_the_default_cells_and_steps()
    {
        // 400 cells over two millimetres would take five million steps.
        GapRun run = Bench.Gap.InContact(JointTape.PaperTape with { Strength = Force.FromNewtons(5000) }).Solve(Default);
        Assert.Null(run.Failure);
        Assert.NotNull(run.TimeOf(GapEventKind.SourceEnded));
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_few_cells_tell_of_motors_in_contact_what_many_do()
    {
        // A volume in which every wave is shorter than the bore is wide: within 5 %, as far as the two zones are from the many cells.
        GapProblem contact = StartingGaps.Bore18mm.With(d => d with { Source = Bench.Design.Source }).InContact(JointTape.ThinPlasticFilm);
        GapRun few = contact.Solve(Default), many = contact.Solve(new GapModel.OneDimensional { Cells = 24, CellsPerBore = 2000 });
        Assert.True(3 * few.Statistics.AcceptedSteps < many.Statistics.AcceptedSteps);
        Assert.Equal(1, few.TimeOf(GapEventKind.Lit)!.Value / many.TimeOf(GapEventKind.Lit)!.Value, 0.02);
        Assert.Equal(1, few.TimeOf(GapEventKind.JointOpens)!.Value / many.TimeOf(GapEventKind.JointOpens)!.Value, 0.05);
        Assert.Equal(1, few.PeakGaugePressure / many.PeakGaugePressure, 0.05);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void No_cell_is_much_shorter_than_a_64th_of_the_bore(double bores)
    {
        int cells = Default.CellsOver(bores);
        Assert.InRange(cells, 4, Math.Max(4, 64 * bores + 1));
        Assert.True(cells <= Default.CellsOver(1.1 * bores));
    }

    [Fact]
    public void The_usual_gap_has_the_cells_that_are_asked_for()
    {
        Assert.Equal(400, Default.CellsOver(121.2 / 18));
        Assert.Equal(800, new GapModel.OneDimensional { Cells = 800, CellsPerBore = 400 }.CellsOver(121.2 / 18));
        Assert.Throws<ArgumentOutOfRangeException>(() => new GapModel.OneDimensional { CellsPerBore = 3 });
    }
}
