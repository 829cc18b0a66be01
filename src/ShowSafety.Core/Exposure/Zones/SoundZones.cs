using NetTopologySuite.Geometries;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Programme;
using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Zones;

/// <summary>Rows 12 to 15 of the zones table: hearing zone, audience limit, ceilings, level at the ear.</summary>
public static class SoundZones
{
    /// <summary>Level of the hearing zone in dB(A), whatever the stay (upper action value of Directive 2003/10/EC).</summary>
    public const double HearingZoneDbA = 85;

    /// <summary>Ceiling for an unprotected ear in dB(A), slow (29 CFR 1910.95 table G-16).</summary>
    public const double CeilingDbA = 115;

    /// <summary>Ceiling of the C-weighted peak for adults in dB(C) (WHO community noise, 1999).</summary>
    public const double PeakCeilingDbC = 140;

    /// <summary>Ceiling of the peak for children in dB(C) (WHO community noise, 1999).</summary>
    public const double ChildPeakCeilingDbC = 120;

    private const Phases WhileLoud = Phases.Start | Phases.Running;

    /// <summary>The zones and what can't be told about them.</summary>
    public static (ValueList<Zone> Zones, ValueList<Finding> Findings) Of(PersonContext context)
    {
        ValueList<StateCombination> combinations = LoudestStates.Of(context.Plan, context.Timeline, context.Sound);
        if (combinations.Count == 0)
        {
            return ([], []);
        }

        var levels = new ProgrammeLevels(combinations, context.Sound);
        var drawing = new ZoneDrawing(context, combinations);
        var findings = new List<Finding>();
        var zones = new List<Zone>();
        if (levels.HasLevels)
        {
            zones.AddRange(LevelZones(context, drawing, levels));
        }
        else
        {
            findings.Add(
                new("exposure.level-unknown", Severity.Stop)
                {
                    CannotTell = true,
                    Field = "EngineSheet.Measurements",
                    Row = ZoneRow.AudienceLimit,
                }
            );
        }

        if (levels.HasPeaks)
        {
            zones.AddRange(PeakZones(drawing, levels));
        }
        else
        {
            findings.Add(
                new("exposure.peak-unknown", Severity.Act)
                {
                    CannotTell = true,
                    Field = "SoundMeasurement.PeakDbC",
                    Row = ZoneRow.SoundCeiling,
                    Citations = ["who-community-noise-1999"],
                }
            );
        }

        return ([.. zones.Where(zone => !zone.Area.IsEmpty)], [.. findings]);
    }

    private static IEnumerable<Zone> LevelZones(PersonContext context, ZoneDrawing drawing, ProgrammeLevels levels)
    {
        yield return drawing.Zone(
            new(ZoneRow.HearingZone, ZoneEffect.Requires, Audience.Everyone, WhileLoud, "", "directive-2003-10-ec"),
            drawing.AreaAtOrAbove(levels.LoudestDbA, HearingZoneDbA),
            Quantity.Plain(HearingZoneDbA, Unit.DecibelA)
        );
        foreach (Zone zone in AudienceZones(context, drawing, levels))
        {
            yield return zone;
        }

        yield return drawing.Zone(
            new(ZoneRow.SoundCeiling, ZoneEffect.Excludes, Public, WhileLoud, "level", "osha-1910-95"),
            drawing.AreaAtOrAbove(levels.LoudestDbA, CeilingDbA),
            Quantity.Plain(CeilingDbA, Unit.DecibelA)
        );
        WornBound[] rated = [.. context.Plan.Protectors.Where(WornProtector.IsRated).Select(p => new WornBound(p))];
        if (rated.Length > 0)
        {
            yield return drawing.Zone(
                new(
                    ZoneRow.AtTheEar,
                    ZoneEffect.Excludes,
                    Audience.Crew | Audience.Exhibitors,
                    Phases.Running,
                    "",
                    "en-458-2016"
                ),
                drawing.AreaAtOrAbove(patch => levels.UnderBestProtectorDbA(patch, rated), ProtectionFits.ActionDbA),
                Quantity.Plain(ProtectionFits.ActionDbA, Unit.DecibelA)
            );
        }
    }

    private static Audience Public => Audience.Visitors | Audience.Children;

    private static IEnumerable<Zone> AudienceZones(PersonContext context, ZoneDrawing drawing, ProgrammeLevels levels)
    {
        // Without a programme the audience's exposure can't be told; the finding about the programme says so.
        if (context.Timeline.Combinations.Count == 0)
        {
            yield break;
        }

        var stay = StayPattern.Whole(context.Timeline);
        double backgroundDbA = CautiousValues.Of<PersonGroup>(nameof(PersonGroup.OtherExposureDbA));
        foreach (RuleSet set in context.RuleSets.Where(s => s.Covers.Kind == RuleKind.Audience))
        {
            foreach (RuleClause clause in set.Clauses.Where(c => c.Duty == Duty.KeepAudienceOut))
            {
                if (RuleMetrics.Of(clause, stay, backgroundDbA) is { } metric)
                {
                    yield return drawing.Zone(
                        new(
                            ZoneRow.AudienceLimit,
                            ZoneEffect.Excludes,
                            set.Covers.Children ? Public : Audience.Visitors,
                            Phases.Running,
                            set.Id,
                            set.Source.Citation
                        ),
                        drawing.AreaAtOrAbove(patch => levels.MetricAt(patch, metric), clause.Limit),
                        Quantity.Plain(clause.Limit, clause.LimitUnit())
                    );
                }
            }
        }
    }

    private static IEnumerable<Zone> PeakZones(ZoneDrawing drawing, ProgrammeLevels levels)
    {
        (double Limit, Audience Whom, string Part)[] ceilings =
        [
            (PeakCeilingDbC, Public, "peak"),
            (ChildPeakCeilingDbC, Audience.Children, "child-peak"),
        ];
        foreach ((double limit, Audience whom, string part) in ceilings)
        {
            Geometry area = drawing.AreaAtOrAbove(levels.PeakDbC, limit);
            yield return drawing.Zone(
                new(ZoneRow.SoundCeiling, ZoneEffect.Excludes, whom, WhileLoud, part, "who-community-noise-1999"),
                area,
                Quantity.Plain(limit, Unit.DecibelC)
            );
        }
    }
}
