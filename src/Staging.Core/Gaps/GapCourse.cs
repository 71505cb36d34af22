using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>What a run keeps of its course: parameters, dense states and surface temperatures.</summary>
internal sealed record GapCourse(GapParameters Parameters, DenseTrack Track, GapWatch Watch);
