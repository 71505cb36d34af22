using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.OneDimensional;

/// <summary>The gap of <see cref="Bench"/> behind an invented booster known by its grain; its joint holds.</summary>
internal static class ThrownGaps
{
    public static GapSource.EndBurner Motor { get; } = new()
    {
        Products = Bench.Powder(0.65),
        FlameTemperature = Temperature.FromKelvins(1900),
        GrainDiameter = Length.FromMillimeters(12),
        BurntLength = Length.FromMillimeters(45),
        NozzleThroatDiameter = Length.FromMillimeters(3),
        OpeningCoefficient = 0.8,
        Density = Density.FromKilogramsPerCubicMeter(1700),
        Rate = Rate(12, 0.24),
        Strength = Pressure.FromMegapascals(5),
        FreshFaceDelay = Duration.FromMilliseconds(12),
        Provenance = Bench.Invented,
    };

    public static GapProblem Gap { get; } = Bench.Gap.With(d => d with { Source = Motor, Joint = Bench.Joint(2000) }) with
    { Horizon = Duration.FromMilliseconds(60) };

    public static BurnRateLaw Rate(double millimetres, double exponent) =>
        new() { RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(millimetres), PressureExponent = exponent, Provenance = Bench.Invented };

    /// <summary>The gap with a changed motor.</summary>
    public static GapProblem With(Func<GapSource.EndBurner, GapSource.EndBurner> change) => Gap.With(d => d with { Source = change(Motor) });

    /// <summary>The gap with pieces of a stated speed.</summary>
    public static GapProblem At(double metresPerSecond) => With(m => m with { PieceSpeed = Speed.FromMetersPerSecond(metresPerSecond) });

    /// <summary>So strong a web that a small cap breaks out of it and the rest stays as a ring.</summary>
    public static GapSource.EndBurner Strong { get; } = Motor with { Strength = Pressure.FromMegapascals(100) };

    public static void Closes(this GapRun run)
    {
        Assert.IsNotType<GapOutcome.NotSolved>(run.Outcome);
        Assert.InRange(run.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(run.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }
}
