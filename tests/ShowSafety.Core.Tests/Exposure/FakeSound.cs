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

    public Geometry AreaAtOrAbove(Func<PlanPoint, double> valueAt, double threshold)
    {
        PlanPoint centre = Places.Values.First();
        double low = 0.2;
        double high = 20_000;
        if (valueAt(centre.Along(0, low)) < threshold)
        {
            return SiteGeometry.Empty;
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = valueAt(centre.Along(0, middle)) >= threshold ? (middle, high) : (low, middle);
        }

        return SiteGeometry.CircleAround(centre, high);
    }
}
