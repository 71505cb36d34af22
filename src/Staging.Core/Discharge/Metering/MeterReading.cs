using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>The reading of an orifice plate or a critical-flow nozzle, with its coefficients and uncertainty.</summary>
public sealed class MeterReading
{
    internal MeterReading(MassFlow massFlow, double coefficient, double flowFactor, double reynolds, double uncertainty,
        double factorUncertainty, ImmutableArray<ModelFinding> findings)
    {
        (MassFlow, DischargeCoefficient, FlowFactor, Reynolds) = (massFlow, coefficient, flowFactor, reynolds);
        (CoefficientUncertainty, FactorUncertainty, Findings) = (uncertainty, factorUncertainty, findings);
    }

    /// <summary>Mass flow.</summary>
    public MassFlow MassFlow { get; }

    /// <summary>Discharge coefficient [-] at this flow: C of a plate, Cd' of a nozzle.</summary>
    public double DischargeCoefficient { get; }

    /// <summary>
    /// The factor for the compressibility of the gas [-]: the expansibility factor epsilon of a plate, 1 for a liquid;
    /// the critical flow factor C* of a nozzle.
    /// </summary>
    public double FlowFactor { get; }

    /// <summary>
    /// Reynolds number [-]: 4 q/(pi D mu) of the pipe of a plate, 4 q/(pi d mu0) of the throat of a nozzle.
    /// </summary>
    public double Reynolds { get; }

    /// <summary>
    /// Relative uncertainty of the coefficient [-] at 95 %: of a plate by ISO 5167-2:2003, 5.3.3.1, of a nozzle 0.003
    /// (ISO 9300:2005, from memory). It applies only while there are no <see cref="Findings"/>.
    /// </summary>
    public double CoefficientUncertainty { get; }

    /// <summary>
    /// Relative uncertainty of the flow factor [-]: of a plate 3.5 % of dp/(kappa p1), ISO 5167-2:2003, 5.3.3.2; zero
    /// for a liquid and a nozzle.
    /// </summary>
    public double FactorUncertainty { get; }

    /// <summary>Which limits of its standard the reading exceeds: one warning each, with value and limit.</summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Flow and coefficient on one line.</summary>
    /// <returns>For example <c>0.0213 kg/s, coefficient 0.6062, Reynolds number 1.5E+04</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{MassFlow.KilogramsPerSecond:G4} kg/s, coefficient {DischargeCoefficient:F4}, Reynolds number {Reynolds:G3}");
}
