using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Published;

/// <summary>
/// A textbook problem on two stages: payload m, with the second stage n m, with both N m, each stage a share r of casing, exhaust at u. Its answers: the speed gained is
/// u ln(initial/final mass) a stage; the sum is greatest at n^2 = N; there both stages gain the same.
/// </summary>
public class FlightTwoStageProblem
{
    private const double G = 9.80665, U = 2500, R = 0.1, N = 100, Payload = 0.02, Burn = 1;
    private const string Notes = "Solution to the special problem on a two-stage rocket, notes of a university course (hp221, 2003)";
    private static readonly Provenance Seen = new() { Source = Notes, Locator = "part (c): both stages gain the same at n^2 = N", How = Evidence.SeenInSource };
    private static readonly Provenance FromMasses = new() { Source = Notes, Locator = "u ln(initial/final mass) with the masses of parts (a) and (b)", How = Evidence.ComputedFromFormula };

    private static readonly FlightOptions Tight = new() { Solver = new() { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-13 } };

    [Fact]
    public void Both_stages_gain_the_same_where_the_mass_above_is_the_root_of_the_whole()
    {
        (double first, double second) = Gains(10);
        Check("gain of the second stage over that of the first at n^2 = N = 100, casing 0.1, exhaust 2500 m/s", "-", 1, second / first, Seen);
        Check("speed gained by both stages there", "m/s", 2 * U * Math.Log(10 / (R * 10 + 1 - R)), first + second, FromMasses);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(12.5)]
    [InlineData(25)]
    public void The_sum_is_less_on_either_side(double n)
    {
        (double first, double second) = Gains(n);
        (double bestFirst, double bestSecond) = Gains(10);
        Assert.True(first + second < bestFirst + bestSecond);
        Check($"speed gained by both stages at n = {n:G3}", "m/s", U * (Math.Log(N / (R * N + n * (1 - R))) + Math.Log(n / (R * n + 1 - R))), first + second, FromMasses);
    }

    /// <summary>What the two stages gain in a flight without air, what gravity takes added back [m/s].</summary>
    private static (double First, double Second) Gains(double n)
    {
        Stage Of(string name, double mass, double above, StageIgnition ignition) =>
            Simple.Stage(name, R * mass + above, (1 - R) * mass, U * (1 - R) * mass / Burn, Burn, Simple.NoDrag, ignition);
        FlightRun run = Simple.Plan(0,
            Of("lower", (N - n) * Payload, 0, new StageIgnition.AtLaunch()),
            Of("upper", (n - 1) * Payload, Payload, new StageIgnition.ByContact { Lag = Duration.FromSeconds(0) })).Flown(Tight);
        double first = Ideal(run, "lower"), both = Ideal(run, "upper");
        return (first, both - first);
    }

    private static double Ideal(FlightRun run, string stage)
    {
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout, stage)!;
        return burnout.After.Velocity.MetersPerSecond + G * burnout.Time.Seconds;
    }

    private static void Check(string quantity, string unit, double expected, double ours, Provenance source) =>
        FlightCheck.Verify(quantity, unit, expected, ours, Tolerance.Relative(1e-8, "integrated at a relative tolerance of 1e-11"), source);
}
