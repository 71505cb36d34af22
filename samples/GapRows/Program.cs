using GapRows;

// Prints the rows, or with --check FILE tells whether the file still holds them, line by line.
string[] lines = [.. Rows.Table(), "", .. Spread.Table(), "", .. Nested.Table()];
switch (args)
{
    case []:
        Array.ForEach(lines, Console.WriteLine);
        return 0;
    case ["--check", string path] when File.Exists(path):
        HashSet<string> page = [.. File.ReadAllLines(path).Select(l => l.TrimEnd())];
        string[] lost = [.. lines.Where(l => !page.Contains(l))];
        Array.ForEach(lost, l => Console.WriteLine($"not in {path}: {l}"));
        Console.WriteLine(lost.Length == 0 ? $"{path} holds every row" : $"{path} is out of step");
        return lost.Length == 0 ? 0 : 1;
    default:
        Console.Error.WriteLine("error: GapRows [--check FILE]; the file must exist.");
        return 2;
}
