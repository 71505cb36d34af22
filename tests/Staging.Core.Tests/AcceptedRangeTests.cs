namespace Staging.Core.Tests;

public class AcceptedRangeTests
{
    [Theory]
    [InlineData(0, 200_000, 200_000.02, "200000.02")]
    [InlineData(0, 200_000, 200_001, "200001")]
    [InlineData(0, 200_000, 1e9 / 3, "3.33333E+08")]
    [InlineData(0.1, 1, 0.09999999, "0.09999999")]
    [InlineData(0.1, 1, double.NaN, "NaN")]
    public void A_refused_number_is_told_apart_from_the_ends(double low, double high, double value, string told)
    {
        string message = Assert.Throws<ArgumentOutOfRangeException>(() => Guard.In(value, low, high, "kg", "Mass")).Message;
        Assert.StartsWith($"Mass is {told} kg; it must be between", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_end_is_told_as_it_is() => Assert.StartsWith("Mass is 0 kg; it must be above 0 and",
        Assert.Throws<ArgumentOutOfRangeException>(() => Guard.Above(0, 0, 1, "kg", "Mass")).Message, StringComparison.Ordinal);
}
