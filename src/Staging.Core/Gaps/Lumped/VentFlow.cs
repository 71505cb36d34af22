using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Flow through one vent; negative inwards.</summary>
/// <param name="Hot">Mass from the hot parcel [kg/s].</param>
/// <param name="Cold">Mass from the cold parcel [kg/s].</param>
/// <param name="Fire">Mass from the gas before the nozzle, in which pieces burn [kg/s].</param>
/// <param name="StreamVolume">Volume of the first two at the gap pressure [m3/s].</param>
/// <param name="FireVolume">Volume of the last [m3/s].</param>
internal readonly record struct VentFlow<T>(T Hot, T Cold, T Fire, T StreamVolume, T FireVolume)
    where T : struct, IReal<T>;
