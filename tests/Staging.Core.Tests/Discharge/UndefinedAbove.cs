using Staging.Core.Discharge;

namespace Staging.Core.Tests.Discharge;

/// <summary>A user's law that knows nothing above some difference of pressure [Pa].</summary>
internal sealed class UndefinedAbove(double difference) : IDischargeLaw
{
    public ValidityRange Validity => SharpEdgedLaw.Perry.Validity;

    public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
        conditions.UpstreamPressure_Pa - conditions.DownstreamPressure_Pa > difference ? double.NaN : SharpEdgedLaw.Perry.MassFlux_kg_per_m2s(conditions);
}
