// A script in F#: the odds of a plan, and what the margin follows; then which of two inputs of its gap matters. The package comes from the feeds that NuGet knows.
//   dotnet fsi samples/Odds.fsx PLAN [CASES]
#r "nuget: Staging.Core"

open System
open Staging.Core
open Staging.Core.Plans
open Staging.Core.Reviews
open Staging.Core.Sizing
open Staging.Core.Solving
open Staging.Core.Studies

let arguments = fsi.CommandLineArgs |> Array.tail
let plan = StagingPlan.Read arguments[0]
let cases = if arguments.Length > 1 then int arguments[1] else 64

let odds = plan.Odds cases
printfn "%O" odds
printfn "%O" (odds.WhatMatters())

let lit = plan.Review().Gaps |> Seq.forall (fun gap -> gap.Run.Outcome.IsLit)
printfn "nominal: %s" (if lit then "lit" else "dark")

let inputs = // lists of the library are made of any sequence
    [ GapInputs.Breakaway(Distribution.Triangular(10.0, 20.0, 60.0)); GapInputs.Strength(Distribution.Uniform(2.0, 10.0)) ]
    |> EquatableArray.CreateRange
let study =
    SensitivityStudy(
        Inputs = InputSet(plan.GapBelow(), inputs),
        Unit = "K",
        Model = fun gap stop ->
            (gap.Solve(options = SolverOptions.ForStudies, cancellationToken = stop).PeakGrainSurface - gap.Design.Grain.IgnitionTemperature).Kelvins)
for bar in study.Bars() do
    printfn "%O" bar
