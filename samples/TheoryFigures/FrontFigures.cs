using Samples;
using ScottPlot;
using Staging.Core.Fronts;
using Staging.Core.Gases;
using UnitsNet;

namespace TheoryFigures;

internal static class FrontFigures
{
    private static readonly GasState Air = new()
    {
        Gas = PerfectGas.DryAir,
        Pressure = Pressure.FromPascals(101325),
        Temperature = Temperature.FromKelvins(288.15),
    };

    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        // Powder products at their nominal temperature: 4 g/s into a bore of 18 mm, or let go at 300 kPa.
        DisplacementFront ideal = Steady(0), real = Steady(200);
        ShockTubeFront tube = ShockTubeFront.Between(
            new GasState { Gas = ideal.Products, Pressure = Pressure.FromKilopascals(300), Temperature = ideal.SourceTemperature }, Air);
        Plot plot = Figure.New("Front travel in a bore of 18 mm: the closed forms", "time [ms]", "station [mm]");
        plot.Band(t => real.TravelAt(Ms(t)), 0, 12, 0);
        yield return ("front-travel", plot
            .Curve(t => ideal.TravelAt(Ms(t)).Millimeters, 0, 9, "", 2, dashed: true)
            .Note("4 g/s, no heat loss", 5.2, 330, 2)
            .Curve(t => real.TravelAt(Ms(t)).Millimeters, 0, 12, "", 0)
            .Note("4 g/s, wall 200 W/(m2 K), with its mixing zone", 5.6, 140, 0)
            .Curve(t => tube.ContactSpeed.MetersPerSecond * t, 0, 2.4, "", 1)
            .Note("front of a shock tube, 300 kPa", 2.25, 380, 1)
            .Curve(t => tube.ShockSpeed.MetersPerSecond * t, 0, 1, "", 3)
            .Note("its shock", 0.95, 395, 3)
            .Limits(0, 12, 0, 420));

        yield return ("front-cooling",
            Figure.New("Temperature of the first products on arrival, 4 g/s in 18 mm", "station [mm]", "temperature [K]")
            .Curve(x => real.ArrivalTemperatureAt(Mm(x)).Kelvins, 0, 500, "200 W/(m2 K)", 0, 0.55)
            .Curve(x => Steady(100).ArrivalTemperatureAt(Mm(x)).Kelvins, 0, 500, "100", 2, 0.7)
            .Curve(x => Steady(500).ArrivalTemperatureAt(Mm(x)).Kelvins, 0, 500, "500", 1, 0.3)
            .Limits(0, 500, 0, 2000));
    }

    /// <summary>The mixing zone as a band of half its thickness to either side.</summary>
    private static void Band(this Plot plot, Func<double, Length> front, double from, double to, int colour)
    {
        const int n = 200;
        double[] x = new double[n + 1], low = new double[n + 1], high = new double[n + 1];
        for (int i = 0; i <= n; i++)
        {
            x[i] = from + (to - from) * i / n;
            Length at = front(x[i]);
            double half = 0.5 * FrontMixing.Judged.ThicknessAfter(at, Mm(18)).Millimeters;
            (low[i], high[i]) = (at.Millimeters - half, at.Millimeters + half);
        }

        ScottPlot.Plottables.FillY band = plot.Add.FillY(x, low, high);
        band.FillColor = Curves.Colours[colour].WithAlpha(0.18);
        band.LineWidth = 0;
        band.MarkerSize = 0;
    }

    private static DisplacementFront Steady(double heatTransfer) => new()
    {
        Path = new FrontPath
        {
            Bore = Mm(18),
            Air = Air,
            WallTemperature = Air.Temperature,
            WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(heatTransfer),
        },
        Products = BlackPowderProducts.Nominal.Equivalent(),
        SourceTemperature = BlackPowderProducts.NominalTemperature,
        MassFlow = MassFlow.FromGramsPerSecond(4),
    };

    private static Duration Ms(double t) => Duration.FromMilliseconds(t);

    private static Length Mm(double x) => Length.FromMillimeters(x);
}
