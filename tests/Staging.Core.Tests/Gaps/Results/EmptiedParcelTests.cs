using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;

namespace Staging.Core.Tests.Gaps.Results;

/// <summary>What a vent leaves of a parcel is rounding of either sign: it has no temperature, and nothing flows out of it.</summary>
public class EmptiedParcelTests
{
    private static readonly GapParameters P = GapToSi.ToSi(StartingGaps.Bore18mm);

    [Theory]
    [InlineData(1e-15, -2e-15, 1e-9)]
    [InlineData(-2e-15, 1e-15, 1e-9)]
    [InlineData(1e-15, 1e-15, -1e-9)]
    [InlineData(-1e-15, -1e-15, 1e-9)]
    [InlineData(0, 0, 0)]
    public void Nothing_flows_out_of_rounding(double products, double air, double energy)
    {
        var left = new Zone<Real>(products, air, energy, P.Products, P.Air);
        var size = new OrificeSize(1e-5, 3.57e-3, 5e-4);
        Assert.Equal(0, GapState<Real>.Flow(P.Law, size, 1, left, 1.2e5, P.Outside, 1e5));
        Assert.Equal(0, GapState<Real>.Flow(P.Law, size, 1, P.Outside, 1e5, left, 1.2e5));
        // Into it the other gas flows as it would anywhere.
        Assert.Equal(-GapState<Real>.Flow(P.Law, size, 1, P.Outside, 1e5, P.Outside, 0.9e5), GapState<Real>.Flow(P.Law, size, 1, left, 0.9e5, P.Outside, 1e5));
    }

    /// <summary>A state with a parcel of rounding is no state that a step may end in; one without the parcel is.</summary>
    [Theory]
    [InlineData(0, 0, 0, true)]
    [InlineData(1e-9, 1e-9, 1e-3, true)]
    [InlineData(-1e-9, 2e-9, 1e-3, true)]
    [InlineData(-1e-9, 0, 1e-3, false)]
    [InlineData(1e-9, 0, -1e-3, false)]
    [InlineData(double.NaN, 0, 1e-3, false)]
    public void A_step_may_not_leave_a_parcel_without_gas(double products, double air, double energy, bool holds)
    {
        var y = new double[P.StateCount];
        GapToSi.FirstState(P, y);
        (y[StateLayout.Cold], y[StateLayout.Cold + 1], y[StateLayout.Cold + 2]) = (products, air, energy);
        Assert.True(GapSystem.HasDomain);
        Assert.Equal(holds, new GapSystem(P, new GapPhase(JointPhase.Held, 0, 1, -1)).Holds(y));
    }
}
