using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Which delay suits a flight.</summary>
/// <param name="Ideal">Time from the end of the main motor's thrust history in the uppermost stage to apogee with
/// nothing ejected [s]: the delay to wish for.</param>
/// <param name="Candidates">What each delay on offer would do, in the order given.</param>
public sealed record DelayChoice(Duration Ideal, ImmutableArray<DelayOption> Candidates)
{
    /// <summary>The delay on offer with the least speed at ejection; null where nothing is on offer.</summary>
    public DelayOption? Best => Candidates.MinBy(o => o.Speed.MetersPerSecond);
}

/// <summary>What a delay would do.</summary>
/// <param name="Delay">The delay [s].</param>
/// <param name="Speed">Speed along the flight line at ejection, without sign [m/s]; off a leaning guide a real flight
/// keeps a horizontal speed at apogee that this leaves out.</param>
/// <param name="Height">Height at ejection [m]; zero where the body would be on the ground by then.</param>
/// <param name="AfterApogee">Time from apogee to ejection [s]; negative before apogee.</param>
/// <param name="EarlyOrLateSpeed">
/// The greater speed at ejection if the delay burns 20 % or 1.5 s, whichever is more, too short or too long [m/s] (the
/// tolerance of NFPA 1125; from memory).
/// </param>
public sealed record DelayOption(Duration Delay, Speed Speed, Length Height, Duration AfterApogee, Speed EarlyOrLateSpeed);
