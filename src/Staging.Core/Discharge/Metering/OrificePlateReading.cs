using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>What an orifice plate reads, with what stands behind it.</summary>
public sealed record OrificePlateReading
{
    /// <summary>The plate.</summary>
    public required OrificePlateIso5167 Plate { get; init; }

    /// <summary>Mass flow.</summary>
    public required MassFlow MassFlow { get; init; }

    /// <summary>Discharge coefficient C [-] at this flow.</summary>
    public required double DischargeCoefficient { get; init; }

    /// <summary>Expansibility factor epsilon [-]; 1 for a liquid.</summary>
    public required double Expansibility { get; init; }

    /// <summary>Reynolds number of the pipe, 4 q/(pi D mu) [-].</summary>
    public required double PipeReynolds { get; init; }

    /// <summary>Downstream over upstream pressure [-].</summary>
    public required double PressureRatio { get; init; }

    /// <summary>
    /// Relative uncertainty of C [-] at 95 %, ISO 5167-2:2003, 5.3.3.1; it stands only while <see cref="Notes"/> is
    /// none.
    /// </summary>
    public required double CoefficientUncertainty { get; init; }

    /// <summary>
    /// Relative uncertainty of epsilon [-], 3.5 % of dp/(kappa p1), ISO 5167-2:2003, 5.3.3.2; zero for a liquid.
    /// </summary>
    public required double ExpansibilityUncertainty { get; init; }

    /// <summary>Which limits of use the reading leaves.</summary>
    public required OrificePlateNotes Notes { get; init; }

    /// <summary>The notes as findings, each with its value and its limit.</summary>
    /// <returns>One warning for each limit that is left; empty inside all of them.</returns>
    public ImmutableArray<ModelFinding> Findings()
    {
        ImmutableArray<ModelFinding>.Builder list = ImmutableArray.CreateBuilder<ModelFinding>();
        Add(OrificePlateNotes.BoreTooSmall, "DIS011", "Bore", $"the bore is {Plate.Bore.Millimeters:G4} mm; ISO 5167-2 holds from 12.5 mm");
        Add(OrificePlateNotes.PipeTooSmall, "DIS012", "PipeDiameter",
            $"the pipe is {Plate.PipeDiameter.Millimeters:G4} mm; ISO 5167-2 holds from 50 mm");
        Add(OrificePlateNotes.PipeTooLarge, "DIS013", "PipeDiameter",
            $"the pipe is {Plate.PipeDiameter.Meters:G4} m; ISO 5167-2 holds to 1 m");
        Add(OrificePlateNotes.DiameterRatioOutside, "DIS014", "Bore",
            $"the diameter ratio is {Plate.DiameterRatio:G4}; ISO 5167-2 holds from 0.1 to 0.75");
        Add(OrificePlateNotes.ReynoldsTooLow, "DIS015", "PipeReynolds",
            $"the pipe Reynolds number is {PipeReynolds:G4}; ISO 5167-2 holds from {Plate.MinReynolds:G4}");
        Add(OrificePlateNotes.PressureRatioTooLow, "DIS016", "PressureRatio",
            $"the pressure ratio is {PressureRatio:G4}; the expansibility fit holds from 0.75");
        return list.ToImmutable();

        void Add(OrificePlateNotes note, string code, string path, Invariant.Handler text)
        {
            if (Notes.HasFlag(note))
                list.Add(new ModelFinding(FindingSeverity.Warning, code, path,
                    text.ToStringAndClear() + "; the coefficient is an extrapolation."));
        }
    }
}
