namespace Staging.Core.Discharge;

/// <summary>One opening of a series as plain SI numbers.</summary>
internal readonly struct SeriesMember(IDischargeLaw law, OrificeSize size)
{
    public IDischargeLaw Law { get; } = law;

    public OrificeSize Size { get; } = size;
}
