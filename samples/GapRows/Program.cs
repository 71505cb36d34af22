// The gaps that common practice speaks of, with the source, grain and joint of the demo plan and nothing retuned.
//   dotnet run --project samples/GapRows                     prints the tables
//   dotnet run --project samples/GapRows -- --check FILE...  tells whether pages still hold them; 0 yes, 1 no
//   dotnet run --project samples/GapRows -- --write FILE     brings the page up to date
using GapRows;
using Samples;

return Page.Answer(args, new Dictionary<string, string[]>
{
    ["rows"] = [.. Rows.Table()],
    ["odds"] = [.. OddsByLength.Table()],
    ["inputs"] = [.. Inputs.Table()],
    ["choices"] = [.. Choices.Table()],
    ["nested"] = [.. Nested.Table()],
    ["contact"] = [.. Contact.Table()],
});
