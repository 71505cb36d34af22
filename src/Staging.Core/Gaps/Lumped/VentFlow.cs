namespace Staging.Core.Gaps;

/// <summary>
/// Flow through one vent: mass from the hot and the cold parcel [kg/s], negative into them, and the volume of both at
/// the gap pressure [m3/s].
/// </summary>
internal readonly record struct VentFlow(double Hot, double Cold, double Volume);
