namespace ShowSafety.Core.Wording;

/// <summary>What people read for what a zone does, to whom, and when.</summary>
public static class ZoneWords
{
    private static readonly (Audience Flag, string Text)[] Audiences =
    [
        (Audience.Visitors, "visitors"),
        (Audience.Children, "children"),
        (Audience.Exhibitors, "exhibitors"),
        (Audience.Neighbours, "neighbours"),
        (Audience.Crew, "crew"),
    ];

    private static readonly (Phases Flag, string Text)[] PhaseWords =
    [
        (Phases.Start, "starting"),
        (Phases.Running, "running"),
        (Phases.RunDown, "running down"),
        (Phases.CoolDown, "cooling"),
        (Phases.Fuelling, "fuelling"),
        (Phases.Standing, "standing cold"),
    ];

    /// <summary>What it does, without whom.</summary>
    public static string Of(ZoneEffect effect) =>
        effect switch
        {
            ZoneEffect.Excludes => "keeps out",
            ZoneEffect.Requires => "asks something of",
            _ => "informs",
        };

    /// <summary>Whom it binds, as a list for a table.</summary>
    public static string Of(Audience whom) => Of(whom, ", ");

    /// <summary>When it applies, as a list for a table.</summary>
    public static string Of(Phases when) => Of(when, ", ");

    /// <summary>Whom it binds, as it stands in a sentence.</summary>
    public static string Spoken(Audience whom) => Of(whom, " and ");

    /// <summary>When it applies, as it stands in a sentence.</summary>
    public static string Spoken(Phases when) =>
        when switch
        {
            Phases.None => "never",
            Phases.Always => "at all times",
            _ => $"while {Of(when, " and ")}",
        };

    private static string Of(Audience whom, string last) =>
        whom switch
        {
            Audience.None => "things only",
            Audience.Everyone => "everyone",
            _ => Listed([.. Audiences.Where(word => whom.HasFlag(word.Flag)).Select(word => word.Text)], last),
        };

    private static string Of(Phases when, string last) =>
        when switch
        {
            Phases.None => "never",
            Phases.Always => "always",
            _ => Listed([.. PhaseWords.Where(word => when.HasFlag(word.Flag)).Select(word => word.Text)], last),
        };

    private static string Listed(string[] words, string last) =>
        words.Length < 2 ? string.Concat(words) : string.Join(", ", words[..^1]) + last + words[^1];
}
