namespace ShowSafety.Core.Tests.House;

/// <summary>The arrows between the rooms of the core: who may use whom.</summary>
internal static class Arrows
{
    /// <summary>Findings, zones and other contracts in the root namespace: any room may use them.</summary>
    public const string Contracts = "(contracts)";

    /// <summary>The assessor and its assessment: they use all rooms, no room uses them.</summary>
    public const string Assessor = "(assessor)";

    private static readonly string[] Physics =
    [
        "Sound",
        "Exposure",
        "Exhaust",
        "IndoorAir",
        "Debris",
        "Supplies",
        "Crowd",
        "Layout",
        "Gate",
    ];

    private static readonly string[] Ground = ["Measures", "Citations", "Plans", Contracts];

    /// <summary>For each room the rooms it may use.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Allowed { get; } =
        new Dictionary<string, IReadOnlyList<string>>
        {
            ["Measures"] = ["Citations", Contracts],
            ["Citations"] = ["Measures", Contracts],
            [Contracts] = ["Measures", "Citations"],
            ["Plans"] = ["Measures", "Citations", Contracts],
            ["Sound"] = Ground,
            ["Exposure"] = [.. Ground, "Sound"],
            ["Exhaust"] = Ground,
            ["IndoorAir"] = Ground,
            ["Debris"] = Ground,
            ["Supplies"] = Ground,
            ["Crowd"] = Ground,
            ["Layout"] = [.. Ground, "Sound", "Exposure", "Exhaust", "IndoorAir", "Debris", "Supplies", "Crowd"],
            ["Gate"] = [.. Ground, "Exhaust", "Debris", "Supplies"],
            ["Sums"] = [.. Ground, .. Physics],
            ["Wording"] = Ground,
            [Assessor] = [.. Ground, .. Physics, "Sums", "Wording"],
            ["Files"] = [.. Ground, .. Physics, "Wording", Assessor],
        };

    /// <summary>The uses that follow no arrow, and the uses by or of a room that has none.</summary>
    public static IReadOnlyList<string> Violations(IEnumerable<Dependency> dependencies) =>
        [.. dependencies.Where(d => !Follows(d)).Select(d => d.ToString())];

    /// <summary>The room a type belongs to, from its full name.</summary>
    public static string RoomOf(string fullName, string root)
    {
        if (!IsBelow(fullName, root))
        {
            return "(elsewhere)";
        }
        var inside = fullName[(root.Length + 1)..];
        // Generic arguments and nested types carry dots and signs of their own.
        var name = inside.Split('`', '<', '+', '/')[0];
        var dot = name.IndexOf('.', StringComparison.Ordinal);
        if (dot >= 0)
        {
            return name[..dot];
        }
        return name.StartsWith("Assess", StringComparison.Ordinal) || name == "FindOutList" ? Assessor : Contracts;
    }

    /// <summary>Whether a type lies in the namespace <paramref name="root"/> or below it.</summary>
    public static bool IsBelow(string fullName, string root) =>
        fullName.StartsWith(root + ".", StringComparison.Ordinal);

    private static bool Follows(Dependency use) =>
        Allowed.TryGetValue(use.FromRoom, out var allowed) && allowed.Contains(use.ToRoom);
}
