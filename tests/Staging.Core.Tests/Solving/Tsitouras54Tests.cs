using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

/// <summary>The coefficients satisfy the order conditions to round-off, so a typing error cannot pass.</summary>
public class Tsitouras54Tests
{
    [Fact]
    public void Rows_of_the_matrix_sum_to_the_nodes()
    {
        double[,] a = Matrix();
        for (int i = 0; i < 7; i++)
            Assert.Equal(Tsitouras54.Nodes[i], Enumerable.Range(0, 7).Sum(j => a[i, j]), 14);
    }

    [Theory]
    [InlineData(0, 1.0)]
    [InlineData(1, 1.0 / 2)]
    [InlineData(2, 1.0 / 3)]
    [InlineData(3, 1.0 / 4)]
    [InlineData(4, 1.0 / 5)]
    public void Weights_integrate_powers_of_time_to_order_five(int power, double integral)
    {
        double[,] a = Matrix();
        double sum = Enumerable.Range(0, 7).Sum(j => a[6, j] * Math.Pow(Tsitouras54.Nodes[j], power));
        Assert.Equal(integral, sum, 13);
    }

#pragma warning disable CA1814
    private static double[,] Matrix()
    {
        var a = new double[7, 7];
        int at = 0;
        for (int i = 1; i < 7; i++)
        {
            for (int j = 0; j < i; j++)
                a[i, j] = Tsitouras54.Matrix[at++];
        }

        return a;
    }
#pragma warning restore CA1814
}
