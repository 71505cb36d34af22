using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Writing;

/// <summary>One writing of one plan: in which form, and from which starting sets objects may start.</summary>
/// <param name="Form">The form.</param>
/// <param name="UsesSets">Whether objects may name a starting set, where that is shorter.</param>
/// <param name="OwnGaps">The gaps that stand at the top of this plan, by their names, in full.</param>
internal sealed record WriteContext(PlanForm Form, bool UsesSets, ImmutableArray<(string Name, JsonObject Whole)> OwnGaps)
{
    /// <summary>Everything in full.</summary>
    public static WriteContext Full { get; } = new(PlanForm.Full, false, []);

    /// <summary>Short, with the starting sets of the library.</summary>
    public static WriteContext Brief { get; } = new(PlanForm.Brief, true, []);

    /// <summary>The same form without starting sets.</summary>
    public WriteContext Whole => this with { UsesSets = false };
}
