using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Discharge;

internal static class DischargeTestGas
{
    public static GasState Air(double p, double T) => new()
    {
        Gas = PerfectGas.DryAir,
        Pressure = Pressure.FromPascals(p),
        Temperature = Temperature.FromKelvins(T),
    };
}
