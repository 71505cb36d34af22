namespace Staging.Core.Gaps;

/// <summary>Holes out of the guide tube as plain SI numbers.</summary>
/// <param name="Station">Station at which they begin to draw [m].</param>
/// <param name="Spread">Length along the tube over which their middles lie [m].</param>
/// <param name="FrontThickness">Length over which they change from air to products [m].</param>
/// <param name="Outlet">The holes and what lies behind them.</param>
/// <param name="Stirring">Share of the stirring of a stream that ends here which reaches the nozzle plane [-]: exp(-depth/reach).</param>
internal readonly record struct VentParameters(double Station, double Spread, double FrontThickness, OutletParameters Outlet, double Stirring);
