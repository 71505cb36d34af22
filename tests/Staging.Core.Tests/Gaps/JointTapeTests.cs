using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>A film heated through its thickness: layers against the exact slab, and the slab against its limits.</summary>
public class JointTapeTests
{
    private static readonly Temperature Gas = Temperature.FromKelvins(1900), Air = Temperature.FromKelvins(288);

    [Fact]
    public void A_thermally_thin_film_softens_as_one_lump()
    {
        // Lumped: t = rho c d/h ln((Tg - T0)/(Tg - Ts)); the exact slab is later by d^2/(2 alpha)-like terms, of the order of the ratio stated.
        JointTape metal = JointTape.ThinPlasticFilm with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(5), GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(50) };
        double ratio = metal.DifferenceThroughThickness(Gas, Air);
        Assert.InRange(ratio, 0, 0.01);
        double lumped = 1000 * 1700 * 50e-6 / 50 * Math.Log((1900 - 288.0) / (1900 - 400));
        double exact = metal.TimeToSoften(Gas, Air)!.Value.Seconds;
        Assert.InRange(exact / lumped - 1, 0, ratio);
    }

    [Fact]
    public void A_thin_film_far_cooler_than_the_gas_is_no_lump()
    {
        // Its Biot number of 0.125 says nearly a lump; it softens so early in its heating that one temperature will not do.
        Assert.Equal(0.125, JointTape.ThinPlasticFilm.BiotNumber, 1e-12);
        Assert.InRange(JointTape.ThinPlasticFilm.DifferenceThroughThickness(Gas, Air), 0.5, 1.5);
        double lumped = 1000 * 1700 * 50e-6 / 500 * Math.Log((1900 - 288.0) / (1900 - 400));
        Assert.InRange(JointTape.ThinPlasticFilm.TimeToSoften(Gas, Air)!.Value.Seconds / lumped, 1.15, 2);
    }

    [Theory]
    [InlineData(50, 500)]
    [InlineData(140, 500)]
    [InlineData(140, 3000)]
    public void Eight_layers_let_go_within_half_a_percent_of_the_exact_slab(double micrometres, double h)
    {
        // Second order in the layer: the middle of the last layer leads its face by (d/16)^2/(2 alpha) or so.
        JointTape tape = JointTape.PaperTape with
        {
            Thickness = Length.FromMicrometers(micrometres),
            GasContact = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(h),
        };
        FilmParameters film = FilmToSi.ToSi(tape, Air);
        double[] T = new double[FilmParameters.Layers];
        var slope = new Real[FilmParameters.Layers];
        Array.Fill(T, 288);
        double exact = tape.TimeToSoften(Gas, Air)!.Value.Seconds, dt = 0.2 / (film.LayerRate + film.FirstRate), t = 0;
        double before = 1;
        while (film.StrengthLeft(T) > 0)
        {
            film.Slopes<Real>(T, 1900, slope);
            for (int i = 0; i < T.Length; i++)
                T[i] += dt * slope[i];
            t += dt;
            double left = film.StrengthLeft(T);
            Assert.InRange(left, 0, before);
            before = left;
        }

        Assert.InRange(t / exact, 0.995, 1.005);
    }

    [Fact]
    public void Gas_no_hotter_than_the_softening_temperature_never_softens_it()
    {
        Assert.Null(JointTape.PaperTape.TimeToSoften(Temperature.FromKelvins(550), Air));
        Assert.Null((JointTape.PaperTape with { GasContact = HeatTransferCoefficient.Zero }).TimeToSoften(Gas, Air));
    }

    [Fact]
    public void The_series_of_the_slab_starts_whole_and_ends_as_its_first_term()
    {
        foreach (double biot in (double[])[0.01, 0.5, 3, 100])
        {
            // Before the heat arrives nothing has moved at the far face: erfc(1/(2 sqrt(Fo))) is below 1e-11 at 0.012.
            Assert.Equal(1, HeatedSlab.FarFace(0.012, biot), 1e-9);
            double share = HeatedSlab.FarFace(0.7, biot);
            Assert.Equal(0.7, HeatedSlab.TimeOfFarFace(share, biot), 1e-10);
        }
    }
}
