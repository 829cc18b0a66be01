using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>Where an engine's jet starts, what air it blows into and which walls stand about.</summary>
internal sealed class EngineJetFrame
{
    // Nozzle radius taken where neither nozzle nor casing is known; it only widens zones.
    private const double UnknownNozzleRadiusMetres = 0.1;

    /// <summary>Takes the frame of an engine on a site.</summary>
    public EngineJetFrame(Engine engine, AmbientAir air, ValueList<WallPiece> walls)
    {
        Engine = engine;
        Air = air;
        Pieces = walls;
        NozzleRadiusMetres =
            (engine.Sheet?.NozzleDiameterMetres ?? engine.Sheet?.CasingDiameterMetres)?.Value / 2
            ?? UnknownNozzleRadiusMetres;
        // An unknown height counts as none: the jet is taken to run along the floor.
        FloorContactMetres = engine.ShaftHeightMetres is { } height
            ? Surfaces.ContactMetres(height.Value, JetConstants.HalfSpeedSlopeHigh)
            : 0;
    }

    /// <summary>The engine.</summary>
    public Engine Engine { get; }

    /// <summary>The air.</summary>
    public AmbientAir Air { get; }

    /// <summary>The walls of the site.</summary>
    public ValueList<WallPiece> Pieces { get; }

    /// <summary>Radius of the nozzle, m.</summary>
    public double NozzleRadiusMetres { get; }

    /// <summary>Nearest distance at which the jet's edge may meet the floor, m.</summary>
    public double FloorContactMetres { get; }

    /// <summary>Zone of a jet over a threshold on the plan.</summary>
    public Geometry ZoneOf(DecayingJet jet, double threshold) =>
        jet.Zone(threshold, Engine.Place, Engine.ExhaustHeadingDegrees);

    /// <summary>Whether a wall runs along the jet inside an area.</summary>
    public bool RunsBesideWall(Geometry area) =>
        !area.IsEmpty
        && Pieces.Any(p => p.RunsAlong(Engine.ExhaustHeadingDegrees) && p.Line is { } line && line.Intersects(area));

    /// <summary>Axial and radial distance of a point from the nozzle, m; axial under 0 in front of the nozzle plane.</summary>
    public (double Axial, double Radial) Of(Coordinate point)
    {
        (double sin, double cos) = Math.SinCos(Heading.ToRadians(Engine.ExhaustHeadingDegrees));
        double x = point.X - Engine.Place.XMetres;
        double y = point.Y - Engine.Place.YMetres;
        return ((x * sin) + (y * cos), Math.Abs((x * cos) - (y * sin)));
    }
}
