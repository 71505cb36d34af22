using System.Globalization;
using Staging.Core.Fronts;
using Staging.Core.Gases;
using Staging.Core.Tests.Hygiene.Sources;
using UnitsNet;

namespace Staging.Core.Tests.Fronts;

/// <summary>The ten lines of the page on fronts, run.</summary>
public class FrontTravelSnippet
{
    [Fact]
    public void The_snippet_says_what_the_page_says()
    {
        GasState air = TestFronts.Air;

        #region front-travel
        var front = new DisplacementFront
        {
            Path = new FrontPath
            {
                Bore = Length.FromMillimeters(18),
                Air = air,
                WallTemperature = air.Temperature,
                WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(200),
            },
            Products = BlackPowderProducts.Nominal.Equivalent(),
            SourceTemperature = BlackPowderProducts.NominalTemperature,
            MassFlow = MassFlow.FromGramsPerSecond(4),
        };
        Length nozzle = Length.FromMillimeters(250);
        Duration arrival = front.ArrivalAt(nozzle);                          // when
        Temperature hot = front.ArrivalTemperatureAt(nozzle);                // how hot
        Energy lost = front.HeatLostBy(arrival);                             // what the wall took
        Length thick = FrontMixing.Judged.ThicknessAfter(nozzle, front.Path.Bore);
        #endregion

        string line = string.Create(
            CultureInfo.InvariantCulture,
            $"{arrival.Milliseconds:F1} ms, {hot.Kelvins:F0} K, {lost.Joules:F1} J, {thick.Millimeters:F0} mm");
        Assert.Equal("7.2 ms, 1189 K, 14.5 J, 56 mm", line);
        SourceFile page = Assert.Single(Repository.Files("docs", "fronts.md"));
        Assert.Contains(line, page.Text, StringComparison.Ordinal);
    }
}
