using Staging.Core.Discharge;

namespace Staging.Core.Tests.Discharge;

/// <summary>What friction takes of the flow through a thick hole.</summary>
public class ShortTubeFrictionTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(10)]
    public void Friction_takes_less_of_a_short_tube_the_faster_it_flows_and_nothing_in_the_limit(double length)
    {
        double slow = ShortTubeLaw.IncompressibleCoefficient(length, 1e3), fast = ShortTubeLaw.IncompressibleCoefficient(length, 1e8);
        Assert.True(slow < fast);
        Assert.Equal(ShortTubeLaw.Coefficient(1, 1.4, length), fast, 1e-5);
        Assert.Throws<ArgumentOutOfRangeException>(() => ShortTubeLaw.IncompressibleCoefficient(length, 0));
    }
}
