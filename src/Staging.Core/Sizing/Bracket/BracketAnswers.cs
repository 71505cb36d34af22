using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>What a bracket finds beside its corners; see <see cref="GapBracket"/>.</summary>
internal sealed record BracketAnswers
{
    public GapOutcome? GasAlone { get; init; }

    public Area? OldFacesVent { get; init; }

    public Area? AllFacesVent { get; init; }

    public Area? OldFacesSteadyVent { get; init; }

    public Area? AllFacesSteadyVent { get; init; }

    public (Duration Fast, Duration Slow)? Arrival { get; init; }

    public Duration? ContactDelay { get; init; }

    public string Droplets { get; init; } = "";
}
