using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Everything known about the burst of one engine's rotors.</summary>
internal sealed record EngineBurst
{
    public required Engine Engine { get; init; }
    public required FlightAir Air { get; init; }
    public required ValueList<RotorCase> Rotors { get; init; }
    public required ValueList<DebrisPiece> Pieces { get; init; }

    /// <summary>Whether a rotor or the blades of one could not be told, so that no screen can be shown to hold every piece.</summary>
    public required bool SomethingUnknown { get; init; }

    public string EngineName => string.IsNullOrWhiteSpace(Engine.Name) ? Engine.Id : Engine.Name;

    public DebrisPiece FarthestLanded => Pieces.MaxBy(p => p.LandingDistance.Planning)!;

    /// <summary>Heading from the nozzle towards the intake, along which rotors lie.</summary>
    public double IntakeHeadingDegrees => Heading.Normalised(Engine.ExhaustHeadingDegrees + 180);

    public static EngineBurst Of(Site site, Engine engine, List<Finding> findings)
    {
        var air = FlightAir.Of(site, engine);
        EngineSheet? sheet = engine.Sheet;
        if (sheet is null || sheet.Rotors.Count == 0)
        {
            findings.Add(NoRotors(engine));
            return new()
            {
                Engine = engine,
                Air = air,
                Rotors = [],
                Pieces = [],
                SomethingUnknown = true,
            };
        }

        RotorCase[] known =
        [
            .. sheet.Rotors.Select(r => RotorReader.Read(engine, sheet, r, findings)).OfType<RotorCase>(),
        ];
        return new()
        {
            Engine = engine,
            Air = air,
            Rotors = [.. known],
            Pieces = [.. known.SelectMany(r => PieceFactory.Of(engine.Id, r, air))],
            SomethingUnknown = known.Length < sheet.Rotors.Count || known.Any(r => r.BladeKilograms is null),
        };
    }

    private static Finding NoRotors(Engine engine) =>
        new("debris.no-rotors", Severity.Stop)
        {
            ElementId = engine.Id,
            Place = engine.Place,
            CannotTell = true,
            Row = ZoneRow.DirectFlight,
            Field = $"{nameof(EngineSheet)}.{nameof(EngineSheet.Rotors)}",
        };
}
