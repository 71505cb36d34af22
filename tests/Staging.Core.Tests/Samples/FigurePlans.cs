using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;
using Staging.Core.Tests.Reviews;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Samples;

/// <summary>Plans that end in every way there is, each with what the titles of its figures have to say, in the order drawn.</summary>
internal static class FigurePlans
{
    private static readonly GapDesign Lighting = TestPlans.Lighting;

    public static IReadOnlyDictionary<string, (Func<StagingReview> Review, string[] Titles)> All { get; } =
        new Dictionary<string, (Func<StagingReview>, string[])>
        {
            ["demo"] = (() => DemoPlan.Plan.Review(cases: 0), ["lit after 22.6 ms", "the grain wins by 4.9 ms", "sustainer lit, apogee 678 m"]),
            ["pushed apart"] = (() => Of(Bench.Design), ["pushed apart after", "the joint opens first", "sustainer stays cold, apogee"]),
            ["too cool"] = (() => Of(Lighting with { Grain = Lighting.Grain with { IgnitionTemperature = Temperature.FromKelvins(1200) } }),
                ["too cool", "stays cold, the grain too cool", "sustainer stays cold, apogee"]),
            ["vented away"] = (() => Of(Lighting with { Vents = [Bench.Hole(Bench.Tube(150), 6, 2)] }),
                ["the products leave through the vents", "stays cold, the products leave", "sustainer stays cold, apogee"]),
            ["long names"] = (() => TestPlans.Of(Plan(Booster(), Booster("the middle one of the three, with fins of balsa wood", Through(Lighting)),
                    Sustainer(Through(Lighting)))).Review(cases: 0),
                ["gap below the middle one of\u2026, nominal case: lit", "light the middle one of\u2026, nominal case: the grain", "below sustainer, nominal case: lit", "the grain", "every stage lit"]),
            ["one stage"] = (() => TestPlans.Of(Plan(Sustainer(new StageIgnition.AtLaunch()))).Review(cases: 0), ["The flight, nominal case: apogee"]),
            ["closed-gap"] = (() => PlanFiles.Review("closed-gap"), ["pushed apart after", "the joint opens first", "stays cold, apogee"]),
            ["cluster"] = (() => PlanFiles.Review("cluster"), ["lit after", "the grain", " lit, apogee"]),
            ["contact-film"] = (() => PlanFiles.Review("contact-film"), ["pushed apart after", "the joint opens first", "stays cold, apogee"]),
            ["contact-paper"] = (() => PlanFiles.Review("contact-paper"), ["pushed apart after", "the joint opens first", "stays cold, apogee"]),
            ["dart"] = (() => PlanFiles.Review("dart"), ["dart stays cold, apogee"]),
            ["electronics"] = (() => PlanFiles.Review("electronics"), [" lit (assumed), apogee"]),
            ["electronics-refused"] = (() => PlanFiles.Review("electronics-refused"), ["stays cold, apogee"]),
            ["nested-tubes"] = (() => PlanFiles.Review("nested-tubes"), ["lit after", "the grain", " lit, apogee"]),
            ["nested-tubes-inner-only"] = (() => PlanFiles.Review("nested-tubes-inner-only"), ["pushed apart after", "the joint opens first", "stays cold, apogee"]),
            ["sliding-motor-tube"] = (() => PlanFiles.Review("sliding-motor-tube"), ["lit after", "the grain", " lit, apogee"]),
            ["three-stages"] = (() => PlanFiles.Review("three-stages"), ["lit after", "the grain", "lit after", "the grain", "every stage lit, apogee"]),
            ["too-heavy"] = (() => PlanFiles.Review("too-heavy"), ["the stack never leaves the guide"]),
            ["vents-too-large"] = (() => PlanFiles.Review("vents-too-large"), ["too cool", "stays cold", "stays cold, apogee"]),
        };

    private static StageIgnition.ByGap Through(GapDesign design) =>
        new StageIgnition.ByGap { Gap = new GapIgnition { Design = design, Layout = TestPlans.Layout, HolePressureCoefficient = 0 } };

    private static StagingReview Of(GapDesign design) => TestPlans.Through(design).Review(cases: 0);
}
