namespace Staging.Core.Tests;

public class AllocatedTests
{
    private static byte[]? kept;

    /// <summary>An array takes a header, its type and its length beside its elements: 24 bytes where a pointer has 8.</summary>
    [Fact]
    public void What_an_action_allocates_is_counted_and_its_preparation_is_not()
    {
        Assert.Equal(1000 + 3 * IntPtr.Size, Allocated.By(() => kept = new byte[1000]));
        Assert.Equal(1000 + 3 * IntPtr.Size, Allocated.By(() =>
        {
            kept = new byte[5000];
            return () => kept = new byte[1000];
        }));
        Assert.NotNull(kept);
    }
}
