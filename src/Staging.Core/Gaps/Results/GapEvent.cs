using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Something that happened in a gap run.</summary>
/// <param name="Kind">What.</param>
/// <param name="Time">When, on the clock that starts at burn-through.</param>
public sealed record GapEvent(GapEventKind Kind, Duration Time);
