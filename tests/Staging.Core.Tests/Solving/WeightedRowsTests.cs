using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>Weighted sums of rows, whatever the length of the row is to the lanes of the machine.</summary>
public class WeightedRowsTests
{
    private static readonly double[] Weights = [0.3, -1.7, 2.9, 0.01];

    public static TheoryData<int> Lengths => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Lengths))]
    public void Every_place_has_the_bits_of_the_fused_sum(int n)
    {
        double[] rows = [.. Enumerable.Range(0, 4 * n).Select(i => Math.Sin(1 + i))], y = [.. Enumerable.Range(0, n).Select(i => Math.Cos(i))];
        double[] written = new double[n], added = new double[n];
        WeightedRows.Write(0.7, Weights, rows, written);
        WeightedRows.AddTo(y, 0.7, Weights, rows, added);
        for (int i = 0; i < n; i++)
        {
            double sum = (Weights[0] * rows[i]).And(Weights[1], rows[n + i]).And(Weights[2], rows[2 * n + i]).And(Weights[3], rows[3 * n + i]);
            Assert.Equal(0.7 * sum, written[i]);
            Assert.Equal(sum.Over(0.7, y[i]), added[i]);
        }
    }

    [Fact]
    public void Rows_that_are_too_few_are_refused()
    {
        Assert.Throws<ArgumentException>(() => WeightedRows.Write(1, Weights, new double[7], new double[2]));
        Assert.Throws<ArgumentException>(() => WeightedRows.Write(1, [], new double[8], new double[2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightedRows.AddTo(new double[3], 1, Weights, new double[8], new double[2]));
    }
}
