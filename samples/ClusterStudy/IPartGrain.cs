namespace ClusterStudy;

/// <summary>Runs one part of the study, on whichever silo of the cluster it is placed.</summary>
public interface IPartGrain : IGrainWithIntegerKey
{
    /// <summary>
    /// Runs part <paramref name="part"/> of <paramref name="parts"/> and sends its result home as text.
    /// </summary>
    Task<PartAnswer> Run(int part, int parts);
}

/// <summary>The text of a part, and the silo that ran it.</summary>
[GenerateSerializer]
public sealed record PartAnswer([property: Id(0)] string Silo, [property: Id(1)] string Text);
