using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Screens;

namespace ShowSafety.Core.Sound;

/// <summary>Says what of ground and structures counts outdoors, and where ISO 9613-2:1996 ends (Table 5, clause 5; from memory).</summary>
internal static class OutdoorNotes
{
    // Wind the method is made for, measured 3 m to 11 m above the ground, and the distance its accuracy is stated to.
    private const double MostWindMetresPerSecond = 5;
    private const double MostMetres = 1000;

    /// <summary>Adds the findings.</summary>
    public static void Say(Plan plan, SoundFindings findings)
    {
        Ground(plan.Site, findings);
        Structures(plan.Site, findings);
        Wind(plan.Site, findings);
        Distance(plan, findings);
    }

    private static void Ground(Site site, SoundFindings findings)
    {
        if (SiteGround.FactorOf(site.Ground) > 0 || site.GroundPatches.Any(p => SiteGround.FactorOf(p) > 0))
        {
            findings.Add("sound.soft-ground-credited", Severity.Note, null, "Site.GroundPatches");
        }

        if (
            site.Ground == GroundKind.Gravel
            || site.GroundPatches.Any(p => p is { Kind: GroundKind.Gravel, GroundFactor: null })
        )
        {
            findings.Add("sound.gravel-assumed", Severity.Note, null, "GroundPatch.GroundFactor");
        }
    }

    private static void Structures(Site site, SoundFindings findings)
    {
        if (site.Structures.Count > 0)
        {
            findings.Add("sound.structures-counted", Severity.Note, null);
        }

        foreach (Structure structure in site.Structures.Where(s => s.Kind != StructureKind.BlastDeflector))
        {
            if (Obstacle.Of(structure) is null)
            {
                findings.Add(
                    "sound.structure-shields-nobody",
                    Severity.Note,
                    structure.Id,
                    "Structure.MassKilogramsPerSquareMetre"
                );
            }
        }
    }

    private static void Wind(Site site, SoundFindings findings)
    {
        if (site.Weather?.HighestWindMetresPerSecond is { Value: > MostWindMetresPerSecond and var wind })
        {
            findings.Add(
                "sound.wind-outside-method",
                Severity.Note,
                null,
                "WeatherBand.HighestWindMetresPerSecond",
                FindingArgument.Of("wind", Quantity.Plain(wind, Unit.MetrePerSecond)),
                FindingArgument.Of("most", Quantity.Plain(MostWindMetresPerSecond, Unit.MetrePerSecond))
            );
        }
    }

    private static void Distance(Plan plan, SoundFindings findings)
    {
        foreach (PersonGroup group in plan.People)
        {
            double farthest = Places(group)
                .SelectMany(place => plan.Engines.Select(engine => engine.Place.DistanceMetres(place)))
                .DefaultIfEmpty(0)
                .Max();
            if (farthest > MostMetres && double.IsFinite(farthest))
            {
                findings.Add(
                    "sound.distance-outside-method",
                    Severity.Note,
                    group.Id,
                    null,
                    SoundFindings.Metres("distance", farthest),
                    SoundFindings.Metres("most", MostMetres)
                );
            }
        }
    }

    private static IEnumerable<PlanPoint> Places(PersonGroup group) =>
        group.Place is { } place ? group.Area.Append(place) : group.Area;
}
