using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Plans;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;

namespace Staging.Core.Tests.Properties;

/// <summary>A plan whose gap was drawn at random.</summary>
/// <param name="Plan">The plan: two stages, invented.</param>
/// <param name="HoleCoefficient">Pressure coefficient at the holes [-].</param>
public sealed record ReviewCase(StagingPlan Plan, double HoleCoefficient);

/// <summary>Two-stage plans with gaps that light, part, vent or stay cool.</summary>
public static class ReviewCases
{
    public static Arbitrary<ReviewCase> Reviews() => (
        from length in Number(40, 300)
        from count in Gen.Choose(1, 8)
        from diameter in Number(2, 6)
        from hold in Number(2, 80)
        from coefficient in Number(-0.5, 0.3)
        let tube = Bench.Tube(length)
        let design = Bench.Design with { Tube = tube, Vents = [Bench.Hole(tube, diameter, count)], Joint = Bench.Joint(hold) }
        select new ReviewCase(TestPlans.Through(design, coefficient), coefficient)).ToArbitrary();

    private static Gen<double> Number(double low, double high) => Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);
}
