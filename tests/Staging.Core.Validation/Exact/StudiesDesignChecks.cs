using System.Collections.Immutable;
using Staging.Core.Studies;
using Staging.Core.Validation.Published;

namespace Staging.Core.Validation.Exact;

/// <summary>What a method of study must give where the answer is known: by its definition, by a table, or by elementary mechanics.</summary>
public class StudiesDesignChecks
{
    private const string Morris = "M. D. Morris, Technometrics 33 (1991) 161-174, elementary effect (y(x + D) - y(x))/D: of a straight line its slope, "
        + "of x^2 between levels the sum of both, here 1 on the mean";

    private const string NormalTable = "Table of the normal distribution, any handbook of statistics: 1.6449 at 95 %, 2.3263 at 99 %";

    private const string Wilks = "S. S. Wilks, Ann. Math. Stat. 12 (1941) 91-96: cases without a miss at a confidence of 95 %, printed everywhere as 59 for "
        + "95 % and 299 for 99 %; 93 and 124 with one and two misses allowed";

    private const string Projectile = "Range of a projectile in a vacuum, any textbook of mechanics: v^2 sin(2 theta)/g";

    private const string Latin = "M. D. McKay, R. J. Beckman and W. J. Conover, Technometrics 21 (1979) 239-245: one case in each of n equal strata of every "
        + "input, so that the mean of a straight line errs by at most half a stratum";

    private static readonly InputSet<ImmutableArray<double>> Pair = new([0, 0], Input("x1", 0, Distribution.Uniform(0, 1)), Input("x2", 1, Distribution.Uniform(0, 1)));

    [Fact]
    public void Screening()
    {
        SensitivityStudy<ImmutableArray<double>> study = new() { Inputs = Pair, Unit = "-", Model = (x, _) => 3 * x[0] + x[1] * x[1] };
        ImmutableArray<MorrisEffect> effects = study.Screen(4000, levels: 4, seed: 2);
        Check("mean elementary effect of a straight input of slope 3", 3, effects[0].Mean, Tolerance.ClosedForm, Morris);
        Check("mean elementary effect of x^2", 1, effects[1].Mean, Tolerance.FixedAmount(0.03, "4000 paths: five times 1/3 over their root"), Morris);
        Check("scatter of the elementary effect of x^2, levels 0 to 1 in thirds", 1 / 3.0, effects[1].StandardDeviation, Tolerance.Relative(0.01, "4000 paths of two equally likely effects, 2/3 and 4/3"), Morris);
    }

    [Theory]
    [InlineData(0.05, 1.6449)]
    [InlineData(0.01, 2.3263)]
    public void Ends_of_a_tornado_bar(double tail, double quantile)
    {
        InputSet<ImmutableArray<double>> normal = new([0, 0], Input("x1", 0, Distribution.Normal(10, 2)), Input("x2", 1, Distribution.Uniform(0, 1)));
        TornadoBar bar = new SensitivityStudy<ImmutableArray<double>> { Inputs = normal, Unit = "-", Model = (x, _) => 5 * x[0] + x[1] }.Bars(tail).Single(b => b.Input.Name == "x1");
        Check($"upper end of the bar of 5 x, x normal about 10 by 2, tail {tail}", 50 + 10 * quantile + 0.5, bar.AtHigh, Tolerance.FixedAmount(5.01e-4, "half a unit of the last digit of the table, times 10"), NormalTable);
        Check($"length of that bar, tail {tail}", 20 * quantile, bar.Length, Tolerance.FixedAmount(1.01e-3, "half a unit of the last digit of the table, times 20"), NormalTable);
    }

    [Theory]
    [InlineData(0.95, 59, 0)]
    [InlineData(0.99, 299, 0)]
    [InlineData(0.95, 93, 1)]
    [InlineData(0.95, 124, 2)]
    public void Cases_for_an_assurance(double probability, int cases, int misses)
    {
        int least = 10;
        while (new Assurance { Probability = probability, Cases = least }.HitsNeeded is not { } needed || least - needed < misses)
            least++;
        Check($"cases that assure {probability} at 95 % with {misses} misses", cases, least, Tolerance.FixedAmount(0, "a count"), Wilks);
    }

    [Fact]
    public void Ends_of_a_window()
    {
        const double v = 30, g = 9.80665, wanted = 70;
        WindowResult found = Sweep.Windows(Axis.Even("angle", "deg", 5, 85, 17), 1e-7, (angle, _) => v * v * Math.Sin(2 * angle * Math.PI / 180) / g > wanted);
        double low = 0.5 * Math.Asin(wanted * g / (v * v)) * 180 / Math.PI;
        Tolerance within = Tolerance.FixedAmount(1.01e-7, "the width that was asked for");
        Check("least angle that throws 70 m at 30 m/s", low, found.Widest!.Low, within, Projectile);
        Check("greatest angle that throws 70 m at 30 m/s", 90 - low, found.Widest.High, within, Projectile);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(500)]
    public void A_latin_hypercube(int cases)
    {
        var design = new SampleDesign(DesignKind.LatinHypercube, cases, 3, 11);
        double sum = 0;
        int[] visits = new int[cases];
        for (int i = 0; i < cases; i++)
        {
            sum += design.At(i, 1);
            visits[(int)(design.At(i, 1) * cases)]++;
        }

        Check($"most cases in one of {cases} strata", 1, visits.Max(), Tolerance.FixedAmount(0, "a count"), Latin);
        Check($"mean of {cases} cases between 0 and 1", 0.5, sum / cases, Tolerance.FixedAmount(0.5 / cases, "half a stratum, whatever the seed"), Latin);
    }

    private static StudyInput<ImmutableArray<double>> Input(string name, int at, Distribution spread) => new(name, "-", spread, (x, v) => x.SetItem(at, v));

    private static void Check(string quantity, double expected, double ours, Tolerance within, string source) =>
        StudiesChecks.Check(quantity, expected, ours, within, source, Evidence.ComputedFromFormula);
}
