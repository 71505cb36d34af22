using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>The inputs of ignition, grain and closures, each as a factor on its nominal value.</summary>
internal static class IgnitionInputs
{
    /// <summary>Inputs by name: the value in a design, and how one is put into a problem.</summary>
    private static readonly ImmutableArray<(Func<GapDesign, double> Value, Func<Distribution, StudyInput<GapProblem>> Of)> All =
    [
        (d => d.Grain.Conductivity.WattsPerMeterKelvin, GapInputs.Conductivity),
        (d => d.Grain.Density.KilogramsPerCubicMeter, s => GapInputs.Grain("grain.density", "kg/m3", s,
            (g, v) => g with { Density = Density.FromKilogramsPerCubicMeter(v) })),
        (d => d.Grain.HeatCapacity.JoulesPerKilogramKelvin, s => GapInputs.Grain("grain.heat-capacity", "J/(kg K)", s,
            (g, v) => g with { HeatCapacity = SpecificEntropy.FromJoulesPerKilogramKelvin(v) })),
        (d => d.Grain.IgnitionTemperature.Kelvins, GapInputs.IgnitionTemperature),
        (d => d.Grain.InitialTemperature.Kelvins, s => GapInputs.Grain("grain.initial-temperature", "K", s,
            (g, v) => g with { InitialTemperature = Temperature.FromKelvins(v) })),
        (d => d.Grain.NozzleThroatDiameter.Meters, s => GapInputs.Grain("grain.throat", "m", s,
            (g, v) => g with { NozzleThroatDiameter = Length.FromMeters(v) })),
        (d => d.Grain.RecessVolume.CubicMeters, s => GapInputs.Grain("grain.recess", "m3", s,
            (g, v) => g with { RecessVolume = Volume.FromCubicMeters(v) })),
        (d => d.MixingAndHeat.ParticleEfficiency, GapInputs.ParticleEfficiency),
        (d => d.MixingAndHeat.Emissivity, GapInputs.Emissivity),
        (d => d.MixingAndHeat.DeadEndExchange, GapInputs.DeadEndExchange),
        (d => d.MixingAndHeat.StirringReachInBores, GapInputs.StirringReach),
        (d => d.MixingAndHeat.FrontThicknessInBores, GapInputs.FrontThickness),
        (d => d.MixingAndHeat.WallHeatTransfer.WattsPerSquareMeterKelvin, GapInputs.WallHeatTransfer),
    ];

    /// <summary>The study of ln(time to ignition) over those inputs that keep the gap lit over their range.</summary>
    public static SensitivityStudy<GapProblem> Study(GapProblem problem, double share, GapModel? model, SolverOptions? options,
        CancellationToken stop)
    {
        GapRun nominal = problem.Solve(model, options, cancellationToken: stop);
        if (nominal.TimeOf(GapEventKind.Lit) is not { } time)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "SIZ005", nameof(problem),
                $"The gap does not light, so it has no time to ignition to be varied: {nominal.Outcome.Cause}")]);
        Distribution spread = Distribution.Uniform(1 - share, 1 + share);
        return new SensitivityStudy<GapProblem>
        {
            Inputs = new InputSet<GapProblem>(problem,
                [.. All.Select(i => AsFactor(i.Value(problem.Design), i.Of(spread))).OfType<StudyInput<GapProblem>>()
                .Where(i => Lights(i, 1 - share) && Lights(i, 1 + share))]),
            Unit = "-",
            Model = (p, cancel) => Math.Log((Time(p, cancel) ?? double.NaN) / time.Seconds),
        };

        double? Time(GapProblem at, CancellationToken cancel) =>
            at.SolveUntilLit(model, options ?? SolverOptions.ForGaps, cancel).TimeOf(GapEventKind.Lit)?.Seconds;

        bool Lights(StudyInput<GapProblem> input, double factor)
        {
            try
            {
                return Time(input.With(problem, factor), stop) is not null;
            }
            catch (ArgumentOutOfRangeException)
            {
                return false;
            }
        }
    }

    /// <summary>
    /// An input as a factor on its value [-]; null where the value is zero and a factor changes nothing.
    /// </summary>
    private static StudyInput<GapProblem>? AsFactor(double value, StudyInput<GapProblem> input) => value == 0
        ? null
        : new StudyInput<GapProblem>(input.Path, "-", input.Spread, (p, factor) => input.With(p, factor * value));
}
