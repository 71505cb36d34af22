// The gaps that common practice speaks of, with the source, grain and joint of the demo plan and nothing retuned.
//   dotnet run --project samples/GapRows                     prints the tables
//   dotnet run --project samples/GapRows -- --check FILE     tells whether the page still holds them; 0 yes, 1 no
//   dotnet run --project samples/GapRows -- --write FILE     brings the page up to date
using GapRows;

var tables = new Dictionary<string, string[]>
{
    ["rows"] = [.. Rows.Table()],
    ["inputs"] = [.. Inputs.Table()],
    ["choices"] = [.. Choices.Table()],
    ["nested"] = [.. Nested.Table()],
    ["contact"] = [.. Contact.Table()],
};

switch (args)
{
    case []:
        Console.WriteLine(string.Join("\n\n", tables.Values.Select(t => string.Join('\n', t))));
        return 0;
    case ["--check", string path] when File.Exists(path):
        bool current = Page.With(File.ReadAllText(path), tables) == File.ReadAllText(path);
        Console.WriteLine(current ? $"{path} holds the tables" : $"{path} is out of step with the program; --write brings it up to date");
        return current ? 0 : 1;
    case ["--write", string path] when File.Exists(path):
        File.WriteAllText(path, Page.With(File.ReadAllText(path), tables));
        return 0;
    default:
        Console.Error.WriteLine("error: GapRows [--check FILE | --write FILE]; the file must exist.");
        return 2;
}
