using ShowSafety.Core.Exposure.Protection;
using ShowSafety.Core.Exposure.Zones;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.People;

/// <summary>What must be said about the hearing protector of one part of a group.</summary>
public static class ProtectorFindings
{
    /// <summary>The findings, in a fixed order.</summary>
    public static IEnumerable<Finding> Of(PersonContext context, PersonGroup group, PersonExposure person)
    {
        if (group.ProtectorId is null)
        {
            return InHearingZone(group, person);
        }

        return context.Protector(group.ProtectorId) switch
        {
            null =>
            [
                PersonFindings.About(
                    group,
                    person,
                    "exposure.protector-not-listed",
                    Severity.Act,
                    FindingArgument.Of("protector", group.ProtectorId)
                ) with
                {
                    CannotTell = true,
                    Field = "PersonGroup.ProtectorId",
                    Row = ZoneRow.AtTheEar,
                },
            ],
            { } protector when !WornProtector.IsRated(protector) =>
            [
                PersonFindings.About(group, person, "exposure.protector-not-rated", Severity.Act, Name(protector)) with
                {
                    CannotTell = true,
                    Field = "HearingProtector.SnrDb",
                    Row = ZoneRow.AtTheEar,
                },
            ],
            { } protector => Fit(group, person, protector),
        };
    }

    /// <summary>Protectors of which more are worn than there are pairs.</summary>
    public static IEnumerable<Finding> TooFew(Plan plan) =>
        from protector in plan.Protectors
        let wearers = plan
            .People.Where(g => g.ProtectorId == protector.Id)
            .Sum(g => (long)(g.Adults ?? 0) + (g.Children ?? 0))
        where protector.Count < wearers
        select new Finding("exposure.protectors-too-few", Severity.Act)
        {
            ElementId = protector.Id,
            Field = "HearingProtector.Count",
            Arguments =
            [
                FindingArgument.Of("pairs", protector.Count ?? 0),
                FindingArgument.Of("wearers", Quantity.Plain(wearers, Unit.Person)),
            ],
        };

    private static IEnumerable<Finding> InHearingZone(PersonGroup group, PersonExposure person)
    {
        if (person.HighestLevel is { Planning: >= SoundZones.HearingZoneDbA } level)
        {
            yield return PersonFindings.About(
                group,
                person,
                "exposure.no-protector-in-hearing-zone",
                Severity.Act,
                FindingArgument.Of("value", level)
            ) with
            {
                Field = "PersonGroup.ProtectorId",
                Row = ZoneRow.HearingZone,
                Citations = ["directive-2003-10-ec"],
            };
        }
    }

    private static IEnumerable<Finding> Fit(PersonGroup group, PersonExposure person, HearingProtector protector)
    {
        string? code = person.Fit switch
        {
            ProtectionFit.NotEnough => "exposure.protector-not-enough",
            ProtectionFit.TooMuch when person.HighestLevel is not { Planning: < SoundZones.HearingZoneDbA } =>
                "exposure.protector-too-much",
            _ => null,
        };
        if (code is not null && person.LevelAtEar is { } level)
        {
            yield return PersonFindings.About(
                group,
                person,
                code,
                person.Fit == ProtectionFit.NotEnough ? Severity.Act : Severity.Note,
                Name(protector),
                FindingArgument.Of("value", level)
            ) with
            {
                Field = person.Fit == ProtectionFit.NotEnough ? "PersonGroup.ProtectorId" : null,
                Row = ZoneRow.AtTheEar,
                Citations = ["en-458-2016", "hse-l108-2021"],
            };
        }
    }

    private static FindingArgument Name(HearingProtector protector) =>
        FindingArgument.Of("protector", protector.Name ?? protector.Id);
}
