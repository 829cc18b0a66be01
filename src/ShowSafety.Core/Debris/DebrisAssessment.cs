using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Where pieces of burst rotors would go: zones of rows 1 and 2, figures, findings, and every piece.</summary>
public sealed record DebrisAssessment : RoomAssessment
{
    /// <summary>Every piece of every rotor that can be told, engine by engine, rotor by rotor.</summary>
    public ValueList<DebrisPiece> Pieces { get; init; } = [];
}
