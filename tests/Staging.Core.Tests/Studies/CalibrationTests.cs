using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class CalibrationTests
{
    private static readonly ImmutableArray<double> Times = [.. Enumerable.Range(0, 60).Select(i => 0.05 * i)];

    private static readonly Decay Truth = new(2.5, 0.8, 1);

    private static readonly StudyInput<Decay> Start = new StudyInput<Decay>("start", "Pa", Distribution.Uniform(0.5, 5), (d, v) => d with { Start = v });

    private static readonly StudyInput<Decay> TimeConstant = new StudyInput<Decay>("time-constant", "s", Distribution.Triangular(0.1, 0.3, 3), (d, v) => d with { Tau = v });

    private static readonly StudyInput<Decay> Gain = new StudyInput<Decay>("gain", "-", Distribution.Uniform(0.5, 2), (d, v) => d with { Gain = v });

    [Fact]
    public void Planted_values_come_back_from_an_exact_trace()
    {
        CalibrationResult<Decay> fit = Fit(Trace(0, 0), Start, TimeConstant);
        Assert.Equal(Truth.Start, fit.Inputs[0].Value, 1e-6);
        Assert.Equal(Truth.Tau, fit.Inputs[1].Value, 1e-6);
        Assert.InRange(fit.ResidualStandardDeviation, 0, 1e-6);
        Assert.Equal(fit.Inputs[1].Value, fit.Fitted.Tau);
        Assert.Empty(fit.Findings);
    }

    [Fact]
    public void A_fit_of_two_inputs_takes_few_runs()
    {
        int runs = 0;
        new InputSet<Decay>(Truth, Start, TimeConstant).Fit(Trace(0.1, 1), (d, t, stop) => { Interlocked.Increment(ref runs); return Course(d, t, stop); });
        // Each step costs one run and the slopes four; fifteen steps are plenty for two inputs.
        Assert.InRange(runs, 10, 80);
    }

    [Fact]
    public void Intervals_hold_planted_values_as_often_as_they_say()
    {
        // Of 100 seeds at 95 %, fewer than 90 inside come with a probability of 1.1 % by the exact binomial, for each of the two inputs.
        Assert.InRange(BinomialRank.AtMost(89, 100, 0.95), 0.011, 0.0116);
        CalibrationResult<Decay>[] fits = [.. Enumerable.Range(1, 100).Select(seed => Fit(Trace(0.1, (ulong)seed), Start, TimeConstant))];
        Assert.InRange(fits.Count(f => f.Inputs[0].Interval.Holds(Truth.Start)), 90, 100);
        Assert.InRange(fits.Count(f => f.Inputs[1].Interval.Holds(Truth.Tau)), 90, 100);
        // They reach as far above the value as below it, by the same number of standard errors each time.
        double reach = (fits[0].Inputs[0].Value - fits[0].Inputs[0].Interval.Low) / fits[0].Inputs[0].StandardError;
        Assert.All(fits.SelectMany(f => f.Inputs), i => Assert.Equal(reach, (i.Interval.High - i.Value) / i.StandardError, 1e-9 * reach));
        // The standard error says how far the estimates scatter: their mean square over the claimed one is chi-square over 100, within 0.68 to 1.40 at 99 %.
        Assert.InRange(fits.Average(f => Math.Pow((f.Inputs[1].Value - Truth.Tau) / f.Inputs[1].StandardError, 2)), 0.68, 1.40);
        Assert.InRange(fits.Average(f => f.ResidualStandardDeviation), 0.097, 0.103);
    }

    [Fact]
    public void The_covariance_is_that_of_the_closed_form()
    {
        CalibrationResult<Decay> fit = Fit(Trace(0.1, 5), Start, TimeConstant);
        double a = 0, b = 0, c = 0;
        foreach (double t in Times)
        {
            double e = Math.Exp(-t / fit.Fitted.Tau), slope = fit.Fitted.Start * e * t / (fit.Fitted.Tau * fit.Fitted.Tau);
            (a, b, c) = (a + e * e, b + e * slope, c + slope * slope);
        }

        double s2 = fit.ResidualStandardDeviation * fit.ResidualStandardDeviation, det = a * c - b * b;
        // Slopes by central differences over a thousandth of the range are right to about the square of that.
        Assert.Equal(s2 * c / det, fit.Covariance[0], 1e-4 * fit.Covariance[0]);
        Assert.Equal(-s2 * b / det, fit.Covariance[1], 1e-4 * Math.Abs(fit.Covariance[1]));
        Assert.Equal(s2 * a / det, fit.Covariance[3], 1e-4 * fit.Covariance[3]);
        Assert.Equal(-b / Math.Sqrt(a * c), fit.Correlation[1], 1e-4);
        Assert.Equal(fit.Covariance[1], fit.Covariance[2]);
    }

    [Fact]
    public void Inputs_that_act_alike_are_told_and_their_errors_say_so()
    {
        CalibrationResult<Decay> fit = Fit(Trace(0.1, 5), Start, Gain, TimeConstant);
        ModelFinding finding = Assert.Single(fit.Findings, f => f.Code == "STU011");
        Assert.Equal("start, gain", finding.Path);
        Assert.True(fit.Inputs[0].StandardError > 100 * Truth.Start);
        Assert.True(fit.Inputs[2].StandardError < 0.2);
    }

    [Fact]
    public void Three_inputs_that_act_alike_are_told_though_no_two_of_them_are()
    {
        // p = start g h exp(-t/tau): the estimates of start, g and h are correlated by -1/2, far below the limit, and yet only their product is known.
        StudyInput<Decay> other = new StudyInput<Decay>("other-gain", "-", Distribution.Uniform(0.5, 2), (d, v) => d with { Gain = d.Gain * v });
        CalibrationResult<Decay> fit = Fit(Trace(0.1, 5), Start, Gain, other, TimeConstant);
        Assert.InRange(Math.Abs(fit.Correlation[1]), 0, 0.9);
        Assert.Equal("start, gain, other-gain", Assert.Single(fit.Findings, f => f.Code == "STU011").Path);
        Assert.True(fit.Inputs[2].StandardError > 100);
        Assert.True(fit.Inputs[3].StandardError < 0.2);
    }

    [Fact]
    public void A_pair_among_a_group_is_told_with_it()
    {
        // start and again act alike; so do start, rise and both, since both is their sum. The correlation of start and again stays below the limit, for either may trade aagainst the others too.
        StudyInput<Sum> Part(string name, Func<Sum, double, Sum> with) => new StudyInput<Sum>(name, "Pa", Distribution.Uniform(0, 4), with);
        InputSet<Sum> inputs = new(
            new Sum(0, 0), Part("start", (m, v) => m with { Decay = m.Decay + v }), Part("again", (m, v) => m with { Decay = m.Decay + v }),
            Part("rise", (m, v) => m with { Level = m.Level + v }), Part("both", (m, v) => new Sum(m.Decay + v, m.Level + v)));
        MeasuredTrace trace = MeasuredTrace.Of("p_Pa", Times, [.. Times.Select((t, i) => 5 * Math.Exp(-t) + 3 + 0.1 * new CaseDraws(1, (ulong)i).Normal(0))]);
        CalibrationResult<Sum> fit = inputs.Fit(trace, (m, times, _) => [.. times.Select(t => m.Decay * Math.Exp(-t) + m.Level)]);
        Assert.InRange(Math.Abs(fit.Correlation[1]), 0, new CalibrationOptions().CorrelationLimit);
        ModelFinding[] told = [.. fit.Findings.Where(f => f.Code == "STU011")];
        Assert.Equal(["rise, both", "start, again, rise, both"], told.Select(f => f.Path));
        Assert.Contains("the others together do almost what each of them does", told[1].Message, StringComparison.Ordinal);
        Assert.All(fit.Inputs, i => Assert.True(i.StandardError > 100));
    }

    [Fact]
    public void The_unit_of_the_trace_changes_no_estimate()
    {
        CalibrationResult<Decay> Scaled(double unit) => new InputSet<Decay>(Truth, Start, TimeConstant).Fit(
            MeasuredTrace.Of("p", Times, [.. Trace(0.1, 5).Values.Select(v => unit * v)]),
            (d, t, stop) => [.. Course(d, t, stop).Select(v => unit * v)]);
        CalibrationResult<Decay> one = Scaled(1);
        Assert.Empty(one.Findings);
        foreach (double unit in new[] { 1e-6, 1e6 })
        {
            CalibrationResult<Decay> other = Scaled(unit);
            Assert.Empty(other.Findings);
            // Round-off may stop the minimiser elsewhere within its tolerance, 1e-8 of each range.
            Assert.Equal(one.Inputs[0].Value, other.Inputs[0].Value, 4.5e-8);
            Assert.Equal(one.Inputs[1].Value, other.Inputs[1].Value, 2.9e-8);
            Assert.Equal(one.Inputs[1].StandardError, other.Inputs[1].StandardError, 1e-6 * one.Inputs[1].StandardError);
            Assert.Equal(one.ResidualStandardDeviation, other.ResidualStandardDeviation / unit, 1e-6 * one.ResidualStandardDeviation);
        }

        // By a power of two every operation scales without rounding.
        CalibrationResult<Decay> binary = Scaled(1.0 / (1 << 20));
        Assert.Equal(one.Inputs.Select(Numbers), binary.Inputs.Select(Numbers));
        Assert.Equal(one.ResidualStandardDeviation, binary.ResidualStandardDeviation * (1 << 20));
    }

    [Theory]
    [InlineData(101_325)]
    [InlineData(-1e6)]
    public void A_large_pressure_beneath_the_course_changes_no_estimate(double outside)
    {
        CalibrationResult<Decay> gauge = Fit(Trace(0.1, 5), Start, TimeConstant), absolute = new InputSet<Decay>(Truth, Start, TimeConstant).Fit(
            MeasuredTrace.Of("p_Pa", Times, [.. Trace(0.1, 5).Values.Select(v => v + outside)]),
            (d, t, stop) => [.. Course(d, t, stop).Select(v => v + outside)]);
        Assert.Empty(absolute.Findings);
        // A millionth of the standard errors, 0.04 Pa and 0.02 s: above the round-off of a million pascals, 1e-10 Pa over a step of a thousandth.
        Assert.Equal(gauge.Inputs[0].Value, absolute.Inputs[0].Value, 4e-8);
        Assert.Equal(gauge.Inputs[1].Value, absolute.Inputs[1].Value, 2e-8);
        Assert.Equal(gauge.ResidualStandardDeviation, absolute.ResidualStandardDeviation, 1e-9);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0)]
    [InlineData(101_325, 0)]
    [InlineData(101_325, 3)]
    [InlineData(-1e6, 3)]
    public void A_level_trace_is_fitted_on_the_scale_of_what_the_model_leaves_of_it(double outside, double truth)
    {
        // The model is level at the truth alone, which is an end of the range or inside it.
        StudyInput<Sum> rise = new StudyInput<Sum>("rise", "Pa/s", Distribution.Uniform(0, 10), (m, v) => m with { Level = v });
        CalibrationResult<Sum> fit = new InputSet<Sum>(new Sum(0, 0), rise).Fit(
            MeasuredTrace.Of("p_Pa", Times, [.. Times.Select(_ => outside)]), (m, times, _) => [.. times.Select(t => outside + (m.Level - truth) * t)]);
        // A millionth of the range.
        Assert.Equal(truth, fit.Inputs[0].Value, 1e-5);
        Assert.Equal(truth == 0 ? ["STU013"] : [], fit.Findings.Select(f => f.Code));
    }

    [Fact]
    public void A_level_trace_is_fitted_by_a_level_model()
    {
        StudyInput<Decay> level = new StudyInput<Decay>("level", "Pa", Distribution.Uniform(0, 1), (d, v) => d with { Start = v });
        CalibrationResult<Decay> fit = new InputSet<Decay>(Truth, level).Fit(
            MeasuredTrace.Of("p_Pa", Times, [.. Times.Select(_ => 0.1)]), (d, t, _) => [.. t.Select(_ => d.Start)]);
        Assert.Equal(0.1, fit.Inputs[0].Value, 1e-8);
        Assert.Empty(fit.Findings);
    }

    [Fact]
    public void Residuals_of_a_level_model_scatter_over_their_number_less_one()
    {
        // The best level is the mean, 5; the squares about it sum to 32, over 8 values less 1 input.
        StudyInput<Decay> level = new("level", "Pa", Distribution.Uniform(0, 10), (d, v) => d with { Start = v });
        CalibrationResult<Decay> fit = new InputSet<Decay>(Truth, level).Fit(
            MeasuredTrace.Of("p_Pa", [0, 1, 2, 3, 4, 5, 6, 7], [2, 4, 4, 4, 5, 5, 7, 9]), (d, times, _) => [.. times.Select(_ => d.Start)]);
        Assert.Equal(5, fit.Inputs[0].Value, 1e-7);
        Assert.Equal(Math.Sqrt(32.0 / 7), fit.ResidualStandardDeviation, 1e-9);
        Assert.Equal(Math.Sqrt(32.0 / 7 / 8), fit.Inputs[0].StandardError, 1e-7);
    }

    [Fact]
    public void A_trace_that_no_input_moves_is_told_and_their_errors_say_so()
    {
        StudyInput<Decay> Idle(string name) => new StudyInput<Decay>(name, "-", Distribution.Uniform(0, 1), (d, v) => d);
        foreach (StudyInput<Decay>[] inputs in new StudyInput<Decay>[][] { [Idle("one")], [Idle("one"), Idle("two")] })
        {
            CalibrationResult<Decay> fit = Fit(Trace(0.1, 5), [.. inputs]);
            Assert.Equal(inputs.Select(i => i.Path), fit.Findings.Where(f => f.Code == "STU012").Select(f => f.Path));
            Assert.DoesNotContain(fit.Findings, f => f.Code == "STU011");
            Assert.All(fit.Inputs, i => Assert.True(double.IsFinite(i.StandardError) && i.StandardError > 1e6));
            Assert.All(fit.Correlation, c => Assert.True(double.IsFinite(c)));
            Assert.Equal(0.1, fit.ResidualStandardDeviation, 0.03);
        }
    }

    [Fact]
    public void An_input_without_influence_is_told()
    {
        StudyInput<Decay> idle = new StudyInput<Decay>("idle", "-", Distribution.Uniform(0, 1), (d, v) => d);
        Assert.Contains(Fit(Trace(0.1, 5), Start, TimeConstant, idle).Findings, f => f is { Code: "STU012", Path: "idle" });
    }

    [Fact]
    public void A_range_that_does_not_hold_the_answer_is_told()
    {
        StudyInput<Decay> low = Start with { Spread = Distribution.Uniform(0.5, 2) };
        CalibrationResult<Decay> fit = Fit(Trace(0.05, 5), low, TimeConstant);
        Assert.True(fit.Inputs[0].IsAtEnd);
        Assert.Contains(fit.Findings, f => f is { Code: "STU013", Path: "start" });
    }

    [Fact]
    public void Threads_change_nothing()
    {
        double[] Values(int threads) => [.. new InputSet<Decay>(Truth, Start, TimeConstant).Fit(Trace(0.1, 3), Course, new CalibrationOptions { Threads = threads }).Inputs.SelectMany(i => new[] { i.Value, i.StandardError })];
        Assert.Equal(Values(1), Values(2));
        Assert.Equal(Values(1), Values(8));
    }

    [Fact]
    public void What_cannot_be_fitted_is_refused()
    {
        Assert.Equal("STU009", Code(() => Fit(Trace(0, 0), Start with { Spread = Distribution.Normal(1, 1) })));
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => MeasuredTrace.Of("p\u001b[2J_Pa", [0, 1], [2, 1])).ParamName);
        Assert.Throws<FormatException>(() => MeasuredTrace.ReadCsv(new StringReader("time_s,p\u001b[2J_Pa\n0,1\n1,2\n")));
        Assert.Equal("STU010", Code(() => Fit(MeasuredTrace.Of("p_Pa", [0, 1], [2, 1]), Start, TimeConstant)));
        Assert.Throws<ArithmeticException>(() => new InputSet<Decay>(Truth, Start).Fit(Trace(0, 0), (_, _, _) => [1]));
    }

    [Fact]
    public void A_trace_is_read_from_its_columns()
    {
        MeasuredTrace trace = MeasuredTrace.ReadCsv(new StringReader("time_s,gauge_Pa\r\n0,1.5\n1e-3, 2.5\n\n"));
        Assert.Equal("gauge_Pa", trace.Name);
        Assert.Equal([0, 1e-3], trace.Times);
        Assert.Equal([1.5, 2.5], trace.Values);
    }

    [Theory]
    [InlineData("t,p\n0,1\n1,2", "Line 1")]
    [InlineData("time_s,p_Pa\n0,1\n1,x", "Line 3")]
    [InlineData("time_s,p_Pa\n0,1\n1,NaN", "Line 3")]
    [InlineData("time_s,p_Pa\n0,1\n0,2", "times have to rise")]
    [InlineData("time_s,p_Pa\n0,1", "at least two")]
    [InlineData("", "Line 1")]
    public void A_bad_trace_is_refused_with_its_line(string text, string says) =>
        Assert.Contains(says, Assert.Throws<FormatException>(() => MeasuredTrace.ReadCsv(new StringReader(text))).Message, StringComparison.Ordinal);

    private static ImmutableArray<double> Course(Decay d, ImmutableArray<double> times, CancellationToken stop) =>
        [.. times.Select(t => d.Gain * d.Start * Math.Exp(-t / d.Tau))];

    private static MeasuredTrace Trace(double noise, ulong seed) =>
        MeasuredTrace.Of("p_Pa", Times, [.. Course(Truth, Times, default).Select((p, i) => p + noise * new CaseDraws(seed, (ulong)i).Normal(0))]);

    private static (double, double, double, double) Numbers(FittedInput fitted) =>
        (fitted.Value, fitted.StandardError, fitted.Interval.Low, fitted.Interval.High);

    private static CalibrationResult<Decay> Fit(MeasuredTrace trace, params ImmutableArray<StudyInput<Decay>> inputs) =>
        new InputSet<Decay>(Truth, inputs).Fit(trace, Course);

    private static string Code(Action act) => Assert.Throws<InvalidModelException>(act).Findings[0].Code;

    private sealed record Decay(double Start, double Tau, double Gain);

    private sealed record Sum(double Decay, double Level);
}
