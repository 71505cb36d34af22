using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>The booster's jet at the upper nozzle: its limits and its range.</summary>
public class SourceJetTests
{
    private const double Flow = 0.02, Diameter = 0.010, Chamber = 1900;

    private static readonly GapParameters Contact = GapToSi.ToSi(StartingGaps.Bore18mm.InContact(JointTape.PaperTape));

    private static readonly double R = Contact.Products.R;

    [Fact]
    public void At_no_distance_it_is_what_leaves_the_opening()
    {
        var jet = new SourceJet(Contact, -Contact.TubeLength);
        double area = Math.PI / 4 * Diameter * Diameter;
        NozzleStream stream = jet.At(Flow, area, Diameter, Chamber, R, 1);
        Assert.Equal(Flow / area, stream.MassFlux, 1e-12);
        Assert.Equal(Chamber, stream.Temperature, 1e-9);
        Assert.Equal(1, stream.ProductFraction);
        Assert.Equal(Contact.Products.Cp, stream.HeatCapacity, 1e-9);
    }

    [Fact]
    public void An_opening_smaller_than_the_throat_spreads_over_the_throat()
    {
        double d = 0.5 * Contact.Grain.ThroatDiameter, area = Math.PI / 4 * d * d;
        NozzleStream stream = new SourceJet(Contact, -Contact.TubeLength).At(Flow, area, d, Chamber, R, 1);
        Assert.Equal(Flow / (4 * area), stream.MassFlux, 1e-9);
    }

    [Fact]
    public void What_flows_into_the_chamber_is_no_jet() =>
        Assert.Equal(0, new SourceJet(Contact, 0).At(-Flow, 1e-4, Diameter, Chamber, R, 1).MassFlux);

    [Fact]
    public void In_the_tube_half_is_left_after_one_diameter_and_nothing_after_two()
    {
        double Left(double guided)
        {
            GapParameters held = Lowered(1000 * guided);
            var jet = new SourceJet(held, 0);
            return jet.Arrives(Diameter) ? jet.At(1, 1, Diameter, 300, Contact.Air.R, 1).MassFlux : 0;
        }

        Assert.Equal(0.5, Left(Diameter), 1e-12);
        Assert.InRange(Left(1.99 * Diameter), 1e-9, 1e-4);
        Assert.Equal(0, Left(2 * Diameter));
        Assert.Equal(0, Left(12 * Diameter));
    }

    [Theory]
    [InlineData(6)]
    [InlineData(10)]
    [InlineData(12)]
    public void An_ordinary_gap_knows_no_jet(double opening)
    {
        // The judged range of the opening, and a gap of 25 mm: held, sliding, or with the bodies well apart.
        GapParameters p = Lowered(25);
        foreach (double slide in (double[])[0, 0.01, 0.02, 0.5])
        {
            var jet = new SourceJet(p, slide);
            Assert.False(jet.Arrives(1e-3 * opening));
            Assert.False(jet.CoreReaches(1e-3 * opening, Chamber, R));
        }
    }

    [Fact]
    public void In_the_open_the_core_ends_where_that_of_a_free_jet_does()
    {
        double core = Contact.JetCore * Diameter * Math.Sqrt(Contact.Air.R * Contact.OutsideTemperature / (R * Chamber));
        Assert.True(new SourceJet(Contact, 0.999 * core - Contact.TubeLength).CoreReaches(Diameter, Chamber, R));
        Assert.False(new SourceJet(Contact, 1.001 * core - Contact.TubeLength).CoreReaches(Diameter, Chamber, R));
    }

    /// <summary>Beyond the core one share s is left of speed, excess temperature and products alike, besides what fades in the tube.</summary>
    [Fact]
    public void In_the_open_beyond_its_core_one_share_of_everything_is_left()
    {
        double slide = 0.2, guided = Contact.TubeLength + Contact.Engagement, area = Math.PI / 4 * Diameter * Diameter;
        double share = Contact.JetCore * Math.Sqrt(Contact.Air.R * Contact.OutsideTemperature / (R * Chamber)) * Diameter / (Contact.TubeLength + slide);
        double s = guided / (2 * Diameter), left = (1 - s) * (1 - s) * (1 + 2 * s);
        NozzleStream stream = new SourceJet(Contact, slide).At(Flow, area, Diameter, Chamber, R, 0.8);
        Assert.InRange(share, 0.05, 0.5);
        Assert.InRange(left, 0.05, 1);
        Assert.Equal(Flow / area * share * left, stream.MassFlux, 1e-12);
        Assert.Equal(Contact.OutsideTemperature + share * (Chamber - Contact.OutsideTemperature), stream.Temperature, 1e-9);
        Assert.Equal(0.8 * share, stream.ProductFraction, 1e-15);
        Assert.Equal(0.8 * share * Contact.Products.Cp + (1 - 0.8 * share) * Contact.Air.Cp, stream.HeatCapacity, 1e-9);
    }

    [Fact]
    public void A_gap_of_25_mm_heats_its_grain_by_its_vents_alone()
    {
        GapProblem shortGap = Bench.Gap.With(d => d with { Tube = Bench.Tube(25), Vents = [Bench.Hole(Bench.Tube(25), 6, 4)] });
        var course = (LumpedHistory)shortGap.Solve().Course;
        GapParameters p = course.Parameters;
        var y = new double[p.StateCount];
        foreach (double t in (double[])[1e-4, 3e-4, 1e-3, 3e-3, 5e-3])
        {
            course.Track.At(t, y);
            var now = new LumpedView(p, y);
            var vents = new GrainHeating(now.Nozzle, now.Pressure, now.SpeedAtNozzle, p);
            Assert.Equal(vents.Total(300), now.HeatingAt(t).Total(300));
        }
    }

    private static GapParameters Lowered(double millimetres) =>
        GapToSi.ToSi(StartingGaps.Bore18mm.With(d => d with { Tube = d.Tube with { Length = Length.FromMillimeters(millimetres) } }));
}
