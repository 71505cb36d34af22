using Staging.Core.Gases;

namespace Staging.Core.Plans.Forms;

/// <summary>Records that several parts of a plan hold.</summary>
internal static class SharedForms
{
    public static RecordForm<Provenance> Provenance { get; } = new("provenance", k =>
    {
        var source = k.Needs("source", TextForm.NotBlank, x => x.Source);
        var locator = k.May("locator", TextForm.NotBlank, x => x.Locator);
        var how = k.Needs("how", ChoiceForm<Evidence>.Words, x => x.How);
        return v => new Provenance { Source = source(v), Locator = locator(v), How = how(v) };
    });

    public static RecordForm<PerfectGas> PerfectGas { get; } = new("perfect gas", k =>
    {
        var name = k.Needs("name", TextForm.NotBlank, x => x.Name);
        var gasConstant = k.Needs("gasConstant", Quantities.SpecificHeat, x => x.GasConstant);
        var ratio = k.Needs("heatCapacityRatio", NumberForm.Ratio, x => x.HeatCapacityRatio);
        var source = k.Needs("source", Provenance, x => x.Source);
        return v => new PerfectGas { Name = name(v), GasConstant = gasConstant(v), HeatCapacityRatio = ratio(v), Source = source(v) };
    });

    public static RecordForm<DustyGas> DustyGas { get; } = new("dusty gas", k =>
    {
        var name = k.Needs("name", TextForm.NotBlank, x => x.Name);
        var gas = k.Needs("gas", PerfectGas, x => x.Gas);
        var fraction = k.Needs("gasMassFraction", NumberForm.Ratio, x => x.GasMassFraction);
        var particles = k.Needs("particleHeatCapacity", Quantities.SpecificHeat, x => x.ParticleHeatCapacity);
        var source = k.Needs("source", Provenance, x => x.Source);
        return v => new DustyGas { Name = name(v), Gas = gas(v), GasMassFraction = fraction(v), ParticleHeatCapacity = particles(v), Source = source(v) };
    });
}
