// What practice says, as evidence of doubtful weight about what is not known of a gap.
//   dotnet run --project samples/PracticeEvidence                      prints the tables
//   dotnet run --project samples/PracticeEvidence -- --check FILE      tells whether the page still holds them; 0 yes, 1 no
//   dotnet run --project samples/PracticeEvidence -- --write FILE      brings the page up to date
using PracticeEvidence;
using Samples;

return Page.Answer(args.Take(2).ToArray(), new Dictionary<string, string[]>
{
    ["kept"] = [.. Tables.Kept()],
    ["together"] = [.. Tables.Together()],
    ["asked"] = [.. Tables.Asked()],
});
