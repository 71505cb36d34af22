using FsCheck;
using FsCheck.Fluent;
using Staging.Core.Gaps;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Gaps.BurnThrough;
using UnitsNet;
using static Staging.Core.Tests.Properties.QuantityCases;

namespace Staging.Core.Tests.Properties;

/// <summary>End burners of the size of small model rockets, and gaps that they feed.</summary>
public static class EndBurnerCases
{
    private static readonly Gen<GapSource.EndBurner> Motors =
        from diameter in Number(8, 20)
        from burnt in Number(8, 70)
        from ratio in Number(0.18, 0.32)
        from rate in Number(8, 20)
        from exponent in Number(0, 0.5)
        from strength in Number(1.5, 15)
        from plate in Number(0.75, 1.24)
        from cracks in Number(3, 6)
        from share in Number(0, 1)
        from fresh in Gen.OneOf(Gen.Constant(0.0), Number(0, 80))
        from gas in Number(0.45, 0.7)
        select Grains.Whole with
        {
            Products = Bench.Powder(gas),
            GrainDiameter = Length.FromMillimeters(diameter),
            BurntLength = Length.FromMillimeters(burnt),
            NozzleThroatDiameter = Length.FromMillimeters(ratio * diameter),
            Rate = new BurnRateLaw { RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(rate), PressureExponent = exponent, Provenance = Bench.Invented },
            Strength = Pressure.FromMegapascals(strength),
            PlateFactor = plate,
            RadialCracks = cracks,
            SpeedShare = share,
            FreshFaceDelay = Duration.FromMilliseconds(fresh),
        };

    /// <summary>Motors by themselves.</summary>
    public static Arbitrary<GapSource.EndBurner> Motor() => Motors.ToArbitrary();

    /// <summary>Gaps with one or two of them, whose holes may or may not pass a piece.</summary>
    public static Arbitrary<GapProblem> Gap() => (
        from gap in LegalGap.Gap().Generator
        from motor in Motors
        from other in Motors
        from two in Gen.Elements(false, false, true)
        from delay in Number(0, 15)
        let late = other with { Delay = Duration.FromMilliseconds(delay), Products = motor.Products }
        select gap.With(d => d with { Source = two ? new GapSource.Cluster { Motors = [motor, late] } : motor })).ToArbitrary();
}
