using System.Runtime.CompilerServices;
using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Validation;

/// <summary>What holds the stage of <see cref="TwoVesselGap"/>.</summary>
internal enum TwoVesselPhase
{
    Stuck,
    Slides,
    Parted,

    /// <summary>Parted and burnt out: the stage coasts, and only the gas is left to integrate.</summary>
    Coasts,
}

/// <summary>Right-hand side and events of <see cref="TwoVesselGap"/>: masses and energies of chamber and gap, share of hot gas in the gap, travel and speed.</summary>
internal readonly struct TwoVesselSystem(TwoVesselPhase phase) : IOdeSystem
{
    public const double ChamberVolume = 7e-6, GapVolume = 70e-6, OutsidePressure = 101_325, OutsideTemperature = 288;
    public const double StageArea = 2.75e-4, Friction = 3, Coupler = 0.010, StageMass = 0.04;
    public const double BurnTime = 0.015, BurnMass = 0.2e-3, FlameTemperature = 2100;

    public static readonly GasConstants Hot = new(240, 1.25), Air = new(287.05287, 1.4);

    private const double GammaHot = 1.25, GammaAir = 1.4, OpeningArea = 0.80 * Math.PI / 4 * 8e-3 * 8e-3, VentCoefficient = 0.65, VentArea = 31.7e-6;
    private static readonly double OutsideEnthalpy = Air.Cp * OutsideTemperature;
    private static readonly double OutsideScale = OutsidePressure * OutsidePressure / (Air.R * OutsideTemperature * (GammaAir - 1));
    private static readonly double ChokedOpening = TwoVesselOrifice.Square(0, GammaHot), CriticalRatio = IsentropicFlow.CriticalPressureRatio(GammaHot);
    private static readonly double FlameEnthalpy = Hot.Cp * FlameTemperature;

    private readonly double vent = VentCoefficient * (phase >= TwoVesselPhase.Parted ? VentArea + StageArea : VentArea);

    public int Dimension => phase == TwoVesselPhase.Coasts ? 5 : 7;

    public int EventCount => phase < TwoVesselPhase.Parted ? 1 : 0;

    public EventRule Rule(int index) => new(Crossing.Rising, true);

    /// <summary>Pressure in the gap [Pa].</summary>
    public double GapPressure(ReadOnlySpan<double> y) =>
        (GammaAir - 1 - (GammaAir - GammaHot) * y[4]) * y[3] / (GapVolume + StageArea * (phase >= TwoVesselPhase.Parted ? Coupler : y[5]));

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) =>
        values[0] = phase == TwoVesselPhase.Stuck ? GapPressure(y) - OutsidePressure - Friction / StageArea : y[5] - Coupler;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        bool moves = phase != TwoVesselPhase.Coasts;
        double v = moves ? y[6] : 0, Y = y[4], U2 = y[3], m2 = y[2], U1 = y[1], m1 = y[0];
        double perV2 = phase >= TwoVesselPhase.Parted ? 1 / (GapVolume + StageArea * Coupler) : 1 / (GapVolume + StageArea * y[5]);
        double gamma2 = GammaAir - (GammaAir - GammaHot) * Y, perM2 = 1 / m2;
        double p1 = (GammaHot - 1) / ChamberVolume * U1, p2 = (gamma2 - 1) * (U2 * perV2);
        double h2 = gamma2 * U2 * perM2, scale2 = m2 * U2 * (perV2 * perV2);

        double m12, e12, mv, ev;
        if (p1 >= p2)
        {
            double r = p2 / p1, F = r <= CriticalRatio ? ChokedOpening : TwoVesselOrifice.Subsonic(r, GammaHot, 1 / GammaHot);
            m12 = OpeningArea / ChamberVolume * Math.Sqrt(m1 * U1 * F);
            e12 = m12 * (GammaHot * U1 / m1);
        }
        else
        {
            m12 = -OpeningArea * Math.Sqrt(scale2 * TwoVesselOrifice.Square(p1 / p2, gamma2));
            e12 = m12 * h2;
        }

        if (p2 >= OutsidePressure)
        {
            mv = vent * Math.Sqrt(scale2 * TwoVesselOrifice.Square(OutsidePressure / p2, gamma2));
            ev = mv * h2;
        }
        else
        {
            mv = -vent * Math.Sqrt(OutsideScale * TwoVesselOrifice.Square(p2 / OutsidePressure, GammaAir));
            ev = mv * OutsideEnthalpy;
        }

        double ms = moves ? BurnMass * Math.PI / (2 * BurnTime) * HalfSine(t / BurnTime) : 0;
        if (moves)
        {
            dydt[6] = phase == TwoVesselPhase.Slides ? ((p2 - OutsidePressure) * StageArea - Friction) / StageMass : 0;
            dydt[5] = phase == TwoVesselPhase.Stuck ? 0 : v;
        }

        dydt[4] = ((m12 > 0 ? m12 * (1 - Y) : 0) + (mv < 0 ? mv * Y : 0)) * perM2;
        dydt[3] = e12 - ev - (phase == TwoVesselPhase.Slides ? p2 * StageArea * v : 0);
        dydt[2] = m12 - mv;
        dydt[1] = ms * FlameEnthalpy - e12;
        dydt[0] = ms - m12;
    }

    /// <summary>sin(pi u) for u from 0 to 1, as the series of cos(pi (u - 1/2)) to the twentieth power, which leaves round-off.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double HalfSine(double u)
    {
        double z = Math.PI * (u - 0.5), w = z * z, w2 = w * w, w4 = w2 * w2;
        double a = Fma(w2, Fma(w, -1.0 / 720, 1.0 / 24), Fma(w, -1.0 / 2, 1));
        double b = Fma(w2, Fma(w, -1.0 / 87_178_291_200, 1.0 / 479_001_600), Fma(w, -1.0 / 3_628_800, 1.0 / 40_320));
        double c = Fma(w2, 1.0 / 2_432_902_008_176_640_000, Fma(w, -1.0 / 6_402_373_705_728_000, 1.0 / 20_922_789_888_000));
        return Fma(w4, Fma(w4, c, b), a);
    }

    private static double Fma(double a, double b, double c) => Math.FusedMultiplyAdd(a, b, c);
}
