using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Joints;

/// <summary>What leaks past coupler and motor while the joint holds.</summary>
public class LeakTests
{
    private static readonly GapModel[] Models = [new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 60 }];

    private static readonly GapProblem Held = Bench.Gap.With(d => d with { Joint = Bench.Joint(2000) }) with { Horizon = Duration.FromMilliseconds(12) };

    [Fact]
    public void A_joint_is_tight_unless_told_otherwise_and_a_leak_of_nothing_is_none()
    {
        Assert.Equal(Area.Zero, Bench.Joint(20).LeakArea);
        Assert.Single(GapToSi.ToSi(Leaking(Held, 0)).Vents);
        Assert.Equal(2, GapToSi.ToSi(Leaking(Held, 1e-3)).Vents.Length);
    }

    /// <summary>The same opening, written as a hole through the centring rings: the sharp edge knows no thickness.</summary>
    [Fact]
    public void It_is_a_rear_passage_of_the_same_area_to_the_last_bit()
    {
        var hole = new VentHoles { Diameter = Length.FromMillimeters(4), WallThickness = Length.FromMillimeters(0.5), Count = 1 };
        foreach (GapModel model in Models)
        {
            StageJoint Tube(Area leak, VentHoles? rear) =>
                StageJoint.FreeMotorTube(Bench.Joint(5) with { LeakArea = leak }, Mass.FromGrams(20), rear);
            GapRun leak = Bench.Gap.With(d => d with { Joint = Tube(hole.TotalArea, null) }).Solve(model);
            GapRun passage = Bench.Gap.With(d => d with { Joint = Tube(Area.Zero, hole) }).Solve(model);
            GapRun tight = Bench.Gap.With(d => d with { Joint = Tube(Area.Zero, null) }).Solve(model);
            Assert.Equal(passage.PeakGaugePressure.Pascals, leak.PeakGaugePressure.Pascals, 1e-9 * passage.PeakGaugePressure.Pascals);
            Assert.Equal(passage.Events.Select(e => e.Kind), leak.Events.Select(e => e.Kind));
            Assert.All(passage.Events.Zip(leak.Events), e => Assert.Equal(e.First.Time.Seconds, e.Second.Time.Seconds, 1e-9));
            Assert.True(leak.PeakGaugePressure < 0.97 * tight.PeakGaugePressure);
        }
    }

    [Fact]
    public void The_more_leaks_the_lower_the_peak_and_the_ledgers_stay_closed()
    {
        foreach (GapModel model in Models)
        {
            double most = Held.Solve(model).PeakGaugePressure.Kilopascals;
            foreach (double area in (ReadOnlySpan<double>)[1, 5, 20, 200])
            {
                GapRun run = Leaking(Held, area).Solve(model);
                Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
                Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
                Assert.True(run.PeakGaugePressure.Kilopascals < 0.998 * most, $"{area} mm2: {run.PeakGaugePressure.Kilopascals:F3} of {most:F3} kPa");
                most = run.PeakGaugePressure.Kilopascals;
            }
        }
    }

    /// <summary>A leak is one more way out, open from the start: it meets the law of the vents.</summary>
    [Fact]
    public void Before_the_booster_has_opened_it_passes_what_the_law_says()
    {
        GapProblem gap = Leaking(Held, 20);
        GapParameters p = GapToSi.ToSi(gap);
        VentParameters leak = p.Vents[^1];
        Assert.Equal((0, 0), (leak.Station, leak.Stirring));
        Assert.Equal(20e-6, leak.Outlet.Size.Area, 1e-15);
        Assert.Equal((-1, 0, p.OutsidePressure), (leak.Outlet.Jacket, leak.Outlet.Size.Thickness, leak.Outlet.OutsidePressure));
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        for (int at = StateLayout.FirstParcel; at < StateLayout.FirstChamber; at += StateLayout.Parcel)
            y[at + 2] *= 1.4;
        var now = new GapState<Real>(p, new(y));
        double law = p.Law.MassFlux_kg_per_m2s(new OrificeConditions(now.Pressure, now.Cold.Temperature, p.OutsidePressure, p.Air.R, p.Air.Gamma, 5e-3, 0));
        VentFlow<Real> flow = now.FlowOf(leak, p.Outside, p.OutsidePressure);
        Assert.Equal(20e-6 * law, flow.Hot + flow.Cold, 1e-12 * 20e-6 * law);
    }

    /// <summary>The leak stays with the booster, as the products do, when the tube slides off with the forward body.</summary>
    [Theory]
    [InlineData(0, 0)]
    [InlineData(5, 1)]
    public void Behind_a_tube_that_has_slid_off_it_draws_the_products_that_lie_there(double productsOf_mm, double share)
    {
        GapParameters p = GapToSi.ToSi(Leaking(Held, 20));
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        y[StateLayout.Slide] = 15e-3;
        // As much more of the air behind the front as fills some millimetres of the first bore.
        double more = 1 + 1e-3 * productsOf_mm * p.Profile.FirstArea * p.OutsidePressure / new GapState<Real>(p, new(y)).Hot.PressureVolume.Value;
        for (int i = 0; i < StateLayout.Parcel; i++)
            y[StateLayout.Hot + i] *= more;
        var now = new GapState<Real>(p, new(y));
        Assert.True(now.Reach < 0);
        Assert.Equal(share, now.Passed(p.Vents[^1]).Value, 0.05);
    }

    [Fact]
    public void A_study_varies_it_and_a_plan_keeps_it()
    {
        StudyInput<GapProblem> input = GapInputs.Leak(Distribution.Uniform(0, 20));
        GapProblem leaky = input.With(Held, 12);
        Assert.Equal(12, leaky.Design.Joint.Coupler.LeakArea.SquareMillimeters, 1e-9);
        Assert.Equal("joint.leak", input.Path);
        Assert.Single(GapInputs.Judged, i => i.Path == input.Path);
        GapRun varied = leaky.Solve(), written = Leaking(Held, 12).Solve();
        Assert.Equal(written.PeakGaugePressure, varied.PeakGaugePressure);

        string tight = "\"leakArea\": { \"value\": 0,", text = DemoPlan.Plan.ToJson();
        Assert.Contains(tight, text, StringComparison.Ordinal);
        Assert.DoesNotContain("leakArea", DemoPlan.Plan.ToJson(PlanForm.Brief), StringComparison.Ordinal);
        string leaking = text.Replace(tight, "\"leakArea\": { \"value\": 1e-6,", StringComparison.Ordinal);
        StagingPlan plan = StagingPlan.Parse(leaking);
        Assert.NotEqual(DemoPlan.Plan, plan);
        Assert.Equal(plan, StagingPlan.Parse(plan.ToJson()));
        Assert.Contains("leakArea", plan.ToJson(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(200.001)]
    public void An_area_out_of_range_is_refused(double squareMillimetres)
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Leaking(Held, squareMillimetres));
        Assert.Equal("LeakArea", refused.ParamName);
        Assert.Contains("m2", refused.Message, StringComparison.Ordinal);
    }

    private static GapProblem Leaking(GapProblem gap, double squareMillimetres) =>
        gap.With(d => d with { Joint = d.Joint.Coupler with { LeakArea = Area.FromSquareMillimeters(squareMillimetres) } });
}
