using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>
/// How much gas an opening passes. The one extension point of this namespace: it is called in the inner loop, so it
/// uses plain SI doubles; it must be thread-safe, keep no state and allocate nothing.
/// </summary>
public interface IDischargeLaw
{
    /// <summary>Mass flow per unit hole area from the upstream to the downstream side.</summary>
    /// <param name="conditions">Upstream stagnation state and downstream pressure; the upstream pressure is never the
    /// lower.</param>
    /// <returns>
    /// Mass flux [kg/(m2 s)]: zero at equal pressures, continuous, rising with the upstream and falling (or level) with
    /// the downstream pressure.
    /// </returns>
    double MassFlux_kg_per_m2s(in OrificeConditions conditions);

    /// <summary>
    /// Mass flux and its derivatives with respect to both pressures, at fixed upstream temperature, for implicit
    /// solvers. Unless a law gives them in closed form: one-sided differences over a millionth of the upstream
    /// pressure.
    /// </summary>
    /// <param name="conditions">Upstream stagnation state and downstream pressure; the upstream pressure is never the
    /// lower.</param>
    /// <returns>
    /// Flux [kg/(m2 s)], its derivative with respect to the upstream pressure [kg/(m2 s Pa) = s/m], not negative, and
    /// with respect to the downstream pressure [s/m], not positive; finite everywhere.
    /// </returns>
    (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        const double share = 1e-6;
        double step = share * conditions.UpstreamPressure_Pa, flux = MassFlux_kg_per_m2s(conditions);
        double higher = MassFlux_kg_per_m2s(conditions with { UpstreamPressure_Pa = conditions.UpstreamPressure_Pa + step });
        double down = conditions.DownstreamPressure_Pa < step ? step : -step;
        double other = MassFlux_kg_per_m2s(conditions with { DownstreamPressure_Pa = conditions.DownstreamPressure_Pa + down });
        return (flux, (higher - flux) / step, (other - flux) / down);
    }

    /// <summary>The range in which the law is valid; a model outside it gets a finding.</summary>
    ValidityRange Validity { get; }

    /// <summary>
    /// Greatest wall thickness over hole diameter [-] that the law accepts: an evaluation beyond it throws,
    /// whereas leaving <see cref="Validity"/> only gives a finding. No limit unless a law overrides it.
    /// </summary>
    double ThicknessToDiameterLimit => double.PositiveInfinity;

    /// <summary>
    /// Downstream over upstream pressure at which the jet becomes sonic; that of an ideal nozzle unless a law
    /// overrides it.
    /// </summary>
    /// <param name="heatCapacityRatio">Ratio of heat capacities gamma [-], 1.01 to 5/3.</param>
    /// <returns>The ratio [-].</returns>
    double CriticalPressureRatio(double heatCapacityRatio) => IsentropicFlow.CriticalPressureRatio(heatCapacityRatio);

    /// <summary>
    /// Whether the flow is independent of the downstream pressure at and below the critical ratio; true unless a law
    /// overrides it.
    /// </summary>
    /// <param name="thicknessToDiameter">Wall thickness over hole diameter [-].</param>
    /// <returns>True when the flow levels off.</returns>
    bool LevelsOffWhenChoked(double thicknessToDiameter) => true;
}
