using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Walls;

/// <summary>
/// What every wall of a gap takes up, at states without flow, so that nothing else leaves: tube, dead end, jackets; the end wall of the resolved tube.
/// </summary>
public class WallHeatTests
{
    private const double Hot = 1600, Coefficient = 180, Emissivity = 0.6, Sigma = 5.670374419e-8;

    private static readonly GapProblem Gap = Bench.Gap.With(d => d with
    {
        Source = d.Fed([0.1, 0.2], [1e-3, 1e-3], [1900, 1900]),
        Vents = [d.Vents[0] with { To = VentTarget.IntoJacket("jacket") }],
        Jackets =
        [
            new Jacket
            {
                Name = "jacket",
                Volume = Volume.FromCubicCentimeters(20),
                WallArea = Area.FromSquareCentimeters(70),
                Openings = [new JacketOpening { Holes = d.Vents[0].Holes, To = VentTarget.Air }],
            },
        ],
        MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Coefficient), Emissivity = Emissivity },
    });

    private static double Flux(double temperature, double cold, double products) =>
        Coefficient * (temperature - cold) + Emissivity * products * Sigma * (Math.Pow(temperature, 4) - Math.Pow(cold, 4));

    /// <summary>One parcel of products and air at 1600 K, all others at the temperature of the walls.</summary>
    [Theory]
    [InlineData("hot", false, 1)]
    [InlineData("hot", false, 0.4)]
    [InlineData("hot", true, 0.7)]
    [InlineData("dead end", false, 1)]
    [InlineData("dead end", true, 0.3)]
    [InlineData("jacket", false, 1)]
    [InlineData("jacket", true, 0.5)]
    public void Lumped_parcels_lose_flux_times_their_wall(string warm, bool stirred, double products)
    {
        GapParameters p = GapToSi.ToSi(Gap, stirred);
        const double reach = 0.1, bore = 0.018;
        double area = Math.PI / 4 * bore * bore, hot = stirred ? p.TubeVolume : area * reach;
        var y = new double[p.StateCount];
        Fill(StateLayout.Hot, hot, warm == "hot");
        Fill(StateLayout.Cold, p.TubeVolume - hot, false);
        Fill(StateLayout.DeadEnd, p.DeadEndVolume, warm == "dead end");
        Fill(p.Jackets[0].At, p.Jackets[0].Volume, warm == "jacket");

        double[] slope = Bench.Slopes(p, y);
        double wall = warm switch
        {
            "hot" => Math.PI * bore * (stirred ? p.LastVent : reach),
            "jacket" => 70e-4,
            _ => Math.PI * bore * p.DeadEndDepth + 4 * 0.3e-6 / bore + area,
        };
        double expected = wall * Flux(Hot, p.OutsideTemperature, products);
        Assert.Equal(expected, slope[StateLayout.EnergyOut], 1e-8 * expected);
        if (warm == "jacket")
            Assert.Equal(-expected, slope[p.Jackets[0].At + 2], 1e-8 * expected);

        void Fill(int at, double volume, bool isWarm)
        {
            double Y = isWarm ? products : 0, T = isWarm ? Hot : p.OutsideTemperature;
            double mass = p.OutsidePressure * volume / ((Y * p.Products.R + (1 - Y) * p.Air.R) * T);
            (y[at], y[at + 1]) = (mass * Y, mass * (1 - Y));
            y[at + 2] = mass * (Y * p.Products.Cv + (1 - Y) * p.Air.Cv) * T;
        }
    }

    /// <summary>A resolved tube full of hot gas at rest: side wall and one end wall, the recess as a piece of tube.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(0.3)]
    public void A_resolved_tube_loses_to_its_side_and_to_its_end(double products)
    {
        GapProblem shut = Gap.With(d => d with { Tube = Bench.Tube(20), Vents = [], Jackets = [], Joint = Bench.Joint(2000) });
        GapParameters p = GapToSi.ToSi(shut);
        var gap = new OneDimensionalGap(p, new GapModel.OneDimensional { Cells = 20 }, 0.02, 0.027);
        double R = products * p.Products.R + (1 - products) * p.Air.R;
        for (int i = 0; i < 20; i++)
            gap.Tube.Fill(i, p.OutsidePressure / (R * Hot), 0, p.OutsidePressure, products);
        gap.Tube.Look();
        const double step = 1e-8, area = Math.PI / 4 * 0.018 * 0.018;
        Assert.True(gap.Step(step, JointPhase.Held, 0));

        // The source step leads by half of it.
        double side = Math.PI * 0.018 * (0.02 + 0.3e-6 / area), flux = Flux(Hot, p.OutsideTemperature, products);
        double expected = 0.5 * step * flux * (side + area);
        Assert.Equal(expected, gap.Left.Energy, 1e-5 * expected);
        Assert.Equal(0, gap.Left.Mass);
    }

    /// <summary>A jacket that fills from hot cells: each pass gives the wall flux times area times time, of the gas that mass and energy say is there.</summary>
    [Fact]
    public void A_resolved_jacket_loses_flux_times_its_wall()
    {
        GapProblem pocket = Gap.With(d => d with { Jackets = [d.Jackets[0] with { Openings = [] }] });
        GapParameters p = GapToSi.ToSi(pocket);
        const int cells = 60;
        var tube = new TubeFlow(cells, 0.25 / cells, p.Products, p.Air) { FirstArea = p.Profile.FirstArea };
        for (int i = 0; i < cells; i++)
            tube.Fill(i, 3e5 / (p.Products.R * 1900), 0, 3e5, 1);
        tube.Look();
        var jackets = new JacketNetwork(p, tube, tube.Cells.First, [new VentCells(p.Vents[0], true, p.LastStirring, 0.25 / cells, cells)]);
        double air = jackets.Totals.Mass, lost = 0, expected = 0;
        const double step = 1e-6;
        for (int s = 0; s < 300; s++)
        {
            double heat = jackets.Pass(step, out _).Energy;
            double mass = jackets.Totals.Mass, products = mass - air;
            double T = (jackets.Totals.Energy + heat) / (products * p.Products.Cv + air * p.Air.Cv);
            lost += heat;
            expected += step * 70e-4 * Flux(T, p.OutsideTemperature, products / mass);
        }

        Assert.True(expected > 0.003 * jackets.Totals.Energy, $"{expected:E3} J of {jackets.Totals.Energy:E3}");
        Assert.InRange(lost / expected, 1 - 1e-3, 1);
    }

    [Fact]
    public void Radiation_cools_the_gap_and_keeps_the_ledgers()
    {
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), new GapModel.WellStirred(), new GapModel.OneDimensional { Cells = 60 }])
        {
            double most = double.PositiveInfinity;
            foreach (double emissivity in (ReadOnlySpan<double>)[0, 0.3, 1])
            {
                GapProblem gap = Gap.With(d => d with
                {
                    Source = Bench.Design.Source,
                    MixingAndHeat = d.MixingAndHeat with { Emissivity = emissivity },
                    Joint = Bench.Joint(2000),
                });
                GapRun run = gap.Solve(model);
                Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
                Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
                double peak = run.PeakGaugePressure.Kilopascals;
                Assert.True(peak < 0.999 * most, $"{peak:F3} of {most:F3} kPa");
                most = peak;
            }
        }
    }
}
