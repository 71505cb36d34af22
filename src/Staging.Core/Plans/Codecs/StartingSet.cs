namespace Staging.Core.Plans.Codecs;

/// <summary>A named set of numbers of the library.</summary>
/// <param name="Name">Its name in a plan.</param>
/// <param name="Meaning">What it stands for, in words.</param>
/// <param name="Make">Its value.</param>
internal sealed record StartingSet<T>(string Name, string Meaning, Func<T> Make);
