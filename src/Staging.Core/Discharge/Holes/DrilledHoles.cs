namespace Staging.Core.Discharge;

/// <summary>A set of equal holes as a drill makes them.</summary>
/// <param name="Drill">The drill.</param>
/// <param name="Holes">The holes.</param>
/// <param name="AreaError">Total area over the wanted area, less one [-]: -0.1 is a tenth too little.</param>
public sealed record DrilledHoles(DrillSize Drill, VentHoles Holes, double AreaError);
