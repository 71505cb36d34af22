using Staging.Core.Fronts;
using Staging.Core.Gases;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Fronts;

/// <summary>Invented fronts: powder products at 1900 K in a bore of 18 mm.</summary>
internal static class TestFronts
{
    public static GasState Air { get; } = new()
    {
        Gas = PerfectGas.DryAir,
        Pressure = Pressure.FromPascals(101325),
        Temperature = Temperature.FromKelvins(288.15),
    };

    public static FrontPath Path(double heatTransfer) => new()
    {
        Bore = Length.FromMillimeters(18),
        Air = Air,
        WallTemperature = Temperature.FromKelvins(288.15),
        WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(heatTransfer),
    };

    public static DisplacementFront Steady(double gramsPerSecond, double heatTransfer) => new()
    {
        Path = Path(heatTransfer),
        Products = Bench.Powder(0.65).Equivalent(),
        SourceTemperature = Temperature.FromKelvins(1900),
        MassFlow = MassFlow.FromGramsPerSecond(gramsPerSecond),
    };

    public static HistoryFront Under(MassFlowHistory history, double heatTransfer) => new()
    {
        Path = Path(heatTransfer),
        Products = Bench.Powder(0.65).Equivalent(),
        SourceTemperature = Temperature.FromKelvins(1900),
        History = history,
    };
}
