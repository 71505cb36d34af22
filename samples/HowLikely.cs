#:project ../src/Staging.Core/Staging.Core.csproj
#:property PublishAot=false
// A script: how likely is the upper stage of a plan to light, and how high does it go?
//   dotnet run samples/HowLikely.cs [-- PLAN [CASES]]     (default: the invented demo, 64 cases)
using System.Globalization;
using Staging.Core.Plans;
using Staging.Core.Reviews;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string here = AppContext.GetData("EntryPointFileDirectoryPath") as string ?? "samples";
string file = args.Length > 0 ? args[0] : Path.Combine(here, "GapStagedFlight", "demo", "plan.json");
int cases = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 64;

Odds odds = StagingPlan.Read(file).Odds(cases);
Console.WriteLine(odds);
