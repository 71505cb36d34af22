using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Exact;

public class ThrustHistoryChecks
{
    [Theory]
    [InlineData(true, 8.5)]
    [InlineData(false, 10.2)]
    public void Total_impulse_is_the_sum_of_the_trapezoids(bool booster, double expected)
    {
        ThrustHistory curve = booster ? FlightTwoStage.BoosterCurve : FlightTwoStage.SustainerCurve;
        new OutsideCheck
        {
            Floor = "Flight",
            Quantity = $"total impulse of an invented curve of 14 points, {(booster ? "booster" : "sustainer")}",
            Unit = "N s",
            Expected = expected,
            Ours = curve.TotalImpulse.NewtonSeconds,
            Within = Tolerance.Relative(1e-14, "round-off of thirteen additions"),
            Provenance = new Provenance { Source = "Trapezoidal rule, exact for straight lines; decimal sum by hand", How = Evidence.ComputedFromFormula },
        }.Verify();
        Assert.Equal(curve.TotalImpulse.NewtonSeconds, curve.ImpulseUntil(Duration.FromSeconds(100)).NewtonSeconds);
    }
}
