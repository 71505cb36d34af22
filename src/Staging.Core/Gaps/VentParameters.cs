namespace Staging.Core.Gaps;

/// <summary>Holes out of the guide tube as plain SI numbers.</summary>
/// <param name="Station">Station at which they begin to draw [m].</param>
/// <param name="FrontThickness">Length over which they change from air to products [m].</param>
/// <param name="Outlet">The holes and what lies behind them.</param>
/// <param name="IsLast">Whether the stream ends here.</param>
internal readonly record struct VentParameters(double Station, double FrontThickness, OutletParameters Outlet, bool IsLast);
