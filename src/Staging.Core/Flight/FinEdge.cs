namespace Staging.Core.Flight;

/// <summary>How the edges of a fin are finished.</summary>
public enum FinEdge
{
    /// <summary>Cut square fore and aft.</summary>
    Square,

    /// <summary>Rounded fore and aft.</summary>
    Rounded,

    /// <summary>Rounded fore, tapered to a thin edge aft.</summary>
    Streamlined,
}
