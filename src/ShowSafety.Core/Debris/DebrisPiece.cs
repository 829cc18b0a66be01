using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Kinds of pieces looked at for every rotor.</summary>
public enum PieceKind
{
    /// <summary>One of two halves: slower than a third, and heavier for its drag.</summary>
    HalfDisc,

    /// <summary>One of three thirds: the most energy a whole-number burst gives one piece.</summary>
    OneThirdDisc,

    /// <summary>One of four quarters.</summary>
    QuarterDisc,

    /// <summary>Intermediate fragment of AC 20-128A: a thirtieth of the mass at rim speed.</summary>
    Intermediate,

    /// <summary>One blade, at most at tip speed.</summary>
    Blade,
}

/// <summary>
/// One piece of a burst rotor: how it leaves, how far it flies. Chances are conditional on a burst; no rate of bursts
/// is published for engines of this size and none is assumed.
/// </summary>
/// <param name="EngineId">Id of the engine.</param>
/// <param name="RotorId">Id of the rotor.</param>
/// <param name="Kind">Which piece.</param>
public sealed record DebrisPiece(string EngineId, string RotorId, PieceKind Kind)
{
    /// <summary>Mass in g.</summary>
    public required Quantity Mass { get; init; }

    /// <summary>Speed of release in m/s.</summary>
    public required Quantity Speed { get; init; }

    /// <summary>Energy of flight at release in J.</summary>
    public required Quantity Translation { get; init; }

    /// <summary>Energy of spin at release in J.</summary>
    public required Quantity Spin { get; init; }

    /// <summary>Area shown to the air in cm²: tumbling, and in the attitude with the least drag.</summary>
    public required Quantity Area { get; init; }

    /// <summary>Diameter of the smallest face that can strike a screen in mm.</summary>
    public required Quantity EdgeDiameter { get; init; }

    /// <summary>Energy per area of that face at release in J/m²: what small pieces are judged by.</summary>
    public required Quantity EnergyPerArea { get; init; }

    /// <summary>Distance of level flight, gravity left out, to 11 ft·lb (14.914 J) in m.</summary>
    public required Quantity FlatFireDistance { get; init; }

    /// <summary>Farthest landing over all launch angles in m; planning with the day's wind and the least drag.</summary>
    public required Quantity LandingDistance { get; init; }

    /// <summary>Greatest height of that flight in m.</summary>
    public required Quantity LandingApex { get; init; }

    /// <summary>Energy at that landing in J.</summary>
    public required Quantity LandingEnergy { get; init; }
}
