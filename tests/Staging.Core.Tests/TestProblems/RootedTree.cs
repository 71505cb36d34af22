namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// A rooted tree: each stands for one order condition of a one-step method, sum b(i) Phi(i) = 1/gamma.
/// J. C. Butcher, Numerical Methods for Ordinary Differential Equations, 3rd ed. (2016), chapter 3; E. Hairer, S. P. Norsett and G. Wanner,
/// Solving Ordinary Differential Equations I, 2nd ed. (1993), section II.2. There are 1, 1, 2, 4, 9 trees of order 1 to 5.
/// </summary>
internal sealed class RootedTree
{
    private readonly List<RootedTree> children;

    private RootedTree(List<RootedTree> children)
    {
        this.children = children;
        Order = 1 + children.Sum(c => c.Order);
        Density = Order * children.Aggregate(1.0, (product, c) => product * c.Density);
    }

    /// <summary>Number of vertices.</summary>
    public int Order { get; }

    /// <summary>gamma: the order times the densities of the branches.</summary>
    public double Density { get; }

    /// <summary>All trees of an order.</summary>
    public static List<RootedTree> OfOrder(int order)
    {
        var smaller = new List<RootedTree>();
        for (int n = 1; n < order; n++)
            smaller.AddRange(OfOrder(n));
        var trees = new List<RootedTree>();
        Choose(smaller, 0, order - 1, [], trees);
        return trees;
    }

    /// <summary>All trees up to an order.</summary>
    public static IEnumerable<RootedTree> UpTo(int order) => Enumerable.Range(1, order).SelectMany(OfOrder);

    /// <summary>Elementary weights of the stages of a Runge-Kutta method with matrix a.</summary>
    public double[] Stages(double[][] a) => Stages(a, a);

    /// <summary>
    /// Elementary weights of the stages of a Rosenbrock method: vertices with one branch take beta = alpha + gamma, others alpha.
    /// E. Hairer and G. Wanner, Solving Ordinary Differential Equations II, 2nd ed. (1996), section IV.7, theorem 7.4.
    /// </summary>
    public double[] Stages(double[][] alpha, double[][] beta)
    {
        double[] weights = [.. Enumerable.Repeat(1.0, alpha.Length)];
        double[][] matrix = children.Count == 1 ? beta : alpha;
        foreach (RootedTree child in children)
        {
            double[] inner = child.Stages(alpha, beta);
            for (int i = 0; i < weights.Length; i++)
                weights[i] *= matrix[i].Zip(inner, (m, w) => m * w).Sum();
        }

        return weights;
    }

    public override string ToString() => children.Count == 0 ? "." : $"[{string.Concat(children)}]";

    private static void Choose(List<RootedTree> from, int first, int vertices, List<RootedTree> chosen, List<RootedTree> trees)
    {
        if (vertices == 0)
            trees.Add(new RootedTree([.. chosen]));
        for (int i = first; i < from.Count && vertices > 0; i++)
        {
            if (from[i].Order <= vertices)
                Choose(from, i, vertices - from[i].Order, [.. chosen, from[i]], trees);
        }
    }
}
