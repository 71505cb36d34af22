using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>One cell or chamber and the outside: the closed form of a vessel that empties, and what a very large hole must not do.</summary>
public class VesselVentTests
{
    private static readonly GapParameters P = GapToSi.ToSi(Bench.Adiabatic);
    private static readonly OrificeSize Hole = new(5e-6, Math.Sqrt(4 / Math.PI * 5e-6), 0);

    [Theory]
    [InlineData(800e3, 1e-4)]
    [InlineData(130e3, 5e-4)]
    public void A_vessel_empties_as_in_closed_form(double pressure, double time)
    {
        const double volume = 5e-6;
        Parcel parcel = Filled(pressure, volume);
        for (int s = 0; s < 40; s++)
            VesselVent.Pass(ConstantCoefficientLaw.Ideal, Hole, ref parcel, volume, time / 40, P.OutsidePressure, P);
        double scale = volume / (Hole.Area * Math.Sqrt(P.Air.R * 1000));
        double expected = Vessel.PressureAfterVenting(time / scale, pressure / P.OutsidePressure, 1.4, isothermal: false) * P.OutsidePressure;
        Assert.InRange(parcel.Zone(P).PressureVolume.Value / volume / expected - 1, -1e-5, 1e-5);
    }

    [Theory]
    [InlineData(800e3)]
    [InlineData(20e3)]
    public void A_huge_hole_brings_outside_pressure_and_never_passes_it(double pressure)
    {
        const double volume = 1e-8;
        Parcel parcel = Filled(pressure, volume);
        double mass = parcel.Mass, energy = parcel.Energy;
        var huge = new OrificeSize(1e-3, 0.035, 0);
        Passed passed = VesselVent.Pass(ConstantCoefficientLaw.Ideal, huge, ref parcel, volume, 1e-3, P.OutsidePressure, P);
        Assert.InRange(parcel.Zone(P).PressureVolume.Value / volume / P.OutsidePressure - 1, -1e-9, 1e-9);
        Assert.Equal(mass, parcel.Mass + passed.Mass, 1e-12 * mass);
        Assert.Equal(energy, parcel.Energy + passed.Enthalpy, 1e-12 * energy);
    }

    [Fact]
    public void At_outside_pressure_nothing_passes()
    {
        Parcel parcel = Filled(P.OutsidePressure, 1e-6);
        Assert.InRange(VesselVent.Pass(SharpEdgedLaw.Perry, Hole, ref parcel, 1e-6, 1, P.OutsidePressure, P).Mass, -1e-15, 1e-15);
    }

    private static Parcel Filled(double pressure, double volume) =>
        new(0, pressure * volume / (P.Air.R * 1000), pressure * volume / (P.Air.Gamma - 1));
}
