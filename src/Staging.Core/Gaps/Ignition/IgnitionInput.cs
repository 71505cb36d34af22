namespace Staging.Core.Gaps;

/// <summary>An input of ignition that can be moved by a small share: grain and closures.</summary>
/// <param name="Name">Its path in the design.</param>
/// <param name="Unit">Unit of its value; <c>-</c> where there is none.</param>
/// <param name="Read">The value in that unit [-].</param>
/// <param name="Scale">The design with the value times a factor [-].</param>
internal sealed record IgnitionInput(string Name, string Unit, Func<GapDesign, double> Read, Func<GapDesign, double, GapDesign> Scale);
