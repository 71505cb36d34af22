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

    private static InputSet<Oscillator> Set(params EquatableArray<StudyInput<Oscillator>> inputs) => new(new Oscillator(1, 1), inputs);

    [Fact]
    public void Two_sets_of_the_same_inputs_are_equal() =>
        Assert.Equal(Set(Oscillator.MassInput, Oscillator.StiffnessInput), Set([Oscillator.MassInput, Oscillator.StiffnessInput]));

    [Fact]
    public void No_input_and_two_of_one_name_are_refused()
    {
        Assert.Equal(["STU001"], Codes(() => Set()));
        Assert.Equal(["STU002"], Codes(() => Set(Oscillator.MassInput, Oscillator.MassInput)));
    }

    [Fact]
    public void A_value_that_the_model_would_refuse_is_refused_before_any_case_runs()
    {
        StudyInput<StopRule> Width(Distribution spread) => new StudyInput<StopRule>("width", "-", spread, (r, v) => r with { HalfWidth = v });
        var rule = new StopRule { Outcome = "Lit", HalfWidth = 0.1 };
        InvalidModelException refusal = Assert.Throws<InvalidModelException>(() => new InputSet<StopRule>(rule, Width(Distribution.Normal(0.1, 0.2))));
        Assert.All(refusal.Findings, f => Assert.Equal(("STU003", "width"), (f.Code, f.Path)));
        Assert.Contains("HalfWidth is", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(0.1, new InputSet<StopRule>(rule, Width(Distribution.TruncatedNormal(0.1, 0.2, 1e-5, 0.5))).Nominal.HalfWidth);
    }

    [Fact]
    public void Every_listed_value_is_tried_before_any_case_runs()
    {
        StudyInput<StopRule> width = new StudyInput<StopRule>("width", "-", Distribution.Discrete((0.1, 5), (0.6, 0.1), (0.7, 0.1), (0.2, 1)), (r, v) => r with { HalfWidth = v is 0.6 ? v : 0.1 });
        InvalidModelException refusal = Assert.Throws<InvalidModelException>(() => new InputSet<StopRule>(new StopRule { Outcome = "Lit", HalfWidth = 0.1 }, width));
        Assert.Contains("refuses 0.6 -", Assert.Single(refusal.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_model_that_refuses_every_value_for_one_reason_tells_it_once_and_blames_no_spread()
    {
        StudyInput<StopRule> astray = new StudyInput<StopRule>("width", "-", Distribution.Uniform(0.1, 0.2), (_, _) => throw new ArgumentException("There is no such stage."));
        string said = Assert.Single(Assert.Throws<InvalidModelException>(() => new InputSet<StopRule>(new StopRule { Outcome = "Lit", HalfWidth = 0.1 }, astray)).Findings).Message;
        Assert.Equal("The model refuses this input, whatever its value: There is no such stage.", said);
    }

    [Fact]
    public void Spreads_that_differ_read_differently()
    {
        Distribution[] all =
        [
            Distribution.Uniform(0, 2), Distribution.Uniform(0, Math.BitIncrement(2)), Distribution.Triangular(0, 1, 2), Distribution.Normal(10, 1), Distribution.TruncatedNormal(10, 1, 5, 15),
            Distribution.TruncatedNormal(10, 1, 4, 15), Distribution.LogNormal(10, 1.1), Distribution.Discrete((1, 0.4), (2, 0.6)), Distribution.Discrete((1, 0.2), (2, 0.8)),
        ];
        Assert.Equal(all.Length, all.Select(spread => (Oscillator.MassInput with { Spread = spread }).Scatter).Distinct().Count());
        Assert.Equal("mass triangular from 0 over 1 to 2", (Oscillator.MassInput with { Spread = all[2] }).Scatter);
        Assert.Equal("mass listed 1:0.4 2:0.6", (Oscillator.MassInput with { Spread = all[7] }).Scatter);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a,b")]
    [InlineData(" a")]
    [InlineData("a\nb")]
    public void Names_hold_nothing_that_a_table_would_have_to_escape(string path) =>
        Assert.ThrowsAny<ArgumentException>(() => new StudyInput<Oscillator>(path, "kg", Distribution.Uniform(1, 2), (m, v) => m with { Mass = v }));

    private static ImmutableArray<string> Codes(Action act) => [.. Assert.Throws<InvalidModelException>(act).Findings.Select(f => f.Code)];
}
