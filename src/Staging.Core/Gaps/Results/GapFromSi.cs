using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Turns the plain numbers of a run back into quantities.</summary>
internal static class GapFromSi
{
    public static SolveProgress Progress(double time, double fraction) => new(Duration.FromSeconds(time), fraction);
}
