using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>Holes at one station [m] as plain SI numbers, and whether it is the last station.</summary>
internal readonly record struct VentParameters(double Station, OrificeSize Size, bool IsLast)
{
    /// <summary>The same holes with a share of their area.</summary>
    public OrificeSize Share(double share) => new(share * Size.Area, Size.Diameter, Size.Thickness);
}
