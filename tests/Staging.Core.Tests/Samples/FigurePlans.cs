using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
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

    public static IReadOnlyDictionary<string, (Func<StagingPlan> Plan, string[] Titles)> All { get; } =
        new Dictionary<string, (Func<StagingPlan>, string[])>
        {
            ["demo"] = (() => DemoPlan.Plan, ["sustainer, nominal case: lit after 22.6 ms", "the grain wins by 4.9 ms", "sustainer lit, apogee 678 m"]),
            ["lit"] = (() => TestPlans.Through(Lighting), ["lit after", "the grain", "sustainer lit, apogee"]),
            ["pushed apart"] = (() => TestPlans.Through(Bench.Design), ["pushed apart after", "the joint opens first", "sustainer stays cold, apogee"]),
            ["too cool"] = (() => TestPlans.Through(Lighting with { Grain = Lighting.Grain with { IgnitionTemperature = Temperature.FromKelvins(1200) } }),
                ["too cool", "stays cold, the grain too cool", "sustainer stays cold, apogee"]),
            ["vented away"] = (() => TestPlans.Through(Lighting with { Vents = [Bench.Hole(Bench.Tube(150), 6, 2)] }),
                ["the products leave through the vents", "stays cold, the products leave", "sustainer stays cold, apogee"]),
            ["closed"] = (() => TestPlans.Through(Bench.Design with { Vents = [] }), ["pushed apart after", "the joint opens first", "sustainer stays cold, apogee"]),
            ["nested"] = (() => TestPlans.Through(Nested), ["gap below sustainer, nominal case: ", "race to light sustainer, nominal case: ", "sustainer "]),
            ["contact"] = (() => TestPlans.Through(Contact), ["gap below sustainer, nominal case: ", "race to light sustainer, nominal case: ", "sustainer "]),
            ["electronics fire"] = (() => TestPlans.Of(TwoStages(Timer(0.3))), ["sustainer lit (assumed), apogee"]),
            ["electronics refuse"] = (() => TestPlans.Of(TwoStages(Timer(0.3, new ElectronicsGuards { MinHeight = Length.FromMeters(9000) }))),
                ["sustainer stays cold, apogee"]),
            ["three stages of long names"] = (() => Three("the middle one of the three, with fins of balsa wood"),
                ["gap below the middle one of\u2026, nominal case: lit", "race to light the middle one of\u2026, nominal case: ", "gap below sustainer, nominal case: ", "race to light sustainer, nominal case: ", "The flight, nominal case: "]),
            ["too heavy to lift"] = (() => TestPlans.Of(Plan(Booster(), Sustainer(Timer(0.3)) with { StructureMass = Mass.FromKilograms(3) })),
                ["the stack never leaves the guide"]),
            ["one stage"] = (() => TestPlans.Of(Plan(Sustainer(new StageIgnition.AtLaunch()))), ["The flight, nominal case: apogee"]),
        };

    private static GapDesign Nested => Lighting with
    {
        Vents = [Lighting.Vents[0] with { To = VentTarget.IntoJacket("outer tube") }],
        Jackets =
        [
            Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100), new JacketOpening
            {
                Holes = Lighting.Vents[0].Holes,
                To = VentTarget.Air,
                Station = Length.FromMillimeters(200),
            }),
        ],
    };

    private static GapDesign Contact => Bench.Gap.InContact(JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(15) }).Design;

    private static StageIgnition Through(GapDesign design) =>
        new StageIgnition.ByGap { Gap = new GapIgnition { Design = design, Layout = TestPlans.Layout, HolePressureCoefficient = 0 } };

    private static StagingPlan Three(string middle) =>
        TestPlans.Of(Plan(Booster(), Booster(middle, Through(Lighting)), Sustainer(Through(Lighting))));
}
