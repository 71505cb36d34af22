using Staging.Core.Discharge;

namespace Staging.Core.Sizing;

/// <summary>Holes to drill in one wall.</summary>
/// <param name="Wall">The wall: "guide tube", or the name of the jacket whose outer wall it is.</param>
/// <param name="Pattern">The exact holes with the drills next to them; those of a jacket with holes in several places
/// are summed up here.</param>
/// <param name="Drilled">The drill to take, the nearer of the two; null where the series has none near.</param>
public sealed record WallHoles(string Wall, HolePattern Pattern, DrilledHoles? Drilled);
