#:project ../src/Staging.Core/Staging.Core.csproj
#:property PublishAot=false
// A script: which vent areas light the upper motor, how long may the gap be, how hard must the joint hold?
//   dotnet run samples/WhereItLights.cs [-- LENGTH_MM [HOLES]]     (default: 120 mm, 4 holes, invented starting values)
using System.Globalization;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using UnitsNet;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
double length = args.Length > 0 ? double.Parse(args[0], CultureInfo.InvariantCulture) : 120;
int holes = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 4;

GapProblem gap = StartingGaps.Bore18mm.With(length: Length.FromMillimeters(length), breakaway: Force.FromNewtons(40));
Console.WriteLine(gap.SizeVents(holes));
