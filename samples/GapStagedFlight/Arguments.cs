using GapStagedFlight.Sheet;

namespace GapStagedFlight;

/// <summary>What was asked for on the command line.</summary>
internal sealed record Arguments(string Plan, string? Figures, string? Sheet, Paper Paper, bool Help)
{
    public const string Usage = """
        Reviews a gap-staged plan: will the booster's burn-through gas light the upper motor, and what flies and falls.

          GapStagedFlight [PLAN.json] [--figures DIR | --no-figures] [--sheet DIR] [--paper a4|letter]

          PLAN.json       the plan; without it the invented demo plan is reviewed
          --figures DIR   where the figures go, SVG and PNG (default: figures)
          --no-figures    write none
          --sheet DIR     writes the builder's sheets there, 1:1, SVG and PDF: where to drill every tube
          --paper NAME    size of the sheets, a4 (default) or letter
          --help          this text

        Returns 0 when every stage lights, 1 when one stays cold, 2 for bad input.
        It informs. Local codes, the range safety officer and licensed practice decide.
        """;

    public static string DemoPlan => Path.Combine(AppContext.BaseDirectory, "demo", "plan.json");

    public static Arguments Parse(IReadOnlyList<string> args)
    {
        string? plan = null, figures = "figures", sheet = null;
        Paper paper = Paper.A4;
        for (int i = 0; i < args.Count; i++)
        {
            switch (args[i])
            {
                case "--help" or "-h":
                    return new Arguments("", null, null, paper, true);
                case "--no-figures":
                    figures = null;
                    break;
                case "--figures":
                    figures = ++i < args.Count ? args[i] : throw new ArgumentException("--figures needs a directory.");
                    break;
                case "--sheet":
                    sheet = ++i < args.Count ? args[i] : throw new ArgumentException("--sheet needs a directory.");
                    break;
                case "--paper":
                    paper = Paper.Named(++i < args.Count ? args[i] : throw new ArgumentException("--paper needs a size, a4 or letter."));
                    break;
                case ['-', ..]:
                    throw new ArgumentException($"unknown option {args[i]}; --help lists the options.");
                default:
                    plan = plan is null ? args[i] : throw new ArgumentException($"one plan at a time: {plan} or {args[i]}.");
                    break;
            }
        }

        return new Arguments(plan ?? DemoPlan, figures, sheet, paper, false);
    }
}
