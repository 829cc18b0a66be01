using NetTopologySuite.Geometries;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>What a sound zone is, apart from its area.</summary>
/// <param name="Row">Row of the zones table.</param>
/// <param name="Effect">What it does.</param>
/// <param name="Whom">Whom it binds.</param>
/// <param name="When">When it applies.</param>
/// <param name="Part">Finer name.</param>
/// <param name="Citation">Id of its source.</param>
public readonly record struct ZoneKind(
    ZoneRow Row,
    ZoneEffect Effect,
    Audience Whom,
    Phases When,
    string Part,
    string Citation
);

/// <summary>Turns areas into zones with the engine they come from and their reach.</summary>
public sealed class ZoneDrawing
{
    /// <summary>Element id of a zone several engines make together.</summary>
    public const string SeveralEngines = "programme";

    private readonly PlanPoint[] _engines;
    private readonly string _elementId;
    private readonly string[] _running;
    private readonly ISoundLevels _sound;

    /// <summary>Makes the drawing of the zones of some combinations.</summary>
    /// <param name="context">Plan and sound.</param>
    /// <param name="combinations">The combinations of running states.</param>
    public ZoneDrawing(PersonContext context, ValueList<StateCombination> combinations)
    {
        _running = [.. combinations.SelectMany(c => c.StateByEngine.Keys).Distinct()];
        _elementId = _running.Length == 1 ? _running[0] : SeveralEngines;
        _engines = [.. context.Plan.Engines.Where(e => _running.Contains(e.Id)).Select(e => e.Place)];
        _sound = context.Sound;
    }

    /// <summary>The area where a value may be at or above a threshold.</summary>
    public Geometry AreaAtOrAbove(Func<Patch, double> highest, double threshold) =>
        _sound.AreaAtOrAbove(_running, highest, threshold);

    /// <summary>The zone of an area; its reach is the farthest corner from the nearest engine.</summary>
    public Zone Zone(ZoneKind kind, Geometry area, Quantity boundary) =>
        new(kind.Row, _elementId, kind.Effect, kind.Whom, kind.When, ZoneFrame.Site, area)
        {
            Part = kind.Part,
            Citations = [kind.Citation],
            Boundary = boundary with { Citations = [kind.Citation] },
            Reach = Reach(area),
        };

    private Quantity? Reach(Geometry area)
    {
        if (area.IsEmpty || _engines.Length == 0)
        {
            return null;
        }

        double reach = area
            .Coordinates.Select(SiteGeometry.PlanPoint)
            .Max(corner => _engines.Min(engine => engine.DistanceMetres(corner)));
        return Quantity.Plain(reach, Unit.Metre);
    }
}
