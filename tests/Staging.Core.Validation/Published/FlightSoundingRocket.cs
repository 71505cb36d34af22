using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Published;

/// <summary>
/// The first flight of a two-stage sounding rocket, 1955. Event times, speeds and apogee were found; masses, thrust and drag of its stages were not,
/// so the flight cannot be flown. What can be checked is its last leg: from the second burnout at 20.8 s to apogee at 161 s it coasts above nearly all air,
/// and times and apogee together ask for one height and one vertical speed at burnout. The account gives that height another way.
/// </summary>
public class FlightSoundingRocket
{
    private const double Mile = 1609.344, G0 = 9.80665, Radius = 6_356_766;
    private const double FirstBurnout = 3.3, SecondIgnition = 17.0, SecondBurnout = 20.8, ApogeeTime = 161, Apogee = 67 * Mile;

    private static readonly Provenance Account = new()
    {
        Source = "First flight of a two-stage sounding rocket, 1955: archived account; see also R. H. Heitkotter, NACA TN 3739, 1956",
        Locator = "first burnout 3.3 s, almost 1 mile; second ignition 17.0 s, nearly 7 miles; second burnout 20.8 s, over 3500 mph; nose tracked to 67 miles at 161 s",
        How = Evidence.SeenInSource,
    };

    [Fact]
    public void Height_at_second_burnout_from_times_and_apogee()
    {
        (double speed, double rise) = CoastTo(ApogeeTime - SecondBurnout, Apogee);
        double ours = Apogee - rise;

        // The account: 6 miles in 13.7 s of coasting, so 638 m/s at ignition if only gravity slowed it; then the mean of both speeds for 3.8 s.
        double coast = SecondIgnition - FirstBurnout;
        double atIgnition = 6 * Mile / coast - 0.5 * G0 * coast;
        double account = 7 * Mile + 0.5 * (atIgnition + speed) * (SecondBurnout - SecondIgnition);
        new OutsideCheck
        {
            Floor = "Flight",
            Quantity = "height at second burnout of a sounding rocket of 1955, from its burnout time, apogee and apogee time; expected from the heights and times before",
            Unit = "m",
            Expected = account,
            Ours = ours,
            Within = Tolerance.FixedAmount(Mile, "the account gives heights as 'almost 1 mile' and 'nearly 7 miles'; the difference is 0.7 % of apogee"),
            Provenance = Account,
        }.Verify();

        // The path speed then was over 3500 mph; the path leans more than the 75 degrees of launch, as gravity bends it, and not absurdly so.
        double path = Math.Asin(speed / (3500 * Mile / 3600)) * 180 / Math.PI;
        Assert.InRange(path, 50, 75);
    }

    /// <summary>The vertical speed that gives a time of coasting to a given apogee, and the height risen on the way; gravity falls with height, no air.</summary>
    private static (double Speed, double Rise) CoastTo(double time, double apogee)
    {
        double speed = G0 * time, rise = 0.5 * speed * time;
        for (int i = 0; i < 20; i++)
        {
            FlightRun run = Push(speed, apogee - rise).Flown();
            rise = run.Apogee!.Value.Meters;
            speed *= 1 + 0.9 * (time / run.Main.ApogeeTime!.Value.Seconds - 1);
        }

        return (speed, rise);
    }

    /// <summary>A body of constant mass kicked upwards within a millisecond at a height above the sea, with the gravity of that height.</summary>
    private static FlightPlan Push(double speed, double height)
    {
        const double Kick = 1e-3;
        FlightPlan plan = Simple.Plan(0, Simple.Stage("second stage", 1, 0, speed / Kick, Kick, Simple.NoDrag, new StageIgnition.AtLaunch()));
        double q = Radius / (Radius + height);
        return plan with
        {
            Site = plan.Site with
            {
                Gravity = new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(G0 * q * q), Radius = Length.FromMeters(Radius + height) },
            },
        };
    }
}
