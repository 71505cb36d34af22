using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>Tests on the ground, and how far the model may be off: together they teach what is not known.</summary>
/// <remarks>
/// All tests share one set of unknown inputs: they should be of one kind of motor, by one builder. What differs from
/// one specimen to the next is not an input; <see cref="Discrepancy"/> allows for it. Immutable. Equality compares the
/// functions of the unknowns by reference.
/// </remarks>
public sealed partial record GroundTestSeries
{
    /// <summary>The tests; their order does not matter. Without any, nothing is learned.</summary>
    public required EquatableArray<GroundTest> Tests { get; init; }

    /// <summary>How far the model may be off even with the right inputs.</summary>
    public ModelDiscrepancy Discrepancy { get; init => field = Guard.NotNull(value); } = ModelDiscrepancy.Judged;

    /// <summary>
    /// What is not known of the gaps, with what is believed of it before the tests. Empty, the default, takes what is
    /// judged of every gap: <see cref="GroundTestInputs.JudgedFor"/>.
    /// </summary>
    public EquatableArray<StudyInput<GapProblem>> Unknowns { get; init; } = [];

    /// <summary>
    /// What tells two series of tests with equal names apart: a digest of their text and of the gases that it has no
    /// words for; nothing where a plan has no words for a law of discharge.
    /// </summary>
    internal string Digest
    {
        get
        {
            try
            {
                string text = (this with { Tests = [.. Tests.Select(InAir)] }).ToJson() + string.Concat(Tests.Select(OtherGas));
                return ", tests " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16];
            }
            catch (ArgumentException)
            {
                return "";
            }
        }
    }

    /// <summary>All findings: those of every test, and names that are given twice.</summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        for (int i = 0; i < Tests.Length; i++)
        {
            int at = i;
            findings.AddRange(Tests[i].Check().Select(f => f.At($"Tests[{at}].{f.Path}")));
            if (Tests.Items.Take(i).Any(t => t.Name == Tests[at].Name))
                findings.Add(new ModelFinding(FindingSeverity.Error, "TST006", $"Tests[{i}].Name",
                    $"Another test is called \"{Excerpt.Of(Tests[i].Name)}\"; give each its own name."));
        }

        return findings.ToImmutable();
    }

    /// <summary>What the tests say of the unknown inputs.</summary>
    /// <param name="cases">Cases, 2 to 16 777 216; a case that is run runs every different gap once. Some thousands are
    /// enough for ten tests with pass and fail; exact times and traces ask for more.</param>
    /// <param name="seed">The seed of the cases.</param>
    /// <param name="runs">How many cases are run, about, 100 or more; null, the default, runs all. With fewer, the
    /// first tell which others are worth a run: see <see cref="LearningStudy{T}.Runs"/>.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <returns>What is believed after the tests: the same bits for any number of threads.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors, a gap refuses what an unknown can
    /// be, or nothing fits the tests: with a reason.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of cases or of runs is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public Learned Learn(int cases, ulong seed = 0, int? runs = null, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default) =>
        LearnBy(cases, seed, runs, Unknown, GapAnswer.Of, options, progress, cancellationToken);

    /// <summary>Prepares <see cref="Learn"/> so that parts of the cases run anywhere.</summary>
    /// <param name="cases">Cases, 2 to 16 777 216.</param>
    /// <param name="seed">The seed of the cases.</param>
    /// <returns>The study; its answer is what is believed after the tests.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors, or a gap refuses what an unknown can
    /// be.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number of cases is outside its range.</exception>
    public PartitionedStudy<Learned> LearnInParts(int cases, ulong seed = 0) =>
        LearnInParts(cases, seed, Unknown, GapAnswer.Of);

    /// <summary>Every test on a line, and how far the model may be off.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join('\n', Tests.Select(t => $"{t.Name}: {t.Seen}").Append(Discrepancy.ToString()));

    private UnknownInputs Unknown => new(Unknowns, Tests.Select(t => t.Gap));

    /// <summary>The same with given unknowns and another model in place of gap runs.</summary>
    internal Learned LearnBy(int cases, ulong seed, int? runs, UnknownInputs unknown, GapAnswers answers, StudyOptions? options,
        IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        var study = new SeriesStudy(this, unknown, answers);
        return new Learned(this, (study.Study(cases, seed) with { Runs = runs }).Learn(options, progress, cancel), study);
    }

    /// <summary>The same in parts.</summary>
    internal PartitionedStudy<Learned> LearnInParts(int cases, ulong seed, UnknownInputs unknown, GapAnswers answers)
    {
        var study = new SeriesStudy(this, unknown, answers);
        return LikelihoodRows.Study(study.Study(cases, seed), posterior => new Learned(this, posterior, study));
    }

    private static GroundTest InAir(GroundTest test) => test with
    {
        Gap = test.Gap with { Surroundings = test.Gap.Surroundings with { Gas = PerfectGas.DryAir } },
    };

    /// <summary>The numbers of the gas that surrounds a gap, where it is not dry air.</summary>
    private static string OtherGas(GroundTest test) => test.Gap.Surroundings.Gas is var gas && gas == PerfectGas.DryAir
        ? ""
        : Invariant.Text($" {test.Name}: {gas.GasConstant.JoulesPerKilogramKelvin:R} {gas.HeatCapacityRatio:R}");
}
