namespace Staging.Core.Studies;

/// <summary>Which cases of a design are run, and how many cases each of them stands for.</summary>
/// <param name="count">Cases of the design.</param>
/// <param name="plain">How many cases at the start of the design are all run: a sample of what is believed
/// before.</param>
/// <param name="of">For each case how many it stands for [-], 0 where it is not run; null where each is run and stands
/// for itself.</param>
internal sealed class CaseShares(int count, int plain, double[]? of)
{
    /// <summary>Cases of the design.</summary>
    public int Count => count;

    /// <summary>Cases that are run.</summary>
    public int Runs { get; } = of?.Count(share => share > 0) ?? count;

    /// <summary>Numbers of the cases that are run, rising.</summary>
    public int[] Run => [.. Enumerable.Range(0, count).Where(i => this[i] > 0)];

    /// <summary>How many cases one stands for [-]; 0 where it is not run.</summary>
    public double this[int i] => of?[i] ?? 1;

    /// <summary>The first cases alone: what is believed before.</summary>
    public CaseShares First => new(count, plain, [.. Enumerable.Range(0, count).Select(i => i < plain ? 1.0 : 0)]);

    /// <summary>Every case of a design.</summary>
    public static CaseShares All(int count) => new(count, count, null);

    /// <summary>Whether the same cases are run, and stand for as many.</summary>
    public bool Agrees(CaseShares other) =>
        count == other.Count && Enumerable.Range(0, count).All(i => this[i] == other[i]);
}
