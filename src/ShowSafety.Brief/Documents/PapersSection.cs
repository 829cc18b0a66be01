using System.Globalization;
using ShowSafety.Brief.Typesetting;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Brief.Documents;

/// <summary>Permissions and engine evidence as the plan records them.</summary>
internal static class PapersSection
{
    public static IEnumerable<Block> Compose(BriefInput input)
    {
        yield return Sections.Head(BriefLabels.PapersSection);
        yield return new Table(
            [new("Permission of", 2), new("Given by, on", 3), new("Reference", 2), new("Conditions", 3)],
            (input.Plan.Gate?.Permissions ?? []).Select(Permission).ToValueList(),
            "The plan records no permission."
        );
        yield return new Table(
            [new("Engine", 2), new("Evidence", 4), new("Comes from", 2)],
            (input.Plan.Gate?.EngineEvidence ?? [])
                .Select(evidence =>
                    (ValueList<RichText>)
                        [input.Words.Name(evidence.EngineId)!, Evidence(evidence), Origin(evidence.Pedigree)]
                )
                .ToValueList(),
            "The plan records no evidence for any engine."
        );
    }

    private static ValueList<RichText> Permission(Permission permission) =>
        [
            Sections.Sentence(BriefLabels.Of(permission.Giver)),
            $"{permission.Who ?? BriefLabels.Nobody}, {On(permission.On)}"
                + (permission.ValidUntil is { } until ? $"; holds until {BriefLabels.Day(until)}" : "")
                + $" ({Origin(permission.Pedigree)})",
            Sections.OrNotStated(permission.Reference),
            Sections.OrNotStated(permission.Limits),
        ];

    private static string Evidence(EngineEvidence evidence) =>
        string.Join(
            "\n",
            [
                "Running time: "
                    + (
                        evidence.RunningHours is { } hours
                            ? ValueFormat.Number(hours.Value, Unit.Hour)
                            : BriefLabels.NotStated
                    ),
                $"Crack check of the rotors: {On(evidence.CrackCheckOn)}",
                $"Over-speed trip proven: {On(evidence.TripProvenOn)}",
                "Ten-minute runs at rated power: "
                    + (evidence.RatedRuns?.ToString(CultureInfo.InvariantCulture) ?? BriefLabels.NotStated),
                $"Overhaul: {Sections.OrNotStated(evidence.Overhaul)}",
                $"Containment test: {Sections.OrNotStated(evidence.ContainmentTest)}",
            ]
        );

    private static string On(DateOnly? day) => day is { } on ? BriefLabels.Day(on) : BriefLabels.NotStated;

    private static string Origin(Pedigree? pedigree) =>
        pedigree is { } p ? PedigreeLabels.Of(p) : BriefLabels.NotStated;
}
