using Staging.Core.Gases;
using static Staging.Core.Validation.GasCheck;

namespace Staging.Core.Validation.Exact.Gas;

public class AirTransportChecks
{
    private static readonly Provenance Us1976 = new()
    {
        Source = "US Standard Atmosphere 1976, Sutherland viscosity and conductivity of air, evaluated independently",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(288.15, 1.789380278e-5, 0.02532588426)]
    [InlineData(281.65, 1.75784549e-5, 0.02481328257)]
    [InlineData(268.65, 1.693718731e-5, 0.02377819618)]
    [InlineData(216.65, 1.42161308e-5, 0.01950462459)]
    [InlineData(228.65, 1.486793261e-5, 0.02050976167)]
    public void Air(double T, double mu, double k)
    {
        Verify($"viscosity of air at {T} K", "Pa s", mu, AirTransport.Viscosity(T), TenDigits, Us1976);
        Verify($"conductivity of air at {T} K", "W/(m K)", k, AirTransport.Conductivity(T), TenDigits, Us1976);
    }
}
