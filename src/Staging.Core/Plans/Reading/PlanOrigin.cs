using System.Diagnostics.CodeAnalysis;

namespace Staging.Core.Plans.Reading;

/// <summary>
/// The text that a plan was read from: so that a check names the keys of the text and the values as written. Where a
/// plan comes from makes no other plan of it: all origins are equal.
/// </summary>
/// <param name="file">Name of the file; null where there is none.</param>
/// <param name="written">The values as written, by their JSON paths.</param>
internal sealed class PlanOrigin(string? file, IReadOnlyDictionary<string, string> written)
{
    private StagingPlan? read;

    /// <summary>The origin of a plan that was made in code.</summary>
    public static PlanOrigin Code { get; } = new(null, new Dictionary<string, string>());

    /// <summary>The plan with this origin. A changed copy of it is no longer what stands in the text.</summary>
    public StagingPlan Of(StagingPlan plan) => read = plan with { Origin = this };

    /// <summary>What a check says of a plan, in the words of its text where it is the plan that was read.</summary>
    public ModelFinding Told(StagingPlan plan, ModelFinding finding) => ReferenceEquals(plan, read)
        ? finding.In(file, finding.KeyPath, written.GetValueOrDefault("$." + finding.KeyPath))
        : finding;

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => obj is PlanOrigin;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
