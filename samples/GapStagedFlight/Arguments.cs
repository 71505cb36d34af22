namespace GapStagedFlight;

/// <summary>What was asked for on the command line.</summary>
internal sealed record Arguments(string Plan, string? Figures, bool Help)
{
    public const string Usage = """
        Reviews a gap-staged plan: will the booster's burn-through gas light the upper motor, and what flies and falls.

          GapStagedFlight [PLAN.json] [--figures DIR | --no-figures]

          PLAN.json       the plan; without it the invented demo plan is reviewed
          --figures DIR   where the figures go, SVG and PNG (default: figures)
          --no-figures    write none
          --help          this text

        Returns 0 when every stage lights, 1 when one stays cold, 2 for bad input.
        It informs. Local codes, the range safety officer and licensed practice decide.
        """;

    public static string DemoPlan => Path.Combine(AppContext.BaseDirectory, "demo", "plan.json");

    public static Arguments Parse(IReadOnlyList<string> args)
    {
        string? plan = null, figures = "figures";
        for (int i = 0; i < args.Count; i++)
        {
            switch (args[i])
            {
                case "--help" or "-h":
                    return new Arguments("", null, true);
                case "--no-figures":
                    figures = null;
                    break;
                case "--figures":
                    figures = ++i < args.Count ? args[i] : throw new ArgumentException("--figures needs a directory.");
                    break;
                case ['-', ..]:
                    throw new ArgumentException($"unknown option {args[i]}; --help lists the options.");
                default:
                    plan = plan is null ? args[i] : throw new ArgumentException($"one plan at a time: {plan} or {args[i]}.");
                    break;
            }
        }

        return new Arguments(plan ?? DemoPlan, figures, false);
    }
}
