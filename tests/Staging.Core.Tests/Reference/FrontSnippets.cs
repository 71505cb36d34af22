using Staging.Core.Fronts;
using Staging.Core.Gases;
using Staging.Core.Tests.Fronts;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes with fronts: shown in the reference, run here.</summary>
public class FrontSnippets
{
    [Fact]
    public void Bounds_of_a_front()
    {
        GasState air = TestFronts.Air;
        FrontPath path = TestFronts.Path(200);
        #region front-bounds
        PerfectGas products = BlackPowderProducts.Nominal.Equivalent();
        var pushed = new HistoryFront // a source that comes and goes
        {
            Path = path,
            History = MassFlowHistory.FromColumns(time_s: [0, 0.002, 0.010, 0.050], massFlow_kgs: [0, 0.006, 0.004, 0]),
            Products = products,
            SourceTemperature = BlackPowderProducts.NominalTemperature,
        };
        GasState driver = new() { Gas = products, Pressure = 4 * air.Pressure, Temperature = BlackPowderProducts.NominalTemperature };
        ShockTubeFront burst = ShockTubeFront.Between(driver, air); // nothing is faster
        Length nozzle = Length.FromMillimeters(250);
        Console.WriteLine($"{burst.ArrivalAt(nozzle)} at the earliest, {pushed.ArrivalAt(nozzle)} as fed");
        #endregion
        Assert.True(burst.ArrivalAt(nozzle) < pushed.ArrivalAt(nozzle));
    }
}
