using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Flight;
using Staging.Core.Tests.Flight;
using UnitsNet;

namespace Staging.Core.Tests.Properties;

/// <summary>A two-stage flight varied in the inputs that shape it.</summary>
public sealed record FlightCase(double Payload, double Thrust, double Drag, double Lag, double Elevation, double Site)
{
    public FlightPlan Plan => PlanWithDrag(Drag);

    public FlightPlan PlanWithDrag(double drag, double shift = 0)
    {
        FlightPlan plan = TestFlights.TwoStages(TestFlights.Contact(Lag));
        return plan with
        {
            Stages = [.. plan.Stages.Select(s => s with { Drag = s.Drag.Scaled(drag), Motor = s.Motor with { Thrust = Shifted(s.Motor.Thrust.Scaled(Thrust), s, shift) } })],
            Payload = Mass.FromKilograms(Payload),
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(Elevation) },
            Site = plan.Site with { Elevation = Length.FromMeters(Site) },
        };
    }

    /// <summary>The curve of the lowest stage, later by a shift.</summary>
    private static ThrustHistory Shifted(ThrustHistory curve, Stage stage, double shift) => shift == 0 || stage.Ignition is not StageIgnition.AtLaunch
        ? curve
        : ThrustHistory.FromColumns([0, .. curve.Time_s.ToArray().Select(t => t + shift)], [0, .. curve.Thrust_N.ToArray()]);
}

public static class FlightCases
{
    public static Arbitrary<FlightCase> Cases() => (
        from payload in Within(0, 0.05)
        from thrust in Within(0.8, 1.5)
        from drag in Within(0.3, 2)
        from lag in Within(0, 0.5)
        from elevation in Within(60, 90)
        from site in Within(0, 2500)
        select new FlightCase(payload, thrust, drag, lag, elevation, site)).ToArbitrary();

    private static Gen<double> Within(double low, double high) =>
        Gen.Choose(0, int.MaxValue).Select(n => low + (high - low) * n / int.MaxValue);
}
