using Staging.Core.Solving;

namespace Staging.Core.Tests.Solving;

public class BinaryLogarithmTests
{
    /// <summary>What the polynomials of the logarithm and, relative, of the power leave out.</summary>
    private const double Within = 1.1e-4;

    [Fact]
    public void Logarithm_and_power_follow_the_library_to_what_their_polynomials_leave_out()
    {
        for (int i = -20_000; i <= 20_000; i++)
        {
            double y = i * 0.0497;
            Assert.Equal(Math.Log2(Math.Pow(2, y)), BinaryLogarithm.Of(Math.Pow(2, y)), Within);
            Assert.Equal(1, BinaryLogarithm.Power(y) / Math.Pow(2, y), Within);
        }
    }

    [Fact]
    public void Whole_powers_of_two_are_exact()
    {
        for (int i = -1000; i <= 1000; i++)
        {
            Assert.Equal(i, BinaryLogarithm.Of(Math.ScaleB(1, i)));
            Assert.Equal(Math.ScaleB(1, i), BinaryLogarithm.Power(i));
        }
    }
}
