namespace Staging.Core.Plans.Forms;

/// <summary>The key that tells the cases of a union apart.</summary>
internal static class KindKey
{
    /// <summary>The key.</summary>
    public const string Name = "kind";
}
