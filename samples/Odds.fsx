// A script in F#: the odds of a plan, and what the margin follows. The package comes from the feeds that NuGet knows.
//   dotnet fsi samples/Odds.fsx PLAN [CASES]
#r "nuget: Staging.Core"

open System
open Staging.Core.Plans
open Staging.Core.Reviews

let arguments = fsi.CommandLineArgs |> Array.tail
let plan = StagingPlan.Read arguments[0]
let cases = if arguments.Length > 1 then int arguments[1] else 64

let odds = plan.Odds cases
printfn "%O" odds
printfn "%O" (odds.WhatMatters())

let lit = plan.Review().Gaps |> Seq.forall (fun gap -> gap.Run.Outcome.IsLit)
printfn "nominal: %s" (if lit then "lit" else "dark")
