using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>One drill.</summary>
/// <param name="Label">What is stamped on it, for example <c>3.2 mm</c> or <c>7/64 in</c>.</param>
/// <param name="Diameter">Its diameter.</param>
public sealed record DrillSize(string Label, Length Diameter);
