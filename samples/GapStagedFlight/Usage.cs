namespace GapStagedFlight;

/// <summary>What <c>--help</c> prints.</summary>
internal static class Usage
{
    public const string Text = """
        Reviews a gap-staged plan: will the booster's burn-through gas light the upper motor, and what flies and falls.

          GapStagedFlight [PLAN.json] [OPTIONS]

          PLAN.json       the plan; without it the invented demo plan is reviewed
          --check         only checks the plan and lists the findings
          --all-problems  lists every problem of a bad plan on a line of its own, not the first alone
          --cases N       flights of the quick study of the odds, 0 for none (default: that of the library, 60)
          --json          prints the review as JSON in place of text; what else is written is told on standard error

          --figures DIR   where the figures go, SVG and PNG (default: figures; none with --json)
          --no-figures    writes no figures
          --sheet DIR     writes the builder's sheets, 1:1, SVG and PDF: where to drill every tube
          --paper NAME    size of the sheets, a4 (default) or letter
          --csv DIR       writes the time series of every gap and of every body in flight
          --html FILE     writes the review with its figures as one page that needs nothing else
          --help          this text

        Returns 0 when every stage lights in the nominal case, 1 when one stays cold, 2 for bad input;
        with --check 0 for a plan that can be reviewed and 2 for one that cannot.
        It informs. Local codes, the range safety officer and licensed practice decide.
        """;
}
