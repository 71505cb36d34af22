using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>The coefficients satisfy the order conditions to round-off, so a typing error cannot pass.</summary>
public class Tsitouras54Tests
{
    private const double RoundOff = 2e-14;

    public static TheoryData<double> Fractions => [0.1, 0.25, 0.5, 0.75, 0.9, 1.0];

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 2)]
    [InlineData(4, 4)]
    [InlineData(5, 9)]
    public void The_trees_are_as_many_as_published(int order, int count) => Assert.Equal(count, RootedTree.OfOrder(order).Count);

    [Fact]
    public void Rows_of_the_matrix_sum_to_the_nodes()
    {
        double[][] a = Matrix();
        for (int i = 0; i < 7; i++)
            Assert.Equal(Tsitouras54.Nodes[i], a[i].Sum(), RoundOff);
    }

    [Fact]
    public void All_seventeen_conditions_of_order_five_hold()
    {
        List<RootedTree> trees = [.. RootedTree.UpTo(5)];
        Assert.Equal(17, trees.Count);
        Assert.All(trees, tree => Assert.Equal(1 / tree.Density, Sum(Matrix()[6], tree), RoundOff));
    }

    [Fact]
    public void Order_six_is_not_claimed_and_not_met() =>
        Assert.Contains(RootedTree.OfOrder(6), tree => Math.Abs(Sum(Matrix()[6], tree) - 1 / tree.Density) > 1e-5);

    [Fact]
    public void The_embedded_weights_are_of_order_four_and_not_of_order_five()
    {
        double[] embedded = [.. Matrix()[6].Zip(Tsitouras54.ErrorWeights.ToArray(), (b, e) => b + e)];
        Assert.All(RootedTree.UpTo(4), tree => Assert.Equal(1 / tree.Density, Sum(embedded, tree), RoundOff));
        Assert.Contains(RootedTree.OfOrder(5), tree => Math.Abs(Sum(embedded, tree) - 1 / tree.Density) > 1e-5);
    }

    [Theory]
    [MemberData(nameof(Fractions))]
    public void The_dense_output_meets_the_conditions_of_order_four_at_every_step_fraction(double s) =>
        Assert.All(RootedTree.UpTo(4), tree => Assert.Equal(Math.Pow(s, tree.Order) / tree.Density, Sum(Dense(s), tree), RoundOff));

    [Fact]
    public void The_dense_output_starts_at_the_state_and_ends_at_the_new_state()
    {
        Assert.All(Dense(0), b => Assert.Equal(0, b));
        Assert.All(Dense(1).Zip(Matrix()[6]), pair => Assert.Equal(pair.Second, pair.First, 2e-13));
    }

    [Fact]
    public void The_slopes_of_the_dense_output_are_those_of_the_two_ends()
    {
        Assert.Equal([1, 0, 0, 0, 0, 0, 0], DenseSlope(0));
        Assert.All(DenseSlope(1).Zip([0, 0, 0, 0, 0, 0, 1.0]), pair => Assert.Equal(pair.Second, pair.First, 2e-12));
    }

    private static double Sum(double[] weights, RootedTree tree) => weights.Zip(tree.Stages(Matrix()), (b, w) => b * w).Sum();

    private static double[] Dense(double s) =>
        [.. Tsitouras54.DenseWeights.ToArray().Chunk(4).Select(r => s * (r[0] + s * (r[1] + s * (r[2] + s * r[3]))))];

    private static double[] DenseSlope(double s) =>
        [.. Tsitouras54.DenseWeights.ToArray().Chunk(4).Select(r => r[0] + s * (2 * r[1] + s * (3 * r[2] + s * 4 * r[3])))];

    private static double[][] Matrix()
    {
        double[] entries = Tsitouras54.Matrix.ToArray();
        var a = new double[7][];
        int at = 0;
        for (int i = 0; i < 7; i++)
        {
            a[i] = new double[7];
            for (int j = 0; j < i; j++)
                a[i][j] = entries[at++];
        }

        return a;
    }
}
