using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences about permissions: the same faults for each of those who must give one.</summary>
internal static class PermissionPhrases
{
    private static readonly (string Name, string Whose)[] Givers =
    [
        ("venue", "the venue"),
        ("venue-or-organiser", "the venue or the organiser"),
        ("fire-authority", "the fire authority"),
        ("insurer", "the insurer"),
    ];

    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } = [.. Givers.SelectMany(g => Of(g.Name, g.Whose))];

    private static IEnumerable<FindingPhrase> Of(string name, string whose) =>
        [
            new(
                $"gate.permission-missing-{name}",
                $"The permission of {whose} is missing.",
                $"Ask {whose} for it in writing and enter name, date and reference."
            ),
            new(
                $"gate.permission-incomplete-{name}",
                $"The entry for the permission of {whose} lacks a name, a date or a reference and counts as missing.",
                "Enter who gave it, on which date, and the letter, mail or number."
            ),
            new(
                $"gate.permission-assumed-{name}",
                $"The permission of {whose} is marked as assumed or estimated and counts as missing.",
                $"Ask {whose} for it in writing and enter where it comes from."
            ),
            new(
                $"gate.permission-late-{name}",
                $"The permission of {whose} is dated after the first day of the event.",
                "Check the date, or get a permission given before the event."
            ),
            new(
                $"gate.permission-expired-{name}",
                $"The permission of {whose} ends before the last day of the event.",
                $"Ask {whose} to extend it to the last day."
            ),
            new(
                $"gate.permission-conditions-{name}",
                $"The permission of {whose} has conditions: {{limits}}",
                "Check on the day that each condition is met."
            ),
        ];
}
