// A builder's questions, answered for the invented demo, and the lines of a program of your own. The documentation shows
// the lines and what they print (docs/tasks, docs/guides/in-a-program.md, docs/journey.md).
//   dotnet run --project samples/BuilderTasks                          prints every answer
//   dotnet run --project samples/BuilderTasks -- --check DOCS          tells whether the pages in DOCS show them; 0 yes, 1 no
//   dotnet run --project samples/BuilderTasks -- --write DOCS          brings the pages up to date
using System.Globalization;
using BuilderTasks;

bool ofPages = args is ["--check" or "--write", _, ..] && Directory.Exists(args[1]);
if (args.Length > 0 && !ofPages)
{
    Console.Error.WriteLine("error: [--check DOCS | --write DOCS] is what can be asked, and the folder must exist.");
    return 2;
}

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string? docs = ofPages ? Path.GetFullPath(args[1]) : null;
Directory.SetCurrentDirectory(AppContext.BaseDirectory); // where demo, plans and ground-tests lie
var journey = new JourneyParts();
var answers = new Dictionary<string, string>
{
    ["joint-slips"] = Answers.Printed(JointSlips.Run),
    ["joint-slips-line"] = JointSlips.Line,
    ["joint-slips-checked"] = Answers.Printed(JointSlips.Check),
    ["longest-gap"] = Answers.Printed(LongestGap.Run),
    ["which-drill"] = Answers.Printed(WhichDrill.Run),
    ["another-booster-lines"] = AnotherBooster.Lines,
    ["another-booster"] = Answers.Printed(AnotherBooster.Run),
    ["another-booster-checked"] = Answers.Printed(AnotherBooster.Check),
    ["stays-cold"] = Answers.Printed(StaysCold.Run),
    ["nested-tubes"] = Answers.Printed(NestedTubes.Run),
    ["program-fly"] = Answers.Printed(FlyFromCode.Run),
    ["program-review"] = Answers.Printed(ReviewToJson.Run),
    ["program-text"] = Answers.Printed(PlanFromText.Run),
    ["program-csv"] = Answers.Printed(ColumnsAsCsv.Run),
    ["program-study"] = Answers.Printed(StudyWithProgress.Run),
    ["journey-verdict"] = journey.Verdict,
    ["journey-build"] = journey.Build,
    ["journey-flight"] = journey.Flight,
    ["tests-on-the-ground"] = Answers.Printed(TestsOnTheGround.Run),
    ["which-delay"] = Answers.Printed(WhichDelay.Run),
};
if (docs is not null)
    return Answers.Pages(docs, answers, write: args[0] == "--write");
foreach ((string name, string answer) in answers)
    Console.WriteLine($"-- {name}\n{answer}\n");
return 0;
