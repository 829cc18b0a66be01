using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exposure.Rules;

/// <summary>A set of noise rules as read from its file: whom it covers and its clauses. Data, never code.</summary>
/// <param name="Id">Stable id, the name of the file.</param>
/// <param name="Title">Title people know it by.</param>
/// <param name="Covers">Whom it covers.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="Confirm">What the user is asked to confirm with the authority, a sentence.</param>
/// <param name="Clauses">Its clauses, one at least.</param>
public sealed record RuleSet(
    string Id,
    string Title,
    RuleCoverage Covers,
    RuleSource Source,
    string Confirm,
    ValueList<RuleClause> Clauses
);

/// <summary>Whom a rule set covers.</summary>
/// <param name="Kind">Whether it is about people at work or about an audience.</param>
/// <param name="LegalClasses">Legal classes it covers.</param>
/// <param name="ComparisonFor">
/// Legal classes it does not cover but is shown to as a comparison, chosen by this project and said so.
/// </param>
/// <param name="Children">Whether it covers children.</param>
public sealed record RuleCoverage(
    RuleKind Kind,
    ValueList<LegalClass> LegalClasses,
    ValueList<LegalClass> ComparisonFor,
    bool Children
);

/// <summary>What a rule set is about; the two kinds are never crossed.</summary>
public enum RuleKind
{
    /// <summary>People at work.</summary>
    Work,

    /// <summary>People who come to watch or listen.</summary>
    Audience,
}

/// <summary>Where a rule set is published.</summary>
/// <param name="Title">Title of the law or guidance.</param>
/// <param name="Edition">Edition or year.</param>
/// <param name="Citation">Id in <see cref="CitationRegistry"/>.</param>
public sealed record RuleSource(string Title, string Edition, string Citation);

/// <summary>One limit or action level of a rule set.</summary>
/// <param name="Id">Stable id within the set.</param>
/// <param name="Metric">What is compared.</param>
/// <param name="Limit">With what: dB(A), per cent of the dose, or dB(C), by the metric.</param>
/// <param name="Trigger">From where the duty holds.</param>
/// <param name="AtTheEar">Whether the effect of a protector worn counts.</param>
/// <param name="Duty">What must be done then.</param>
/// <param name="Clause">Article, section or table.</param>
/// <param name="Basis">How well we know it.</param>
/// <param name="WindowMinutes">Length of the averaging window, for <see cref="RuleMetric.WindowLevel"/>.</param>
/// <param name="Window">How windows lie on the clock, for <see cref="RuleMetric.WindowLevel"/>.</param>
/// <param name="CriterionDbA">Criterion level, for <see cref="RuleMetric.Dose"/>.</param>
/// <param name="CriterionHours">Criterion time, for <see cref="RuleMetric.Dose"/>.</param>
/// <param name="ExchangeDb">Exchange, for <see cref="RuleMetric.Dose"/>.</param>
/// <param name="ThresholdDbA">Level from which it counts, for <see cref="RuleMetric.Dose"/>.</param>
public sealed record RuleClause(
    string Id,
    RuleMetric Metric,
    double Limit,
    RuleTrigger Trigger,
    bool AtTheEar,
    Duty Duty,
    string Clause,
    Basis Basis,
    double? WindowMinutes = null,
    WindowKind? Window = null,
    double? CriterionDbA = null,
    double? CriterionHours = null,
    double? ExchangeDb = null,
    double? ThresholdDbA = null
)
{
    /// <summary>Unit of the limit.</summary>
    public Unit LimitUnit() =>
        Metric switch
        {
            RuleMetric.Dose => Unit.Percent,
            RuleMetric.PeakLevel => Unit.DecibelC,
            _ => Unit.DecibelA,
        };

    /// <summary>The dose scale of a clause about a dose; checked when the file is read.</summary>
    public DoseScale Scale() =>
        new(CriterionDbA ?? Limit, ExchangeDb ?? DoseScale.EqualEnergyExchangeDb)
        {
            CriterionHours = CriterionHours ?? ExposureLevel.ReferenceHours,
            ThresholdDbA = ThresholdDbA,
        };

    /// <summary>Whether a value sets the duty off.</summary>
    public bool IsTriggeredBy(double value) => Trigger == RuleTrigger.AtOrAbove ? value >= Limit : value > Limit;
}

/// <summary>What a clause compares.</summary>
public enum RuleMetric
{
    /// <summary>L_EX,8h of the whole day.</summary>
    DailyLevel,

    /// <summary>Dose in per cent on the clause's own scale.</summary>
    Dose,

    /// <summary>L_Aeq of the worst window.</summary>
    WindowLevel,

    /// <summary>Highest level of any steady stretch, slow.</summary>
    SteadyLevel,

    /// <summary>Largest fast level L_AFmax: it can't come from predicted mean levels.</summary>
    FastMaximumLevel,

    /// <summary>C-weighted peak.</summary>
    PeakLevel,
}

/// <summary>From where a duty holds.</summary>
public enum RuleTrigger
{
    /// <summary>Above the limit.</summary>
    Above,

    /// <summary>At the limit and above.</summary>
    AtOrAbove,
}

/// <summary>What a clause demands when it is set off.</summary>
public enum Duty
{
    /// <summary>Inform people and have hearing protectors ready for them.</summary>
    InformAndOffer,

    /// <summary>Protectors are worn, the zone is marked, exposure is reduced by a programme.</summary>
    WearAndMark,

    /// <summary>Not to be exceeded: reduce the exposure at once.</summary>
    NotToExceed,

    /// <summary>A hearing conservation programme: monitoring, audiometry, protectors, training.</summary>
    HearingProgramme,

    /// <summary>Keep the audience out of where it is exceeded.</summary>
    KeepAudienceOut,
}
