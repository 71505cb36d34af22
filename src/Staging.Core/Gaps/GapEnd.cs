using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Where a run ended: time [s], state, the work done, and why it was given up, if it was.</summary>
internal sealed record GapEnd(double Time, double[] State, SolverStatistics Statistics, SolverFailure? Failure);
