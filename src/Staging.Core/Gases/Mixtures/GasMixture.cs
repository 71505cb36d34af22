using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// A mixture of perfect gases in thermal equilibrium, given by mass fractions y_i: R = sum y_i R_i, cv = sum y_i cv_i,
/// gamma = 1 + R/cv. The ratio of heat capacities itself does not average, by mass or by mole.
/// </summary>
/// <remarks>
/// Gibbs-Dalton law; for example H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), section 1.
/// </remarks>
public sealed record GasMixture
{
    /// <summary>
    /// How far the mass fractions may miss a sum of 1 [-]; they are taken as they stand, not rescaled.
    /// </summary>
    private const double SumTolerance = 1e-9;

    /// <summary>Name for messages and tables.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>The gases with their shares of the mass [-], each 0 to 1; together 1.</summary>
    /// <exception cref="ArgumentNullException">A gas is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share outside the range.</exception>
    public required EquatableArray<(PerfectGas Gas, double Share)> Shares
    {
        get;
        init
        {
            foreach ((PerfectGas gas, double share) in value)
            {
                Guard.NotNull(gas);
                Guard.In(share, 0, 1);
            }

            field = value;
        }
    }

    /// <summary>Looks for fractions that do not add up.</summary>
    /// <returns>An error <c>GAS002</c> when the mass fractions do not add up to 1.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        double sum = Shares.Sum(s => s.Share);
        if (Math.Abs(sum - 1) <= SumTolerance)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Error, "GAS002", nameof(Shares),
                Invariant.Text($"The mass fractions of {Excerpt.Of(Name)} add up to {sum:G9}; they must add up to 1.")),
        ];
    }

    /// <summary>The mixture as one perfect gas.</summary>
    /// <returns>The equivalent gas.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports an error.</exception>
    public PerfectGas Equivalent()
    {
        InvalidModelException.ThrowOnError(Check());
        (double R, double cv, double low, double high) = (0, 0, double.MaxValue, 0);
        foreach ((PerfectGas gas, double share) in Shares)
        {
            R += share * gas.Constants.R;
            cv += share * gas.Constants.Cv;
            (low, high) = (Math.Min(low, gas.HeatCapacityRatio), Math.Max(high, gas.HeatCapacityRatio));
        }

        return new PerfectGas
        {
            Name = Name,
            GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(R),
            HeatCapacityRatio = Math.Clamp(1 + R / cv, low, high), // it lies between those of the gases; round-off may not leave them
            Provenance = new Provenance
            {
                Source = $"Mixture by mass of {string.Join(", ", Shares.Select(s => s.Gas.Name))} (Gibbs-Dalton law)",
                How = Evidence.ComputedFromFormula,
            },
        };
    }
}
