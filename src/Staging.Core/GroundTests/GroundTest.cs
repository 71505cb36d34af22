using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>One test on the ground: a gap as built, and what was seen of it.</summary>
/// <remarks>
/// Immutable; may be read from any thread. Do it at a distance, behind cover, under the rules of your range: nobody
/// stands near a motor that is lit.
/// </remarks>
public sealed record GroundTest
{
    /// <summary>
    /// What the test is called: letters, digits, dots, hyphens, underscores and inner spaces.
    /// </summary>
    /// <exception cref="ArgumentException">The name is blank or holds other characters.</exception>
    public required string Name { get; init => field = InputPath.Checked(value); }

    /// <summary>
    /// The gap as built, at rest in the air of the day. A stage that is fixed to a stand is a very heavy body.
    /// </summary>
    public required GapProblem Gap { get; init => field = Guard.NotNull(value); }

    /// <summary>What was seen; of a test that is still to be made, <see cref="Seen.Unknown"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the words.</exception>
    public required Seen Seen { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// When flame was first seen at the uppermost vent; null where it was not. In the model the front is there, or
    /// burning pieces fly past it.
    /// </summary>
    public TimeSeen? FirstFlame { get; init; }

    /// <summary>
    /// When the joint was first seen to move; null where it was not. Once the upper motor burns its exhaust moves the
    /// joint, so that of a lit motor only what came before is compared.
    /// </summary>
    public TimeSeen? JointMoves { get; init; }

    /// <summary>
    /// When the stages had parted; null where that was not seen. Of a lit motor it is not compared.
    /// </summary>
    public TimeSeen? Parted { get; init; }

    /// <summary>When the upper motor burned; null where that was not seen.</summary>
    public TimeSeen? Lit { get; init; }

    /// <summary>
    /// Gap pressure above that of the air, named <c>gauge_Pa</c>, against the time since burn-through; null where there
    /// was no gauge.
    /// </summary>
    public MeasuredTrace? Pressure { get; init; }

    /// <summary>Standard error of the gauge [Pa], 0 to 1 MPa; 0, the default, where it is small.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure GaugeError { get; init => field = Guard.In(value, 0, 1e6); }

    /// <summary>
    /// Chance that the record itself is wrong, so that it says nothing [-], 0 to 0.99: a mix-up, or hearsay. The
    /// default is 0.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Doubt { get; init => field = Guard.In(value, 0, 0.99); }

    /// <summary>
    /// How the gas in the gap is modelled; <see cref="GapModel.TwoZone"/>, where nothing else is said.
    /// </summary>
    public GapModel Model { get; init => field = Guard.NotNull(value); } = new GapModel.TwoZone();

    /// <summary>
    /// How the gap is integrated; <see cref="SolverOptions.ForStudies"/> where it is <see
    /// cref="SolverOptions.ForGaps"/>, as nothing else is said.
    /// </summary>
    public SolverOptions Solver { get; init => field = Guard.NotNull(value); } = SolverOptions.ForGaps;

    /// <summary>All findings: those of the gap, and where what was seen contradicts itself.</summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check() => [.. GroundTestChecks.Of(this)];
}
