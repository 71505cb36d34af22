using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Results;

/// <summary>A run that stops when the grain is lit answers whether and when, as the whole run does, for less.</summary>
public class UntilLitTests
{
    [Theory]
    [InlineData(25)]
    [InlineData(150)]
    public void Whether_and_when_are_those_of_the_whole_run_to_the_bit(double area)
    {
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(area));
        var inputs = new InputSet<GapProblem>(gap, GapInputs.JudgedFor(gap.Design));
        var design = new SampleDesign(DesignKind.LowDiscrepancy, 24, inputs.Inputs.Length, 0);
        int lit = 0, whole = 0, part = 0;
        for (int i = 0; i < 24; i++)
        {
            GapProblem at = inputs.At(inputs.Values(design, i));
            GapRun all = at.Solve(options: SolverOptions.ForStudies), some = at.SolveUntilLit(null, SolverOptions.ForStudies, default);
            Assert.Equal(all.Outcome.Lights(), some.Outcome.Lights());
            Assert.Equal(all.Outcome.IsLitBeforeParting, some.Outcome.IsLitBeforeParting);
            Assert.Equal(all.TimeOf(GapEventKind.Lit), some.TimeOf(GapEventKind.Lit));
            Assert.True(some.End <= all.End);
            if (all.TimeOf(GapEventKind.Lit) is null)
                Assert.Equal(all.Events.Times(), some.Events.Times());
            lit += all.Outcome.IsLit ? 1 : 0;
            (whole, part) = (whole + all.Statistics.DerivativeCalls, part + some.Statistics.DerivativeCalls);
        }

        Assert.InRange(lit, 1, 24);
        Assert.InRange(part, 1, 0.97 * whole);
    }

    [Fact]
    public void A_resolved_tube_and_motors_in_contact_stop_as_well()
    {
        var tube = new GapModel.OneDimensional { Cells = 30 };
        GapProblem gap = StartingGaps.Bore18mm.WithVents(new VentLayout { HoleCount = 4 }, Area.FromSquareMillimeters(60));
        GapRun all = gap.Solve(tube), some = gap.SolveUntilLit(tube, SolverOptions.ForGaps, default);
        Assert.NotNull(all.TimeOf(GapEventKind.Lit));
        Assert.Equal(all.TimeOf(GapEventKind.Lit), some.TimeOf(GapEventKind.Lit));
        Assert.True(some.End < all.End);
        GapProblem contact = StartingGaps.Bore18mm.InContact(JointTape.ThinPlasticFilm);
        Assert.Equal(contact.Solve().TimeOf(GapEventKind.Lit), contact.SolveUntilLit(null, SolverOptions.ForGaps, default).TimeOf(GapEventKind.Lit));
    }
}
