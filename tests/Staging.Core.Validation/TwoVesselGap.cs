using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Validation;

/// <summary>
/// A gap boiled down to two stirred volumes, invented for comparison with other programs: a chamber whose fragments burn in a half-sine of 15 ms blows into a gap with a
/// vent; pressure breaks the stage away, pushes it 10 mm out of its coupler, and vents through the whole joint from then on. 60 ms.
/// </summary>
/// <remarks>
/// It has its own orifice (<see cref="TwoVesselOrifice"/>) and its own mixing rule (gas constant and ratio of heat capacities, not heat capacities, by mass), neither of which
/// is the library's; integrators, events and gases are. The tail, where pressures differ by less than a thousandth, is stiff: the implicit method takes it.
/// </remarks>
internal sealed class TwoVesselGap
{
    /// <summary>Natural scales: absolute tolerances of (1e-12 kg, 1e-7 J, 1e-12 kg, 1e-7 J, 1e-8, 1e-10 m, 1e-7 m/s) at a tolerance of 1e-8.</summary>
    private static readonly double[] Scales = [1e-4, 10, 1e-4, 10, 1, 1e-2, 10];

    private const double End = 0.060;

    private readonly Integrator<Tsitouras54> stuck, slides, parted;
    private readonly Integrator<Rodas43> coasts;
    private readonly double[] last = new double[7];

    /// <summary>Prepares a run with a tolerance for each phase: the breakaway after 23 us hangs on the first few steps and is worth a finer one.</summary>
    public TwoVesselGap(double stuck, double slides, double parted, double coasts)
    {
        this.stuck = new(Options(stuck), Scales);
        this.slides = new(Options(slides), Scales);
        this.parted = new(Options(parted), Scales);
        this.coasts = new(Options(coasts), Scales.AsSpan(0, 5));
    }

    /// <summary>The run that the benchmark times: every output within 1e-7.</summary>
    public static TwoVesselGap Timed() => new(1e-10, 1e-7, 1e-8, 3e-8);

    public double Breakaway { get; private set; }

    public double Separation { get; private set; }

    public double SeparationSpeed { get; private set; }

    public double SeparationPressure { get; private set; }

    public double ChamberPressureAtBurnout { get; private set; }

    public double GapPressureAtBurnout { get; private set; }

    /// <summary>The state at the end.</summary>
    public ReadOnlySpan<double> Last => last;

    /// <summary>Work of all runs so far.</summary>
    public SolverWork Statistics => stuck.Statistics + slides.Statistics + parted.Statistics + coasts.Statistics;

    /// <summary>Runs from burn-through to the end.</summary>
    public void Run()
    {
        stuck.Restart(0);
        const double chamber = 1e6 * TwoVesselSystem.ChamberVolume, gap = TwoVesselSystem.OutsidePressure * TwoVesselSystem.GapVolume;
        ReadOnlySpan<double> first =
        [
            chamber / (TwoVesselSystem.Hot.R * 2000), chamber / (TwoVesselSystem.Hot.Gamma - 1),
            gap / (TwoVesselSystem.Air.R * TwoVesselSystem.OutsideTemperature), gap / (TwoVesselSystem.Air.Gamma - 1), 0, 0, 0,
        ];
        first.CopyTo(stuck.State);
        var system = new TwoVesselSystem(TwoVesselPhase.Stuck);
        Expect(PhaseEnd.Event, stuck.Run(ref system, TwoVesselSystem.BurnTime));
        Breakaway = stuck.Time;

        HandOver(stuck, slides);
        system = new TwoVesselSystem(TwoVesselPhase.Slides);
        Expect(PhaseEnd.Event, slides.Run(ref system, TwoVesselSystem.BurnTime));
        (Separation, SeparationSpeed, SeparationPressure) = (slides.Time, slides.State[6], system.GapPressure(slides.State));

        slides.State[5] = TwoVesselSystem.Coupler;
        HandOver(slides, parted);
        system = new TwoVesselSystem(TwoVesselPhase.Parted);
        Expect(PhaseEnd.StopTime, parted.Run(ref system, TwoVesselSystem.BurnTime));
        ChamberPressureAtBurnout = (TwoVesselSystem.Hot.Gamma - 1) * parted.State[1] / TwoVesselSystem.ChamberVolume;
        GapPressureAtBurnout = system.GapPressure(parted.State);

        parted.State.CopyTo(last);
        coasts.Restart(parted.Time);
        parted.State[..5].CopyTo(coasts.State);
        system = new TwoVesselSystem(TwoVesselPhase.Coasts);
        Expect(PhaseEnd.StopTime, coasts.Run(ref system, End));
        coasts.State.CopyTo(last);
        last[5] += last[6] * (End - TwoVesselSystem.BurnTime);
    }

    private static void HandOver(Integrator<Tsitouras54> from, Integrator<Tsitouras54> to)
    {
        to.Restart(from.Time);
        from.State.CopyTo(to.State);
    }

    private static void Expect(PhaseEnd expected, PhaseEnd end)
    {
        if (end != expected)
            throw new InvalidOperationException($"A phase ended with {end} instead of {expected}.");
    }

    private static SolverOptions Options(double tolerance) => new()
    {
        RelativeTolerance = tolerance,
        ScaledAbsoluteTolerance = tolerance,
        EventScanParts = 1,
        EventTimeTolerance = Duration.FromSeconds(1e-12),
        MaxSteps = 100_000_000,
    };
}
