using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>The estimate of an end burner, and the rules for one in a gap.</summary>
public class EndBurnerTests
{
    [Fact]
    public void The_numbers_of_an_estimate_belong_together()
    {
        GapSource.EndBurner motor = Grains.Whole;
        BurnThroughEstimate e = motor.BurnThrough();
        double h = e.WebThickness.Meters, mean = h - 0.006 * 0.006 / (4 * 0.045);
        Assert.Equal(1700 * Math.PI * 36e-6 * mean, e.PieceMass.Kilograms, 1e-12);
        Assert.Equal(4e6, (e.ChamberPressure.Pascals - 101325) * 36e-6 / (h * h), 1);
        Assert.Equal(6, e.PieceSize.Millimeters, 1e-9);
        Assert.Equal(Math.PI * 36e-6 + mean * (2 * Math.PI * 0.006 + 2 * 4 * 0.006), e.FreshFaces, 1e-15);
        Assert.Equal(0.006 / e.SlowSpeed.MetersPerSecond, e.OpeningTime.Seconds, 1e-15);
        Assert.Equal(Mass.Zero, e.RingMass);
        Assert.Equal(12, e.OpeningDiameter.Millimeters, 1e-12);
    }

    [Fact]
    public void What_breaks_out_and_what_is_left_are_the_web()
    {
        // Plane minus sphere over the whole grain. The cap is cut from a dome taken as a parabola: its share that a sphere has more is (s/Rc)^2/4 of the dome.
        BurnThroughEstimate e = (Grains.Capped with { Strength = Pressure.FromMegapascals(6) }).BurnThrough();
        double R = 0.006, Rc = 0.012, plane = Rc + e.Rupture.Axis;
        double whole = 1700 * (Math.PI * R * R * plane - ChamberBalance.Volume(Rc, R)), cap = e.Rupture.Radius;
        double dome = 1700 * Math.PI * Math.Pow(cap, 4) / (4 * Rc);
        Assert.NotNull(e.Ring);
        Assert.InRange(whole - (e.PieceMass + e.RingMass).Kilograms, 0, dome * cap * cap / (4 * Rc * Rc));
    }

    [Fact]
    public void A_motor_much_too_open_for_its_face_breaks_no_web()
    {
        GapSource.EndBurner open = Grains.Whole with { NozzleThroatDiameter = Length.FromMillimeters(30) };
        Assert.Contains("hardly exceeds", Assert.Throws<InvalidModelException>(() => open.BurnThrough()).Message, StringComparison.Ordinal);
        Assert.Contains(Grains.Of(open).Check(), f => f.Code == "GAP005" && f.Path == "Source");
    }

    [Fact]
    public void A_motor_much_too_closed_is_refused()
    {
        GapSource.EndBurner shut = Grains.Whole with { NozzleThroatDiameter = Length.FromMillimeters(0.4) };
        Assert.Contains(Grains.Of(shut).Check(), f => f.Code == "GAP032" && f.Path == "Source");
        Assert.Throws<InvalidModelException>(() => Grains.Of(shut).Solve());
    }

    [Fact]
    public void A_web_too_soft_to_be_a_plate_is_pointed_out_with_its_place_in_a_cluster()
    {
        GapSource.EndBurner soft = Grains.Whole with { Strength = Pressure.FromMegapascals(0.3) };
        Assert.Contains(Grains.Of(soft).Check(), f => f.Code == "GAP033" && f.Path == "Source.Strength");
        Assert.Contains(Grains.Of(new GapSource.Cluster { Motors = [Grains.Whole, soft] }).Check(), f => f.Code == "GAP033" && f.Path == "Source.Motors[1].Strength");
        Assert.DoesNotContain(Grains.Held.Check(), f => f.Code == "GAP033");
    }

    [Fact]
    public void A_grain_wider_than_the_bore_is_noted()
    {
        Assert.Contains(Grains.Of(Grains.Whole with { GrainDiameter = Length.FromMillimeters(20) }).Check(), f => f.Code == "GAP008" && f.Path == "Source.GrainDiameter");
        Assert.DoesNotContain(Grains.Held.Check(), f => f.Code == "GAP008");
    }

    [Fact]
    public void Products_that_are_no_gas_are_a_finding_and_not_a_failure()
    {
        DustyGas dust = Bench.Powder(0.2) with
        {
            Gas = PerfectGas.FromMolarMass("heavy gas", MolarMass.FromGramsPerMole(60), 1.21, Bench.Invented),
            ParticleHeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(5000),
        };
        ModelFinding finding = Assert.Single(Grains.Of(Grains.Whole with { Products = dust }).Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal("GAS003", finding.Code);
    }

    [Fact]
    public void High_up_and_deep_down_a_gap_is_solved_all_the_same()
    {
        foreach (double outside in (double[])[500, 250e3])
        {
            GapProblem gap = Grains.Held with { Surroundings = Grains.Held.Surroundings with { Pressure = Pressure.FromPascals(outside) } };
            Assert.IsNotType<GapOutcome.NotSolved>(gap.Solve().Outcome);
        }
    }

    [Fact]
    public void An_exponent_near_one_is_refused_and_says_why()
    {
        BurnRateLaw steep = BurnRateLaw.Shidlovskiy with { PressureExponent = 0.9 }, steeper = steep with { PressureExponent = 0.91 };
        Assert.Equal(steep, (Grains.Whole with { Rate = steep }).Rate);
        Assert.Contains("Rate.PressureExponent", Assert.Throws<ArgumentOutOfRangeException>(() => Grains.Whole with { Rate = steeper }).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_estimate_tells_itself_in_words()
    {
        string whole = Grains.Whole.BurnThrough().ToString(), cap = Grains.Capped.BurnThrough().ToString();
        Assert.Contains("The whole web breaks at", whole, StringComparison.Ordinal);
        Assert.DoesNotContain("ring", whole, StringComparison.Ordinal);
        Assert.Equal(3, whole.Split('\n').Length);
        Assert.Equal(Grains.Capped.BurnThrough().Ring is not null, cap.Contains("stay as a ring", StringComparison.Ordinal));
    }
}
