using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>What a plan says of ground and structures, as the open air needs it.</summary>
public static class SiteGround
{
    /// <summary>Factor of loose gravel: neither of the standard's two kinds, so the middle. A choice.</summary>
    public const double GravelFactor = 0.5;

    /// <summary>G of a kind of ground, ISO 9613-2:1996 clause 7.3.1. Boards over soft ground are hard; unknown ground too.</summary>
    public static double FactorOf(GroundKind? kind) =>
        kind switch
        {
            GroundKind.Grass => 1,
            GroundKind.Gravel => GravelFactor,
            _ => 0,
        };

    /// <summary>G of a patch: the factor stated, otherwise that of its kind.</summary>
    public static double FactorOf(GroundPatch patch) =>
        patch.GroundFactor is { Value: var stated } && double.IsFinite(stated)
            ? Math.Clamp(stated, 0, 1)
            : FactorOf(patch.Kind);

    /// <summary>
    /// The mapped ground of a site. A patch without an outline is left out; the floor of a hall or tent counts as hard,
    /// whatever it is: the method is for the open air, and takes nothing off under a roof.
    /// </summary>
    public static GroundProfile ProfileOf(Site site)
    {
        double elsewhere = FactorOf(site.Ground);
        ValueList<GroundPiece> pieces =
        [
            .. site.GroundPatches.Where(p => p.Outline.Count >= 3).Select(p => new GroundPiece(p.Outline, FactorOf(p))),
            .. Floor(site.Enclosure),
        ];
        // Where all is alike, where a piece ends doesn't matter and need not be looked for on every way.
        return new(pieces.Any(p => p.Factor != elsewhere) ? pieces : [], elsewhere);
    }

    private static IEnumerable<GroundPiece> Floor(Enclosure? enclosure) =>
        enclosure is { Footprint: { Count: >= 3 } floor } ? [new(floor, 0)] : [];

    /// <summary>The site as the open air needs it.</summary>
    /// <param name="site">The site.</param>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public static OpenAirSite Of(Site site, BandValues airPerMetre) =>
        new(
            ProfileOf(site),
            [.. site.Structures.Select(Obstacle.Of).OfType<Obstacle>()],
            [.. site.Structures.SelectMany(ReflectingWall.Of)],
            airPerMetre
        );
}
