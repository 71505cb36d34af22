using Staging.Core.Discharge;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.Jets;

/// <summary>
/// What a stream that crossed an opening as a free jet exchanges with the dead end, at single states: it stirs by the share s of its speed that is left, and of
/// the mass that arrives s is its own and the rest is outside air, so that its excess temperature falls to s as well.
/// </summary>
public class JetExchangeTests
{
    private const double Hot = 1500;

    /// <summary>Holes as large as 11 bores of open tube, twice the core of a jet as dense as the air.</summary>
    private static readonly GapProblem Open = Bench.Gap.With(d => d with
    {
        Source = d.Fed([0, 0.2], [10, 10], [1900, 1900]),
        Vents = [Side(d.Tube)],
        MixingAndHeat = d.MixingAndHeat with { WallHeatTransfer = HeatTransferCoefficient.Zero, Emissivity = 0 },
    });

    /// <summary>Air streams past products at rest while the tube fills: nothing leaves the dead end but what is exchanged.</summary>
    [Fact]
    public void A_lumped_jet_stirs_by_the_share_of_its_speed_that_is_left()
    {
        GapParameters p = GapToSi.ToSi(Open, stirred: true);
        double pressure = 1.5 * p.OutsidePressure;
        double[] y = State(p, pressure, (0, p.OutsideTemperature), (1, Hot)), slope = Bench.Slopes(p, y, feedPiece: 0);
        double exchanged = p.DeadEndExchange * 0.5 * Stirring(p, y), density = pressure / (p.Products.R * Hot);
        Assert.Equal(-exchanged * density, slope[StateLayout.DeadEnd], 1e-9 * exchanged * density);
    }

    /// <summary>Hot products stream past air at rest while the tube empties: nothing enters the dead end but what is exchanged.</summary>
    [Fact]
    public void A_lumped_jet_brings_its_own_gas_by_its_share_and_outside_air_for_the_rest()
    {
        GapParameters p = GapToSi.ToSi(Open, stirred: true);
        double pressure = 1.5 * p.OutsidePressure;
        double[] y = State(p, pressure, (1, Hot), (0, p.OutsideTemperature)), slope = Bench.Slopes(p, y);
        double light = pressure / (p.Products.R * Hot), air = pressure / (p.Air.R * p.OutsideTemperature);
        double share = 0.5 * Math.Sqrt(light / air), exchanged = p.DeadEndExchange * share * Stirring(p, y);
        double own = slope[StateLayout.DeadEnd], outside = (exchanged - own / light) * air;
        Assert.InRange(share, 0.1, 0.4);
        Assert.Equal(share, own / (own + outside), 1e-9);
    }

    /// <summary>Where stream and pocket hold one hot gas, what an exchange changes is what the jet brings along: the same shares, and the air at its enthalpy.</summary>
    [Fact]
    public void A_resolved_jet_brings_the_same()
    {
        GapParameters p = GapToSi.ToSi(Open);
        double light = p.OutsidePressure / (p.Products.R * Hot), air = p.OutsidePressure / (p.Air.R * p.OutsideTemperature);
        (GapTotals left, GapTotals change, double products, double stirred) = Exchange(p, 1, Hot);
        double share = 0.5 * Math.Sqrt(light / air), exchanged = p.DeadEndExchange * share * stirred;
        double brought = change.Mass - products, own = (exchanged - brought / air) * light;
        Assert.Equal(share, own / (own + brought), 1e-9);
        Assert.Equal(-brought / air * light, products, 1e-9 * brought);
        double enthalpy = brought * p.Air.Gamma / (p.Air.Gamma - 1) * p.Air.R * p.OutsideTemperature + products * p.Products.Cp * Hot;
        Assert.Equal(enthalpy, change.Energy, 1e-9 * brought * p.Products.Cp * Hot);
        Assert.Equal(-change.Mass, left.Mass, 1e-9 * brought);
        Assert.Equal(-change.Energy, left.Energy, 1e-9 * brought * p.Products.Cp * Hot);
    }

    /// <summary>Outside air that a jet mixes into outside air changes nothing.</summary>
    [Fact]
    public void A_resolved_jet_of_outside_air_changes_nothing()
    {
        GapParameters p = GapToSi.ToSi(Open);
        (_, GapTotals change, double products, double stirred) = Exchange(p, 0, p.OutsideTemperature);
        double energy = stirred * p.OutsidePressure / (p.Air.Gamma - 1);
        Assert.Equal(0, products);
        Assert.Equal(0, change.Energy, 1e-9 * energy);
    }

    /// <summary>Lets a resolved tube of one gas exchange once; returns what left, what mass and energy of the tube gained, the products among it and the stirring.</summary>
    private static (GapTotals Left, GapTotals Change, double Products, double Stirred) Exchange(GapParameters p, double products, double temperature)
    {
        const int cells = 125;
        const double dx = 0.25 / cells, flow = 0.05, time = 1e-6;
        var tube = new TubeFlow(cells, dx, p.Products, p.Air) { FirstArea = p.Profile.FirstArea };
        double R = products * p.Products.R + (1 - products) * p.Air.R;
        for (int i = 0; i < cells; i++)
            tube.Fill(i, p.OutsidePressure / (R * temperature), 0, p.OutsidePressure, products);
        tube.Look();
        var mixing = new DeadEndMixing(p, tube, 0.25, cells - 1, 0.027, [new VentCells(p.Vents[0], true, p.LastStirring, dx, cells)]);
        (double mass, double of, double energy) = Sums();
        GapTotals left = mixing.Stir(tube.Cells.First, flow, time);
        (double massAfter, double ofAfter, double energyAfter) = Sums();
        return (left, new GapTotals(massAfter - mass, energyAfter - energy), ofAfter - of, flow * time);

        (double Mass, double Products, double Energy) Sums()
        {
            double volume = p.Profile.FirstArea * dx;
            TubeArrays a = tube.Cells;
            Range all = a.First..a.End;
            return (volume * a.Density[all].Sum(), volume * a.Products[all].Sum(), volume * a.Energy[all].Sum());
        }
    }

    /// <summary>Volume that leaves through the vents a second, times the share of its stirring at the nozzle plane [m3/s].</summary>
    private static double Stirring(GapParameters p, double[] y) =>
        p.Vents.Sum(vent => vent.Stirring * new GapState<Real>(p, new(y)).FlowOf(vent, p.Outside, p.OutsidePressure).StreamVolume);

    /// <summary>A state of the stirred model at one pressure: products [-] and temperature [K] of the stream and of the dead end.</summary>
    private static double[] State(GapParameters p, double pressure, (double Products, double Temperature) stream, (double Products, double Temperature) deadEnd)
    {
        var y = new double[p.StateCount];
        Fill(StateLayout.Hot, p.TubeVolume, stream);
        Fill(StateLayout.DeadEnd, p.DeadEndVolume, deadEnd);
        return y;

        void Fill(int at, double volume, (double Products, double Temperature) gas)
        {
            (double Y, double T) = gas;
            double mass = pressure * volume / ((Y * p.Products.R + (1 - Y) * p.Air.R) * T);
            (y[at], y[at + 1], y[at + 2]) = (mass * Y, mass * (1 - Y), mass * (Y * p.Products.Cv + (1 - Y) * p.Air.Cv) * T);
        }
    }

    private static Vent Side(GuideTube tube)
    {
        double bore = tube.Bore.Meters, area = 11 * Math.PI * bore * bore;
        return new Vent
        {
            Station = tube.Length - Length.FromMillimeters(100),
            Holes = new VentHoles { Diameter = Length.FromMeters(Math.Sqrt(area / (Math.PI / 4 * 200))), WallThickness = Length.FromMillimeters(0.5), Count = 200 },
            AxialLength = Length.FromMillimeters(200),
        };
    }
}
