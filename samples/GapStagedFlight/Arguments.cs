using System.Globalization;
using GapStagedFlight.Sheet;

namespace GapStagedFlight;

/// <summary>What was asked for on the command line.</summary>
internal sealed record Arguments
{
    private const int MostCases = 1_000_000;

    public string Plan { get; private init; } = Path.Combine(AppContext.BaseDirectory, "demo", "plan.json");

    public bool Help { get; private init; }

    public bool Check { get; private init; }

    public bool AllProblems { get; private init; }

    public bool Json { get; private init; }

    /// <summary>Flights of the study of the odds; null for as many as the library takes by itself.</summary>
    public int? Cases { get; private init; }

    public string? Figures { get; private init; }

    public string? Sheet { get; private init; }

    public Paper Paper { get; private init; } = Paper.A4;

    public string? Csv { get; private init; }

    public string? Html { get; private init; }

    public static Arguments Parse(IReadOnlyList<string> args)
    {
        var asked = new Arguments();
        string? plan = null;
        bool noFigures = false;
        for (int i = 0; i < args.Count; i++)
        {
            (string option, string? given) = Split(args[i]);
            switch (option)
            {
                case "--help" or "-h":
                    return asked with { Help = true };
                case "--check":
                    asked = asked with { Check = true };
                    break;
                case "--all-problems":
                    asked = asked with { AllProblems = true };
                    break;
                case "--json":
                    asked = asked with { Json = true };
                    break;
                case "--no-figures":
                    noFigures = true;
                    break;
                case "--cases":
                    asked = asked with { Cases = Count(Value("a number")) };
                    break;
                case "--figures":
                    asked = asked with { Figures = Value("a directory") };
                    break;
                case "--sheet":
                    asked = asked with { Sheet = Value("a directory") };
                    break;
                case "--paper":
                    asked = asked with { Paper = Paper.Named(Value("a size, a4 or letter")) };
                    break;
                case "--csv":
                    asked = asked with { Csv = Value("a directory") };
                    break;
                case "--html":
                    asked = asked with { Html = Value("a file") };
                    break;
                case ['-', ..]:
                    throw new ArgumentException($"unknown option {args[i]}; --help lists the options.");
                default:
                    plan = plan is null ? args[i] : throw new ArgumentException($"one plan at a time: {plan} or {args[i]}.");
                    break;
            }

            string Value(string what) =>
                given ?? (i + 1 < args.Count && args[i + 1] is not ['-', '-', ..] ? args[++i] : throw new ArgumentException($"{option} needs {what}."));
        }

        asked = asked with { Plan = plan ?? asked.Plan };
        if (asked.Check && (asked.Json || (asked.Figures ?? asked.Sheet ?? asked.Csv ?? asked.Html) is not null))
            throw new ArgumentException("--check makes no review; leave out what is to be made of one.");
        return noFigures ? asked with { Figures = null } : asked.Json || asked.Check ? asked : asked with { Figures = asked.Figures ?? "figures" };
    }

    /// <summary>An option and what is given with it as <c>--option=value</c>; only options that take a value are split.</summary>
    private static (string Option, string? Given) Split(string word) =>
        word.Split('=', 2) is [("--cases" or "--figures" or "--sheet" or "--paper" or "--csv" or "--html") and var option, { Length: > 0 } given]
            ? (option, given)
            : (word, null);

    private static int Count(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count <= MostCases
            ? count
            : throw new ArgumentException(FormattableString.Invariant($"--cases needs a whole number from 0 to {MostCases}, not {text}."));
}
