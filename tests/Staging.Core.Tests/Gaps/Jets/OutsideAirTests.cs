using Staging.Core.Discharge;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gaps;

namespace Staging.Core.Tests.Gaps.Jets;

/// <summary>
/// Air that is drawn in brings its enthalpy, not its internal energy: the work of the outside that pushes it warms what fills. Filling a volume V from p1 to
/// p2 takes (p2 - p1) V/(gamma R T0) of air at T0, whatever was in it.
/// </summary>
public class OutsideAirTests
{
    private static readonly GapProblem Gap = Bench.Adiabatic.With(d => d with { Source = d.Fed([0.1, 0.2], [1e-3, 1e-3], [1900, 1900]) });

    /// <summary>At every state below outside pressure: hole, leak or joint.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_lumped_gap_that_draws_air_in_takes_its_enthalpy(bool stirred)
    {
        GapParameters p = GapToSi.ToSi(Gap, stirred);
        var y = new double[p.StateCount];
        GapToSi.FirstState(p, y);
        foreach (int energy in (ReadOnlySpan<int>)[StateLayout.Hot + 2, StateLayout.Cold + 2, StateLayout.DeadEnd + 2])
            y[energy] *= 0.8;
        double[] slope = Bench.Slopes(p, y);
        Assert.InRange(slope[StateLayout.MassOut], double.NegativeInfinity, -1e-4);
        Assert.Equal(3.5 * p.Air.R * p.OutsideTemperature, slope[StateLayout.EnergyOut] / slope[StateLayout.MassOut], 1e-6);
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.9)]
    public void A_resolved_cell_fills_as_in_closed_form(double share)
    {
        GapParameters p = GapToSi.ToSi(Gap);
        const double volume = 1e-6, hot = 700;
        double first = share * p.OutsidePressure;
        var parcel = new Parcel(0, first * volume / (p.Air.R * hot), first * volume / (p.Air.Gamma - 1));
        Passed passed = VesselVent.Pass(ConstantCoefficientLaw.Ideal, new OrificeSize(1e-4, 0.0113, 0), ref parcel, volume, 0.1, p.OutsidePressure, p);
        double expected = (p.OutsidePressure - first) * volume / (1.4 * p.Air.R * p.OutsideTemperature);
        Assert.Equal(-expected, passed.Mass, 1e-6 * expected);
    }

    /// <summary>A jacket below outside pressure, by substeps and by an implicit step.</summary>
    [Theory]
    [InlineData(1_000_000)]
    [InlineData(0)]
    public void A_resolved_jacket_fills_as_in_closed_form(int substeps)
    {
        GapParameters p = GapToSi.ToSi(Gap);
        const double volume = 1e-6;
        double first = 0.6 * p.OutsidePressure;
        var network = new VesselNetwork(p, 1, [new HoleLink(0, -1, new OrificeSize(1e-6, 0.00113, 0), p.OutsidePressure)], substeps);
        network.Volumes[0] = volume;
        network.Gas[0] = new Parcel(0, first * volume / (p.Air.R * 400), first * volume / (p.Air.Gamma - 1));
        for (int i = 0; i < 100; i++)
            network.Pass(1e-4);
        double expected = (p.OutsidePressure - first) * volume / (1.4 * p.Air.R * p.OutsideTemperature);
        Assert.Equal(first * volume / (p.Air.R * 400) + expected, network.Gas[0].Mass, 1e-4 * expected);
    }
}
