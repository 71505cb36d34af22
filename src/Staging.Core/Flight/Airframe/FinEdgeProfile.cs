namespace Staging.Core.Flight;

/// <summary>How the edges of a fin are finished.</summary>
public enum FinEdgeProfile
{
    /// <summary>Cut square fore and aft.</summary>
    Blunt,

    /// <summary>Rounded fore and aft.</summary>
    RoundNosed,

    /// <summary>Rounded fore, tapered to a thin edge aft.</summary>
    Tapered,
}
