using System.Globalization;
using Staging.Core.Flight;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

/// <summary>Results print as an answer: numbers with units, the same in every culture.</summary>
public class FlightTextTests
{
    private static readonly FlightRun Run = TwoStages().Flown();

    [Fact]
    public void A_run_tells_apogee_speed_stagings_and_landings()
    {
        string[] lines = Run.ToString().Split('\n');
        string Text(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
        Assert.Equal(4, lines.Length);
        Assert.Equal(
            Text($"Apogee {Run.Apogee!.Value.Meters:F1} m, greatest speed {Run.MaximumSpeed.MetersPerSecond:F1} m/s, {Run.GuideExitSpeed!.Value.MetersPerSecond:F1} m/s at the end of the guide."),
            lines[0]);
        Assert.StartsWith("sustainer lights at 0.870 s, ", lines[1], StringComparison.Ordinal);
        Assert.EndsWith("Motors in contact; ignition is assumed.", lines[1], StringComparison.Ordinal);
        Assert.StartsWith(Text($"sustainer: apogee {Run.Apogee.Value.Meters:F1} m at "), lines[2], StringComparison.Ordinal);
        Assert.Contains(Text($"lands at {Run.Main.Landing().Time.Seconds:F1} s with "), lines[2], StringComparison.Ordinal);
        Assert.StartsWith("booster: apogee ", lines[3], StringComparison.Ordinal);
    }

    [Fact]
    public void A_cold_stage_and_a_stack_that_stays_say_so()
    {
        FlightRun cold = TwoStages(Gap(_ => GapIgnitionResult.NotLit(null, "Too cold."))).Flown();
        Assert.Equal("sustainer stays cold. Too cold.", Assert.Single(cold.Stagings).ToString());
        FlightPlan weak = Plan(Sustainer(new StageIgnition.AtLaunch()) with { StructureMass = Mass.FromKilograms(50) });
        Assert.StartsWith("No apogee, greatest speed 0.0 m/s.\nsustainer: never leaves the guide", weak.Flown().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_result_is_one_line_with_units()
    {
        object[] results =
        [
            Run.Main, Run.Main.Outcome, Run.Main.Events[0], Run.Main.Events[0].After, Run.FailureCases[0], Run.Main.EnergyLedger(), Run.Main.Sample(Seconds(1)),
            TestAirframes.Stack.Margins()[0], TestAirframes.Upper.Stability(), TestAirframes.Upper.Drag(0.4),
            TwoStages().ChooseDelay([Seconds(4)], cancellationToken: TestContext.Current.CancellationToken)[0],
        ];
        Assert.All(results, r =>
        {
            string text = r.ToString()!;
            Assert.DoesNotContain('\n', text);
            Assert.DoesNotContain("{", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Staging.Core", text, StringComparison.Ordinal);
            Assert.InRange(text.Length, 20, 250);
        });
    }
}
