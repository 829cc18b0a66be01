using System.Collections.Frozen;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>A surface of a hall or tent.</summary>
/// <param name="Id">Id used in plans, lower case with hyphens.</param>
/// <param name="Name">What it is, in words.</param>
/// <param name="Absorption">
/// Absorption coefficients of the octave bands. Sources print 125 Hz to 4 kHz; 63 Hz and 8 kHz repeat their neighbours.
/// </param>
/// <param name="CitationId">Source of the coefficients.</param>
/// <param name="Basis">How well they are known.</param>
public sealed record Material(string Id, string Name, BandValues Absorption, string CitationId, Basis Basis);

/// <summary>Absorption coefficients of surfaces and the absorption of people, with where they come from.</summary>
public static class Materials
{
    /// <summary>Id of the fabric of a tent, whose absorption follows from its mass: no row of the table.</summary>
    public const string FabricId = "tent-fabric";

    /// <summary>Id of the surface assumed where nobody names one: the least absorbing.</summary>
    public const string LeastAbsorbingId = "concrete-sealed";

    /// <summary>
    /// Share of the energy a coated fabric turns into heat, besides what passes through it: a few per cent, a choice.
    /// </summary>
    public const double FabricDissipation = 0.02;

    private const string Tables = "absorption-tables";
    private const string Egan = "egan-absorption";

    /// <summary>All surfaces in a fixed order.</summary>
    public static ValueList<Material> All { get; } =
    [
        Of(LeastAbsorbingId, "concrete, sealed or painted", [.01, .01, .02, .02, .02, .02], Tables),
        Of("concrete-smooth", "concrete, smooth, unpainted", [.01, .01, .02, .02, .02, .05], Tables),
        Of("concrete-rough", "concrete, rough", [.02, .03, .03, .03, .04, .07], Tables),
        Of("terrazzo", "terrazzo or tiled floor", [.01, .01, .015, .02, .02, .02], Tables),
        Of("wood-floor-joists", "wooden floor on joists", [.15, .11, .10, .07, .06, .07], Tables),
        Of("wood-platform", "wooden platform over a void", [.40, .30, .20, .20, .15, .10], Tables),
        Of("parquet", "parquet on concrete", [.04, .04, .07, .06, .06, .07], Tables),
        Of("block-painted", "concrete blocks, painted", [.10, .05, .06, .07, .09, .08], Tables),
        Of("block-coarse", "concrete blocks, coarse", [.36, .44, .31, .29, .39, .25], Tables),
        Of("brick", "brick, unglazed", [.03, .03, .03, .04, .05, .07], Tables),
        Of("brick-painted", "brick, painted", [.01, .01, .02, .02, .02, .03], Tables),
        Of("plasterboard-studs", "plasterboard 12 mm on studs", [.29, .10, .06, .05, .04, .04], Tables),
        Of("plasterboard-airspace", "plasterboard, 100 mm airspace", [.30, .12, .08, .06, .06, .05], Tables),
        Of("glass-heavy", "glass, large heavy panes", [.18, .06, .04, .03, .02, .02], Tables),
        Of("glass-window", "window glass", [.35, .25, .18, .12, .07, .04], Tables),
        Of("curtain-light", "light curtain, flat", [.03, .04, .11, .17, .24, .35], Tables),
        Of("curtain-medium", "medium curtain, draped to half", [.07, .31, .49, .75, .70, .60], Tables),
        Of("curtain-heavy", "heavy curtain, draped to half", [.14, .35, .55, .72, .70, .65], Tables),
        Of("steel-profiled", "profiled steel sheet", [.40, .30, .25, .20, .10, .10], "absorption-profiled-steel", true),
        Of("grass", "grass, 50 mm", [.11, .26, .60, .69, .92, .99], Egan, true),
        Of("gravel", "gravel, loose and moist, 100 mm", [.25, .60, .65, .70, .75, .80], Egan, true),
        Of("soil-rough", "rough soil", [.15, .25, .40, .55, .60, .60], Egan, true),
        Of("open", "open to the outside", [1, 1, 1, 1, 1, 1], "open-side-definition"),
    ];

    private static readonly FrozenDictionary<string, Material> ById = All.ToFrozenDictionary(m => m.Id);

    /// <summary>
    /// Absorption of one standing person in m²: the shape of people without coats, brought down to 0.4 m² at 1 kHz, the
    /// least that is published (light summer dress).
    /// </summary>
    public static BandValues PersonSquareMetres { get; } =
        Extended([.12, .24, .59, .98, 1.13, 1.12]).Map(a => a * 0.4 / 0.98);

    /// <summary>The surface with an id, or null.</summary>
    public static Material? Find(string id) => ById.GetValueOrDefault(id);

    private static Material Of(string id, string name, double[] absorption, string citation, bool memory = false) =>
        new(id, name, Extended(absorption), citation, memory ? Basis.Memory : Basis.Read);

    private static BandValues Extended(double[] middle) => BandValues.Of([middle[0], .. middle, middle[^1]]);
}
