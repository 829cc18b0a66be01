using System.Globalization;
using System.Text;
using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Files;

/// <summary>Writes levels on a grid inside the site as comma-separated values, described in docs/assessment-file.md.</summary>
public static class LevelsCsv
{
    private const double EarHeightMetres = 1.6;
    private const int MostPoints = 4000;

    /// <summary>The table, a header line first, with LF line ends. Lengths to 1 mm, levels to 0.01 dB.</summary>
    public static string Write(Plan plan, Assessment assessment)
    {
        var text = new StringBuilder("state,x_metres,y_metres,ear_height_metres,best_dba,planning_dba,status\n");
        SoundField field = SoundField.Build(plan);
        SortedDictionary<string, string> states = LoudestStates(assessment.Sound);
        string state = Quoted(string.Join(' ', states.Select(s => $"{s.Key}:{s.Value}")));
        foreach (PlanPoint place in Places(plan.Site.Outline))
        {
            // No engine with a known level is "cannot tell", never silence.
            PointLevel? level = states.Count == 0 ? null : field.LevelAt(place, EarHeightMetres, states);
            text.Append(CultureInfo.InvariantCulture, $"{state},{place.XMetres:0.000},{place.YMetres:0.000},")
                .Append(CultureInfo.InvariantCulture, $"{EarHeightMetres:0.000},{level?.LevelDbA:0.00},")
                .Append(CultureInfo.InvariantCulture, $"{level?.PlanningDbA:0.00},{Status(assessment)}\n");
        }

        return text.ToString();
    }

    // Ids are the user's own words and may hold a comma (RFC 4180).
    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(',', '"') ? '"' + text.Replace("\"", "\"\"", StringComparison.Ordinal) + '"' : text;

    private static string Status(Assessment assessment)
    {
        string verdict = assessment.NotToRun ? Headline.NotToRun : "planning aid";
        return assessment.IsExample ? $"{Headline.Example} {verdict}" : verdict;
    }

    private static SortedDictionary<string, string> LoudestStates(SoundAssessment sound)
    {
        var loudest = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (IGrouping<string, SourceSummary> engine in sound.Sources.GroupBy(s => s.EngineId))
        {
            if (engine.Where(s => s.PowerDbA is not null).MaxBy(s => s.PowerDbA!.Planning) is { } source)
            {
                loudest[engine.Key] = source.StateId;
            }
        }

        return loudest;
    }

    private static IEnumerable<PlanPoint> Places(ValueList<PlanPoint> outline)
    {
        Polygon site = SiteGeometry.Polygon(outline);
        Envelope window = site.EnvelopeInternal;
        double step = StepMetres(window);
        for (double y = window.MinY; y <= window.MaxY; y += step)
        {
            for (double x = window.MinX; x <= window.MaxX; x += step)
            {
                var place = new PlanPoint(x, y);
                if (site.Covers(SiteGeometry.Point(place)))
                {
                    yield return place;
                }
            }
        }
    }

    /// <summary>A whole number of decimetres, so that the table stays readable and under its largest size.</summary>
    private static double StepMetres(Envelope window) =>
        Math.Max(0.1, Math.Ceiling(10 * Math.Sqrt(window.Area / MostPoints)) / 10);
}
