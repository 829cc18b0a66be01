using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Enclosures;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>
/// The sound field of a plan, built once and asked for points, grids and contours: every engine over the ground, walls
/// and screens of the site by ISO 9613-2:1996 (<see cref="OpenAirSite"/>), and the diffuse field of engines inside the hall
/// or tent. The same plan gives the same field.
/// </summary>
public sealed class SoundField : ISoundLevels
{
    private readonly Dictionary<string, EngineSound> _engines;
    private readonly Dictionary<(string EngineId, string StateId), RunningEngine> _running;
    private readonly HashSet<string> _inside;
    private readonly bool _enclosureUnknown;
    private readonly BandValues _airPerMetre;

    private SoundField(Plan plan, AirState air, SoundFindings findings)
    {
        Air = air;
        BandValues kilometre = AirAbsorption.BandsDecibelsPerKilometre(air);
        BandValues perMetre = kilometre.Map(AirAbsorption.PowerCoefficientPerMetre);
        _airPerMetre = perMetre;
        Enclosure = plan.Site.Enclosure is { } stated
            ? new EnclosureBuilder(stated, kilometre, findings).Build()
            : null;
        _enclosureUnknown = plan.Site.Enclosure is not null && Enclosure is null;
        Engines = [.. plan.Engines.DistinctBy(e => e.Id).Select(e => EngineSoundBuilder.Build(e, perMetre, findings))];
        _engines = Engines.ToDictionary(e => e.Id);
        OpenAirSite site = SiteGround.Of(plan.Site, perMetre);
        _inside = [.. Engines.Where(e => Enclosure?.Footprint.Contains(e.Place) == true).Select(e => e.Id)];
        _running = Engines
            .SelectMany(e => Running(e, new(site, Emitter.Of(e.Place, e.ExhaustHeadingDegrees), e.HeightMetres)))
            .ToDictionary(r => r.Key, r => r.Engine);
        SiteNotes.Say(plan, Enclosure, _inside, findings);
        Findings = findings.All;
    }

    /// <summary>The air calculated with.</summary>
    public AirState Air { get; }

    /// <summary>The engines as sources, in the order of the plan.</summary>
    public ValueList<EngineSound> Engines { get; }

    /// <summary>The hall or tent, or null when there is none or its field can't be told.</summary>
    public EnclosureSound? Enclosure { get; }

    /// <summary>What was found while building.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Builds the field of a plan; never fails, whatever the plan lacks.</summary>
    public static SoundField Build(Plan plan) => new(plan, SiteAir.Of(plan.Site), new SoundFindings());

    /// <inheritdoc/>
    public PointLevel? LevelAt(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    ) =>
        double.IsFinite(place.XMetres) && double.IsFinite(place.YMetres)
            ? Scene(stateByEngine)?.LevelAt(place, earHeightMetres)
            : null;

    /// <inheritdoc/>
    public LevelsOverPatch? PlanningLevels(IReadOnlyList<IReadOnlyDictionary<string, string>> combinations)
    {
        RunningEngine[]?[] running = [.. combinations.Select(RunningIn)];
        return running.Contains(null)
            ? null
            : new PatchScenes([.. running.OfType<RunningEngine[]>()], Enclosure).Levels;
    }

    /// <inheritdoc/>
    public Quantity? PeakDbCAt(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    ) =>
        Peaks(stateByEngine) is { } peaks && peaks.BestDbC(place, earHeightMetres) is var best && double.IsFinite(best)
            ? Quantity.CautiousHigh(best, best + peaks.ExpandedUncertaintyDb, Unit.DecibelC) with
            {
                Citations = ["iso-9613-2"],
                Sum = "outdoor-level",
            }
            : null;

    /// <inheritdoc/>
    public Func<Patch, EarRange, double>? HighestPeakDbC(IReadOnlyDictionary<string, string> stateByEngine) =>
        Peaks(stateByEngine) is { } peaks ? (patch, ears) => peaks.HighestDbC(patch, ears) : null;

    /// <inheritdoc/>
    public Geometry AreaAtOrAbove(
        IReadOnlyCollection<string> engineIds,
        Func<Patch, double> highest,
        double threshold
    ) =>
        new PatchTracer([
            .. Engines.Where(e => engineIds.Contains(e.Id)).Select(e => (e.Place, e.ExhaustHeadingDegrees)),
        ]).AreaAtOrAbove(highest, threshold);

    /// <summary>
    /// The area, circumscribed, where the planning level is at or above a level in dB(A), or null when it can't be told.
    /// </summary>
    /// <param name="planningDbA">The level.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 to 10 m.</param>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    public Geometry? ContourAt(
        double planningDbA,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    )
    {
        var ears = EarRange.At(Math.Max(0, earHeightMetres));
        return PlanningLevels([stateByEngine]) is { } levels
            ? AreaAtOrAbove([.. stateByEngine.Keys], patch => Highest(levels, patch, ears), planningDbA)
            : null;
    }

    /// <summary>Levels on a grid, or null when they can't be told.</summary>
    /// <param name="lowerLeft">Place of the first value.</param>
    /// <param name="stepMetres">Distance between neighbours, above 0.</param>
    /// <param name="columns">Values in a row, 1 or more.</param>
    /// <param name="rows">Number of rows, 1 or more.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 to 10 m.</param>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    /// <param name="cancel">Ends the work early when nobody waits for it any more.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No grid, or one over <see cref="Sound.LevelGrid.LargestCount"/>.</exception>
    public LevelGrid? Grid(
        PlanPoint lowerLeft,
        double stepMetres,
        int columns,
        int rows,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine,
        CancellationToken cancel = default
    )
    {
        LevelGrid.Refuse(stepMetres, columns, rows);
        return Scene(stateByEngine) is { } scene
            ? LevelGrid.Of(
                lowerLeft,
                (stepMetres, columns, rows),
                place => scene.LevelDbA(place, earHeightMetres),
                scene.ExpandedUncertaintyDb,
                cancel
            )
            : null;
    }

    /// <summary>
    /// The parts of the level at a place, the loudest first: their energies add up to that of <see cref="LevelAt"/>. Null
    /// where that is.
    /// </summary>
    /// <param name="place">Place on the plan, finite.</param>
    /// <param name="earHeightMetres">Height of the ear above ground, 0 to 10 m.</param>
    /// <param name="stateByEngine">Throttle state id by engine id.</param>
    public ValueList<LevelPart>? PartsAt(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    ) => RunningIn(stateByEngine) is { } running ? LevelParts.Of(running, Enclosure, place, earHeightMetres) : null;

    /// <summary>Parts of the uncertainty of the level of a state of an engine: source, then model.</summary>
    public ValueList<UncertaintyPart> UncertaintyOf(string engineId, StateSound state) =>
        [.. state.Uncertainty, Model(engineId)];

    /// <summary>
    /// Level minus power level in dB over open hard ground for each octave band: direct sound, floor image, air.
    /// </summary>
    /// <param name="horizontalMetres">Distance along the ground, 0 or more.</param>
    /// <param name="sourceHeightMetres">Height of the source, 0 or more.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 or more.</param>
    public BandValues OpenPathDb(double horizontalMetres, double sourceHeightMetres, double earHeightMetres) =>
        BandValues.Zero
        - FlatPath
            .Of(GroundFactors.Even(0), horizontalMetres, sourceHeightMetres, earHeightMetres, _airPerMetre)
            .LossDb;

    private static double Highest(LevelsOverPatch levels, in Patch patch, EarRange ears)
    {
        Span<double> dbA = stackalloc double[1];
        levels(patch, ears, Bound.Highest, dbA, []);
        return dbA[0];
    }

    private SoundScene? Scene(IReadOnlyDictionary<string, string> stateByEngine) =>
        RunningIn(stateByEngine) is { } running ? new(running, Enclosure) : null;

    private RunningEngine[]? RunningIn(IReadOnlyDictionary<string, string> stateByEngine)
    {
        var running = new (string EngineId, RunningEngine Engine)[stateByEngine.Count];
        int count = 0;
        foreach ((string engineId, string stateId) in stateByEngine)
        {
            if (_enclosureUnknown || !_running.TryGetValue((engineId, stateId), out RunningEngine? engine))
            {
                return null;
            }

            running[count++] = (engineId, engine);
        }

        // A fixed order, so that sums come out the same whatever the order of the dictionary.
        Array.Sort(running, (a, b) => string.CompareOrdinal(a.EngineId, b.EngineId));
        return Array.ConvertAll(running, r => r.Engine);
    }

    private PeakScene? Peaks(IReadOnlyDictionary<string, string> stateByEngine) =>
        PeakScene.Of(stateByEngine, _engines, Model);

    private IEnumerable<((string, string) Key, RunningEngine Engine)> Running(EngineSound engine, EngineWays ways)
    {
        foreach (StateSound state in engine.States)
        {
            if (state is { Power: { } power, SphereMeanDb: { } sphere })
            {
                yield return (
                    (engine.Id, state.StateId),
                    new(
                        engine.Id,
                        ways,
                        power,
                        _inside.Contains(engine.Id) ? [.. sphere.Map(Decibels.ToEnergy)] : null,
                        LevelUncertainty.ExpandedDb(UncertaintyOf(engine.Id, state))
                    )
                );
            }
        }
    }

    private UncertaintyPart Model(string engineId) =>
        _inside.Contains(engineId) ? LevelUncertainty.Enclosed : LevelUncertainty.Outdoors;
}
