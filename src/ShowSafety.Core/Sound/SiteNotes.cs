using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Enclosures;

namespace ShowSafety.Core.Sound;

/// <summary>Says what of the site the sound field counts and what it doesn't.</summary>
internal static class SiteNotes
{
    /// <summary>Adds the findings of the site.</summary>
    public static void Say(Plan plan, EnclosureSound? enclosure, HashSet<string> inside, SoundFindings findings)
    {
        Air? air = plan.Site.Air;
        if (air?.TemperatureCelsius is null || air.HumidityPercent is null)
        {
            findings.Add("sound.air-assumed", Severity.Note, null, "Site.Air");
        }

        OutdoorNotes.Say(plan, findings);
        foreach (Engine engine in plan.Engines.DistinctBy(e => e.Id))
        {
            if (enclosure is not null && !inside.Contains(engine.Id))
            {
                findings.Add("sound.engine-outside-enclosure", Severity.Note, engine.Id);
            }
        }

        if (inside.Count > 0)
        {
            findings.Add("sound.walls-not-credited", Severity.Note, enclosure!.Id);
        }
    }
}
