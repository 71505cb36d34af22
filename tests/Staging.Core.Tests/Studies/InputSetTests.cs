using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class InputSetTests
{
    [Fact]
    public void Values_are_put_in_by_name_order()
    {
        Assert.Equal(new Oscillator(0.7, 120), Oscillator.Inputs.At([0.7, 120]));
        Assert.Equal(new Oscillator(Oscillator.MassInput.Spread.Median, 100), Oscillator.Inputs.AtMedians());
        Assert.Throws<ArgumentException>(() => Oscillator.Inputs.At([1]));
    }

    [Fact]
    public void No_input_and_two_of_one_name_are_refused()
    {
        Assert.Equal(["STU001"], Codes(() => InputSet.Of(new Oscillator(1, 1))));
        Assert.Equal(["STU002"], Codes(() => InputSet.Of(new Oscillator(1, 1), Oscillator.MassInput, Oscillator.MassInput)));
    }

    [Fact]
    public void A_value_that_the_model_would_refuse_is_refused_before_any_case_runs()
    {
        StudyInput<StopRule> Width(Distribution spread) => StudyInput.Of<StopRule>("width", "-", spread, (r, v) => r with { HalfWidth = v });
        var rule = new StopRule { Outcome = "Lit", HalfWidth = 0.1 };
        InvalidModelException refusal = Assert.Throws<InvalidModelException>(() => InputSet.Of(rule, Width(Spread.Normal(0.1, 0.2))));
        Assert.All(refusal.Findings, f => Assert.Equal(("STU003", "width"), (f.Code, f.Path)));
        Assert.Contains("HalfWidth is", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(0.1, InputSet.Of(rule, Width(Spread.TruncatedNormal(0.1, 0.2, 1e-5, 0.5))).Nominal.HalfWidth);
    }

    [Fact]
    public void Every_listed_value_is_tried_before_any_case_runs()
    {
        StudyInput<StopRule> width = StudyInput.Of<StopRule>("width", "-", Spread.Discrete((0.1, 5), (0.6, 0.1), (0.7, 0.1), (0.2, 1)), (r, v) => r with { HalfWidth = v is 0.6 ? v : 0.1 });
        InvalidModelException refusal = Assert.Throws<InvalidModelException>(() => InputSet.Of(new StopRule { Outcome = "Lit", HalfWidth = 0.1 }, width));
        Assert.Contains("refuses 0.6 -", Assert.Single(refusal.Findings).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a,b")]
    [InlineData(" a")]
    [InlineData("a\nb")]
    public void Names_hold_nothing_that_a_table_would_have_to_escape(string path) =>
        Assert.ThrowsAny<ArgumentException>(() => StudyInput.Of<Oscillator>(path, "kg", Spread.Uniform(1, 2), (m, v) => m with { Mass = v }));

    private static ImmutableArray<string> Codes(Action act) => [.. Assert.Throws<InvalidModelException>(act).Findings.Select(f => f.Code)];
}
