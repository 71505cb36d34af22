namespace Staging.Core.Gaps;

/// <summary>Holes out of the guide tube as plain SI numbers.</summary>
/// <param name="Station">Station at which the front has passed them all, and no further than the stream goes
/// [m].</param>
/// <param name="FrontThickness">Length up to there over which they change from air to products [m].</param>
/// <param name="Middle">Station of their middle [m].</param>
/// <param name="Spread">Length along the tube over which their middles lie [m].</param>
/// <param name="Outlet">The holes and what lies behind them.</param>
/// <param name="Stirring">Share of the stirring of a stream that ends here which reaches the nozzle plane [-]: the mean
/// of exp(-depth/reach) over the holes.</param>
internal readonly record struct VentParameters(double Station, double FrontThickness, double Middle, double Spread, OutletParameters Outlet,
    double Stirring);
