namespace ShowSafety.Core.Wording;

/// <summary>Words for exposure that the page, the brief and other outputs share.</summary>
public static class ExposureWords
{
    /// <summary>A verdict that something needed is missing.</summary>
    public const string CannotTell = "cannot tell";

    /// <summary>A clause is met.</summary>
    public const string Meets = "meets the rule chosen";

    /// <summary>A rule set that does not cover the people it is shown for.</summary>
    public const string Comparison = "shown as a comparison, binds nobody here";

    /// <summary>Nothing is heard.</summary>
    public const string NothingRuns = "not there while it runs";

    /// <summary>What the hearing zone asks for.</summary>
    public const string InHearingZone = "in the hearing zone: protection on while an engine runs";

    /// <summary>Duty of a lower action level.</summary>
    public const string InformAndOffer = "tell them, and have hearing protectors ready for them";

    /// <summary>Duty of an upper action level.</summary>
    public const string WearAndMark = "hearing protectors are worn, the zone is marked, the exposure is brought down";

    /// <summary>Duty of a limit.</summary>
    public const string NotToExceed = "not to be exceeded: bring the exposure down at once";

    /// <summary>Duty of a programme.</summary>
    public const string HearingProgramme = "a hearing conservation programme";

    /// <summary>Duty of a limit for an audience.</summary>
    public const string KeepAudienceOut = "keep the audience out";

    /// <summary>Exposure of a day.</summary>
    public const string DailyLevel = "daily noise exposure level";

    /// <summary>Dose of a day.</summary>
    public const string Dose = "daily dose";

    /// <summary>Mean level of a window.</summary>
    public const string WindowLevel = "mean level of the worst stretch of time";

    /// <summary>Highest steady level.</summary>
    public const string SteadyLevel = "highest steady level";

    /// <summary>Largest fast level.</summary>
    public const string FastMaximumLevel = "largest fast level";

    /// <summary>Peak.</summary>
    public const string PeakLevel = "C-weighted peak";
}
