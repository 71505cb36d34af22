namespace Staging.Core.Campaign.Drawing;

/// <summary>Where the numbers of a campaign come from: nowhere.</summary>
internal static class Invented
{
    public static Provenance Here { get; } = new() { Source = "Drawn at random by the campaign", How = Evidence.Invented };
}
