namespace Staging.Core.Discharge;

/// <summary>
/// How much gas an opening passes. The one extension point of this floor: it is called in the inner loop, so it speaks plain SI
/// doubles; it must be thread-safe, keep no state and allocate nothing.
/// </summary>
public interface IDischargeLaw
{
    /// <summary>Mass flow per unit hole area from the upstream to the downstream side.</summary>
    /// <param name="conditions">Upstream stagnation state and downstream pressure; the upstream pressure is never the lower.</param>
    /// <returns>
    /// Mass flux [kg/(m2 s)]: zero at equal pressures, continuous, rising with the upstream and falling (or level) with the
    /// downstream pressure.
    /// </returns>
    double MassFlux_kg_per_m2s(in OrificeConditions conditions);

    /// <summary>What the law is good for; a model that leaves the range gets a finding.</summary>
    ValidityRange Validity { get; }
}
