namespace Staging.Core.Studies;

/// <summary>
/// Finds the answer to a question everywhere on a grid, and asks it only on a coarse lattice and along the lines where
/// the answer changes: what is surrounded by one answer has that answer.
/// </summary>
/// <remarks>
/// Every change between lattice points is bracketed, and the line on which it lies is followed, block of four by block
/// of four, until it closes or leaves the grid; the last corner of a block is not asked where both its neighbours in
/// the block agree. In the end any two neighbours that differ have both been asked. A region that holds no lattice
/// point, and no bracketed one, is missed.
/// </remarks>
internal sealed class Outline
{
    /// <summary>Cells from one lattice point to the next.</summary>
    public const int Spacing = 8;

    private const int Open = -1;

    private readonly int wide;
    private readonly int high;
    private readonly Func<int, int, int> question;
    private readonly int[] asked;
    private readonly bool[] followed;
    private readonly Stack<(int X, int Y)> blocks = new();

    private Outline(int wide, int high, Func<int, int, int> question)
    {
        (this.wide, this.high, this.question) = (wide, high, question);
        asked = new int[wide * high];
        Array.Fill(asked, Open);
        followed = new bool[wide * high];
    }

    /// <summary>Answers row by row, and how often the question was asked.</summary>
    /// <param name="wide">Cells in a row, at least 2.</param>
    /// <param name="high">Rows, at least 2.</param>
    /// <param name="question">The answer, 0 or above, at a cell of a row.</param>
    public static (int[] Answers, int Asked) Of(int wide, int high, Func<int, int, int> question)
    {
        var outline = new Outline(wide, high, question);
        outline.Scan();
        int[] answers = outline.Filled();
        while (outline.AsksWhere(answers))
            answers = outline.Filled();
        return (answers, outline.asked.Count(a => a != Open));
    }

    /// <summary>Asks on the lattice, and follows every change between its points.</summary>
    private void Scan()
    {
        int[] xs = Lattice(wide), ys = Lattice(high);
        foreach (int y in ys)
        {
            for (int i = 0; i + 1 < xs.Length; i++)
                Bracket((xs[i], y), (xs[i + 1], y));
        }

        foreach (int x in xs)
        {
            for (int i = 0; i + 1 < ys.Length; i++)
                Bracket((x, ys[i]), (x, ys[i + 1]));
        }

        Follow();
    }

    /// <summary>Every eighth cell of a row or column, and the last.</summary>
    private static int[] Lattice(int count) =>
        [.. Enumerable.Range(0, (count + Spacing - 2) / Spacing).Select(i => i * Spacing), count - 1];

    /// <summary>Halves the stretch between two cells that differ, on one row or column, down to neighbours.</summary>
    private void Bracket((int X, int Y) one, (int X, int Y) other)
    {
        if (Ask(one) == Ask(other))
            return;
        (int X, int Y) middle = ((one.X + other.X) / 2, (one.Y + other.Y) / 2);
        if (middle == one)
        {
            Change(one, other);
            return;
        }

        Bracket(one, middle);
        Bracket(middle, other);
    }

    /// <summary>Both blocks that share two neighbours which differ are to be followed.</summary>
    private void Change((int X, int Y) one, (int X, int Y) other)
    {
        blocks.Push(one);
        blocks.Push(one.Y == other.Y ? (one.X, one.Y - 1) : (one.X - 1, one.Y));
    }

    /// <summary>Asks in every block of four that a line of change passes through.</summary>
    private void Follow()
    {
        while (blocks.TryPop(out (int X, int Y) block))
        {
            (int x, int y) = block;
            if (x < 0 || y < 0 || x + 1 >= wide || y + 1 >= high || followed[y * wide + x])
                continue;
            followed[y * wide + x] = true;
            ReadOnlySpan<(int X, int Y)> corners = [(x, y), (x + 1, y), (x + 1, y + 1), (x, y + 1)];
            ReadOnlySpan<(int X, int Y)> across = [(x, y - 1), (x + 1, y), (x, y + 1), (x - 1, y)];
            for (int i = 0; i < 4; i++)
            {
                int before = At(corners[(i + 3) % 4]), after = At(corners[(i + 1) % 4]);
                if (before == Open || before != after)
                    Ask(corners[i]);
            }

            for (int i = 0; i < 4; i++)
            {
                int one = At(corners[i]), other = At(corners[(i + 1) % 4]);
                if (one != Open && other != Open && one != other)
                    blocks.Push(across[i]);
            }
        }
    }

    /// <summary>What was asked, and elsewhere the answer of the neighbour before.</summary>
    private int[] Filled()
    {
        int[] answers = [.. asked];
        for (int i = 1; i < answers.Length; i++)
        {
            if (answers[i] == Open)
                answers[i] = answers[i % wide > 0 ? i - 1 : i - wide];
        }

        return answers;
    }

    /// <summary>Asks where a filled answer differs from a neighbour's; false when there is no such place.</summary>
    private bool AsksWhere(int[] answers)
    {
        bool found = false;
        for (int y = 0; y < high; y++)
        {
            for (int x = 0; x < wide; x++)
            {
                found |= x + 1 < wide && Settles(answers, (x, y), (x + 1, y));
                found |= y + 1 < high && Settles(answers, (x, y), (x, y + 1));
            }
        }

        Follow();
        return found;
    }

    private bool Settles(int[] answers, (int X, int Y) one, (int X, int Y) other)
    {
        int i = one.Y * wide + one.X, j = other.Y * wide + other.X;
        if (answers[i] == answers[j] || (asked[i] != Open && asked[j] != Open))
            return false;
        if (Ask(one) != Ask(other))
            Change(one, other);
        return true;
    }

    private ref int At((int X, int Y) cell) => ref asked[cell.Y * wide + cell.X];

    private int Ask((int X, int Y) cell)
    {
        ref int answer = ref At(cell);
        if (answer == Open)
            answer = question(cell.X, cell.Y);
        return answer;
    }
}
