using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Layout;

/// <summary>Areas as unions of zones, built before anything is clipped to the site.</summary>
public static class KeepOut
{
    /// <summary>The zones that exclude an audience, in the order given.</summary>
    public static ValueList<Zone> Excluding(IEnumerable<Zone> zones, Audience whom) =>
        [.. zones.Where(z => z.Effect == ZoneEffect.Excludes && (z.Whom & whom) != 0 && !z.Area.IsEmpty)];

    /// <summary>Who stands at the crowd line: visitors, and children unless the plan says that none come.</summary>
    public static Audience PublicOf(Plan plan)
    {
        PersonGroup[] visitors = [.. plan.People.Where(p => p.Role == PersonRole.Visitor)];
        return visitors.Length == 0 || visitors.Any(Occupants.MayHoldChildren)
            ? Audience.Visitors | Audience.Children
            : Audience.Visitors;
    }

    /// <summary>The union of the zones that exclude an audience.</summary>
    public static Geometry For(IEnumerable<Zone> zones, Audience whom) =>
        SiteGeometry.Union(Excluding(zones, whom).Select(z => z.Area));

    /// <summary>Whether people inside a row while it applies are a stop; otherwise they are an act.</summary>
    /// <remarks>The rows that kill or maim: debris, jet, start flame, ceiling level, indoor air.</remarks>
    public static Severity SeverityOf(ZoneRow row) =>
        row
            is ZoneRow.DirectFlight
                or ZoneRow.JetSpeedPublic
                or ZoneRow.JetSpeedCrew
                or ZoneRow.JetHeatPublic
                or ZoneRow.JetHeatCrew
                or ZoneRow.StartFlame
                or ZoneRow.SoundCeiling
                or ZoneRow.IndoorAir
            ? Severity.Stop
            : Severity.Act;
}
