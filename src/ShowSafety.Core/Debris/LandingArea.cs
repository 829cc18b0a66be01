using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Row 2: where lobbed pieces come down. No field is large enough to empty it: somebody accepts it by name.</summary>
internal static class LandingArea
{
    private const string Code = "debris.landing-area";

    private static readonly ValueList<string> Sources =
    [
        DebrisSources.QuadraticDrag,
        DebrisSources.BestRange,
        DebrisSources.WindProfile,
    ];

    public static Zone Zone(EngineBurst burst)
    {
        Quantity reach = ReachOf(burst);
        double near = burst.Rotors.Min(r => r.NearestPlaneMetres);
        double far = burst.Rotors.Max(r => r.FarthestPlaneMetres);
        PlanPoint centre = burst.Engine.Place.Along(burst.IntakeHeadingDegrees, (near + far) / 2);
        double start = ((far - near) / 2) + burst.Rotors.Max(r => r.TipRadiusMetres);
        return new(
            ZoneRow.LandingArea,
            burst.Engine.Id,
            ZoneEffect.Informs,
            Audience.Everyone,
            Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.CircleAround(centre, reach.Planning + start)
        )
        {
            Reach = reach,
            Citations = Sources,
        };
    }

    /// <summary>Farthest landing of any piece.</summary>
    public static Quantity ReachOf(EngineBurst burst)
    {
        Quantity farthest = burst.FarthestLanded.LandingDistance;
        return Quantity.CautiousHigh(burst.Pieces.Max(p => p.LandingDistance.Best), farthest.Planning, Unit.Metre) with
        {
            Pedigree = farthest.Pedigree,
            Citations = farthest.Citations,
            Sum = farthest.Sum,
        };
    }

    public static Finding Finding(EngineBurst burst, Decisions? decisions)
    {
        Acceptance? acceptance = decisions?.Acceptances.FirstOrDefault(a =>
            a.Finding == Code && a.ElementId == burst.Engine.Id && !string.IsNullOrWhiteSpace(a.By)
        );
        ValueList<FindingArgument> arguments =
        [
            FindingArgument.Of("reach", ReachOf(burst)),
            FindingArgument.Of("energy", burst.Pieces.MaxBy(p => p.LandingEnergy.Planning)!.LandingEnergy),
        ];
        return acceptance is null
            ? Make(Code, Severity.Act, arguments)
            : Make(
                "debris.landing-area-accepted",
                Severity.Note,
                [.. arguments, FindingArgument.Of("by", acceptance.By)]
            );

        Finding Make(string code, Severity severity, ValueList<FindingArgument> values) =>
            new(code, severity)
            {
                ElementId = burst.Engine.Id,
                Place = burst.Engine.Place,
                Row = ZoneRow.LandingArea,
                Arguments = values,
                Citations = Sources,
            };
    }
}
