using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;

namespace ShowSafety.Core.Tests.Exposure;

/// <summary>
/// A point source in free space for each engine: 20 lg r from a level at one metre per throttle state. States without a
/// level can't be told.
/// </summary>
internal sealed class FakeSound : ISoundLevels
{
    public required IReadOnlyDictionary<string, PlanPoint> Places { get; init; }

    public required IReadOnlyDictionary<string, double> LevelAtOneMetre { get; init; }

    public double UncertaintyDb { get; init; } = 3;

    public double CMinusADb { get; init; }

    public double? PeakOverLevelDb { get; init; } = 15;

    public PointLevel? LevelAt(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    )
    {
        if (stateByEngine.Any(s => !LevelAtOneMetre.ContainsKey(s.Value) || !Places.ContainsKey(s.Key)))
        {
            return null;
        }

        double level = Decibels.Sum(
            stateByEngine.Select(s =>
                LevelAtOneMetre[s.Value] - (20 * Math.Log10(Math.Max(0.1, Places[s.Key].DistanceMetres(place))))
            )
        );
        return new(BandValues.Uniform(level - 9), level, level + CMinusADb, UncertaintyDb);
    }

    public Quantity? PeakDbCAt(
        PlanPoint place,
        double earHeightMetres,
        IReadOnlyDictionary<string, string> stateByEngine
    ) =>
        PeakOverLevelDb is { } over && LevelAt(place, earHeightMetres, stateByEngine) is { } level
            ? Quantity.CautiousHigh(level.LevelDbA + over, level.PlanningDbA + over, Unit.DecibelC)
            : null;

    public LevelsOverPatch? PlanningLevels(IReadOnlyList<IReadOnlyDictionary<string, string>> combinations) =>
        combinations.Any(c => LevelAt(default, 0, c) is null)
            ? null
            : (in patch, _, bound, dbA, dbC) =>
            {
                for (int i = 0; i < combinations.Count; i++)
                {
                    dbA[i] = Over(patch, combinations[i], bound) + UncertaintyDb;
                    if (!dbC.IsEmpty)
                    {
                        dbC[i] = dbA[i] + CMinusADb;
                    }
                }
            };

    public Func<Patch, EarRange, double>? HighestPeakDbC(IReadOnlyDictionary<string, string> stateByEngine) =>
        PeakDbCAt(default, 0, stateByEngine) is null
            ? null
            : (patch, _) => Over(patch, stateByEngine, Bound.Highest) + UncertaintyDb + PeakOverLevelDb!.Value;

    public Geometry AreaAtOrAbove(
        IReadOnlyCollection<string> engineIds,
        Func<Patch, double> highest,
        double threshold
    ) => new PatchTracer([.. engineIds.Select(id => (Places[id], 0.0))]).AreaAtOrAbove(highest, threshold);

    private double Over(in Patch patch, IReadOnlyDictionary<string, string> stateByEngine, Bound bound)
    {
        double sum = 0;
        foreach ((string engine, string state) in stateByEngine)
        {
            (double least, double most) = patch.DistancesMetres(Places[engine]);
            double metres = Math.Max(0.1, bound == Bound.Highest ? least : most);
            sum += Decibels.ToEnergy(LevelAtOneMetre[state]) / (metres * metres);
        }

        return Decibels.FromEnergy(sum);
    }
}
