namespace Staging.Core.Discharge;

/// <summary>
/// A discharge law that also gives the slopes of its mass flux, for implicit time steps and Newton iterations.
/// </summary>
public interface IDifferentiableDischargeLaw : IDischargeLaw
{
    /// <summary>Mass flux and its derivatives with respect to both pressures, at fixed upstream temperature.</summary>
    /// <param name="conditions">Upstream stagnation state and downstream pressure; the upstream pressure is never the
    /// lower.</param>
    /// <returns>Flux and slopes; finite everywhere, at equal pressures too.</returns>
    FluxDerivatives SlopesAt(in OrificeConditions conditions);
}
