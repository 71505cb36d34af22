using Samples;
using ScottPlot;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace TheoryFigures;

internal static class HoleFigures
{
    private static readonly GasState Upstream = new()
    {
        Gas = PerfectGas.DryAir,
        Pressure = Pressure.FromBars(2),
        Temperature = Temperature.FromKelvins(288.15)
    };
    private static readonly VentHoles Hole = new()
    {
        Diameter = Length.FromMillimeters(6),
        WallThickness = Length.FromMillimeters(0.5),
        Count = 1
    };

    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("holes-in-series", Figure.New("Equal holes one behind the other: flow over that of one",
            "end pressure over first pressure", "flow over the flow of one hole")
            .Curve(r => Share(ConstantCoefficientLaw.Ideal, 2, r), 0.02, 0.98, "two ideal nozzles", 3, 0.05)
            .Curve(r => Share(SharpEdgedLaw.Perry, 2, r), 0.02, 0.98, "two sharp holes", 0, 0.05)
            .Curve(r => Share(ConstantCoefficientLaw.Ideal, 3, r), 0.02, 0.98, "", 1)
            .Note("three ideal nozzles", 0.08, 0.68, 1)
            .Curve(r => Share(SharpEdgedLaw.Perry, 3, r), 0.02, 0.98, "three sharp holes", 2, 0.05)
            .Curve(_ => Math.Sqrt(0.5), 0, 1, "", 3, dashed: true)
            .Curve(_ => Math.Sqrt(1.0 / 3), 0, 1, "", 3, dashed: true)
            .Note("dashed: the incompressible rule", 0.08, 0.63, 3)
            .Limits(0, 1, 0.55, 0.85));

        OrificePlateIso5167 small = Plate(0.0222 / 0.07391);
        double published = Math.Log10(4 * 0.124431876 / (Math.PI * 0.07391 * 1.85861753095e-5));
        yield return ("orifice-plate", Figure.New("ISO 5167-2 plate, corner tappings, pipe 73.91 mm",
            "Reynolds number of the pipe, power of ten", "discharge coefficient C")
            .Curve(x => Plate(0.75).DischargeCoefficient(Math.Pow(10, x)), 4, 7, "beta 0.75", 1, 0.03)
            .Curve(x => Plate(0.6).DischargeCoefficient(Math.Pow(10, x)), 4, 7, "beta 0.60", 2, 0.3)
            .Curve(x => small.DischargeCoefficient(Math.Pow(10, x)), 3.7, 7, "beta 0.30", 0, 0.75)
            .Points([published], [0.6000085121444034], "", 0)
            .Note("circle: published test value 0.60001", 4.95, 0.587, 0)
            .Limits(3.7, 7, 0.58, 0.67));
    }

    private static OrificePlateIso5167 Plate(double beta) => new()
    {
        PipeDiameter = Length.FromMillimeters(73.91),
        Bore = Length.FromMillimeters(73.91 * beta),
        Tappings = PressureTappings.Corner,
    };

    private static double Share(IDischargeLaw law, int count, double ratio)
    {
        GasState end = Upstream with { Pressure = ratio * Upstream.Pressure };
        var opening = new Opening { Holes = Hole, Law = law };
        return Orifice.InSeries(Upstream, end, [.. Enumerable.Repeat(opening, count)]).MassFlow / Orifice.Flow(Upstream, end, Hole, law).MassFlow;
    }
}
