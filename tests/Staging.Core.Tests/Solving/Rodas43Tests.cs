using System.Numerics;
using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>The coefficients satisfy the order conditions and the stability that is claimed, so a wrong sign cannot pass.</summary>
public class Rodas43Tests
{
    private const int Stages = 6;
    private const double RoundOff = 2e-14;

    // With c = diag(1/gamma) - Gamma^-1 and a = alpha Gamma^-1 (Hairer and Wanner 1996, equation IV.7.25) the matrices of the
    // textbook form follow from the coefficients of the programmed form.
    private static readonly double[][] GammaMatrix = Inverse(ToSi(Rodas43.StageWeights, -1, 1 / Rodas43.Gamma));
    private static readonly double[][] Alpha = Product(ToSi(Rodas43.StateWeights, 1, 0), GammaMatrix);
    private static readonly double[][] Beta = [.. Alpha.Zip(GammaMatrix, (a, g) => a.Zip(g, (x, y) => x + y).ToArray())];

    public static TheoryData<double> Fractions => [0.1, 0.25, 0.5, 0.75, 0.9, 1.0];

    [Fact]
    public void Rows_of_alpha_sum_to_the_nodes()
    {
        for (int i = 0; i < Stages; i++)
            Assert.Equal(Rodas43.Nodes[i], Alpha[i].Sum(), RoundOff);
    }

    [Fact]
    public void Rows_of_gamma_sum_to_the_weights_of_the_time_derivative_sign_included()
    {
        for (int i = 0; i < Stages; i++)
            Assert.Equal(Rodas43.TimeWeights[i], GammaMatrix[i].Sum(), RoundOff);
    }

    [Fact]
    public void All_eight_conditions_of_order_four_hold()
    {
        List<RootedTree> trees = [.. RootedTree.UpTo(4)];
        Assert.Equal(8, trees.Count);
        Assert.All(trees, tree => Assert.Equal(1 / tree.Density, Sum(Weights(), tree), RoundOff));
    }

    [Fact]
    public void Order_five_is_not_claimed_and_not_met() =>
        Assert.Contains(RootedTree.OfOrder(5), tree => Math.Abs(Sum(Weights(), tree) - 1 / tree.Density) > 1e-4);

    [Fact]
    public void The_embedded_weights_are_of_order_three_and_not_of_order_four()
    {
        double[] stages = NewState();
        stages[Stages - 1] = 0;
        double[] embedded = Row(stages);
        Assert.All(RootedTree.UpTo(3), tree => Assert.Equal(1 / tree.Density, Sum(embedded, tree), RoundOff));
        Assert.Contains(RootedTree.OfOrder(4), tree => Math.Abs(Sum(embedded, tree) - 1 / tree.Density) > 1e-4);
    }

    [Theory]
    [MemberData(nameof(Fractions))]
    public void The_dense_output_meets_the_conditions_of_order_three_at_every_step_fraction(double s)
    {
        double[] weights = NewState(), dense = Rodas43.DenseWeights.ToArray();
        for (int i = 0; i < Stages; i++)
            weights[i] = s * weights[i] + s * (1 - s) * (dense[i] + s * dense[Stages + i]);
        double[] b = Row(weights);
        Assert.All(RootedTree.UpTo(3), tree => Assert.Equal(Math.Pow(s, tree.Order) / tree.Density, Sum(b, tree), 1e-13));
    }

    [Fact]
    public void It_is_stiffly_accurate() => Assert.All(Weights().Zip(Beta[Stages - 1]), pair => Assert.Equal(pair.Second, pair.First, RoundOff));

    [Fact]
    public void It_is_stable_on_the_whole_imaginary_axis()
    {
        for (double y = 1e-3; y < 1e6; y *= 1.05)
            Assert.InRange(Stability(new Complex(0, y)).Magnitude, 0, 1 + 1e-12);
    }

    [Fact]
    public void It_damps_the_infinitely_stiff()
    {
        foreach (double z in new[] { -1e3, -1e5, -1e7 })
            Assert.InRange(Stability(z).Magnitude, 0, 10 / -z);
    }

    [Fact]
    public void Near_zero_it_follows_the_exponential_to_fourth_order()
    {
        double Deviation(double z) => Math.Abs(Stability(z).Real - Math.Exp(z));
        Assert.Equal(5, Math.Log2(Deviation(-0.1) / Deviation(-0.05)), 0.2);
    }

    private static double[] Weights() => Row(NewState());

    private static double[] NewState() => [.. ToSi(Rodas43.StateWeights, 1, 0)[Stages - 1][..(Stages - 1)], 1];

    private static double[] Row(double[] weightsOfStages) => Product([weightsOfStages], GammaMatrix)[0];

    private static double Sum(double[] weights, RootedTree tree) => weights.Zip(tree.Stages(Alpha, Beta), (b, w) => b * w).Sum();

    /// <summary>R(z) = 1 + z b (I - z B)^-1 1, by forward substitution: B is lower triangular.</summary>
    private static Complex Stability(Complex z)
    {
        var x = new Complex[Stages];
        Complex r = 1;
        double[] b = Weights();
        for (int i = 0; i < Stages; i++)
        {
            x[i] = 1;
            for (int j = 0; j < i; j++)
                x[i] += z * Beta[i][j] * x[j];
            x[i] /= 1 - z * Beta[i][i];
            r += z * b[i] * x[i];
        }

        return r;
    }

    private static double[][] ToSi(ReadOnlySpan<double> entries, double factor, double diagonal)
    {
        var m = new double[Stages][];
        int at = 0;
        for (int i = 0; i < Stages; i++)
        {
            m[i] = new double[Stages];
            for (int j = 0; j < i; j++)
                m[i][j] = factor * entries[at++];
            m[i][i] = diagonal;
        }

        return m;
    }

    private static double[][] Product(double[][] a, double[][] b) =>
        [.. a.Select(row => Enumerable.Range(0, Stages).Select(j => row.Select((x, k) => x * b[k][j]).Sum()).ToArray())];

    private static double[][] Inverse(double[][] lower)
    {
        var inverse = new double[Stages][];
        for (int i = 0; i < Stages; i++)
        {
            inverse[i] = new double[Stages];
            for (int j = 0; j <= i; j++)
            {
                double sum = i == j ? 1 : 0;
                for (int k = j; k < i; k++)
                    sum -= lower[i][k] * inverse[k][j];
                inverse[i][j] = sum / lower[i][i];
            }
        }

        return inverse;
    }
}
