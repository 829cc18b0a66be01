using NetTopologySuite.Geometries;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Crowd;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Exhaust;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Gate;
using ShowSafety.Core.IndoorAir;
using ShowSafety.Core.Layout;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Supplies;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Files;

/// <summary>An assessment as it is written; null members are left out.</summary>
internal sealed record AssessmentDocument(
    string Schema,
    string Title,
    string PlanHash,
    bool Example,
    DocumentVerdict Verdict,
    string Headline,
    ValueList<FindingEntry> Findings,
    ValueList<AssessedPerson> People,
    RoomsEntry Rooms,
    ValueList<ZoneEntry> Zones,
    ValueList<FindOutItem>? FindOut,
    ValueList<Assumption>? Assumptions,
    ValueList<Citation>? Sources
)
{
    /// <summary>Everything.</summary>
    public static AssessmentDocument Of(Plan plan, Assessment assessment)
    {
        var words = new Phrasebook(assessment.Names);
        return new(
            AssessmentJson.SchemaName,
            plan.Title,
            assessment.PlanHash,
            assessment.IsExample,
            assessment.NotToRun ? DocumentVerdict.NotToRun : DocumentVerdict.NoStopFound,
            assessment.HeadlineSentence,
            [.. assessment.Findings.Select(f => FindingEntry.Of(f, words))],
            AssessedPeople.Of(plan, assessment),
            RoomsEntry.Of(assessment),
            [.. assessment.Zones.Select(z => ZoneEntry.Of(z, words))],
            assessment.FindOut,
            assessment.Assumptions,
            [.. assessment.CitationIds.Select(CitationRegistry.Get)]
        );
    }

    /// <summary>What is drawn and read while something is dragged.</summary>
    public static AssessmentDocument ForDrag(Plan plan, Assessment assessment)
    {
        AssessmentDocument all = Of(plan, assessment);
        return all with
        {
            Findings = [.. all.Findings.Select(f => f.WithoutValues())],
            Rooms = new(assessment.Layout),
            FindOut = null,
            Assumptions = null,
            Sources = null,
        };
    }
}

/// <summary>Whether a stop stands; there is no "yes".</summary>
internal enum DocumentVerdict
{
    /// <summary>A stop stands.</summary>
    NotToRun,

    /// <summary>None was found with the data given.</summary>
    NoStopFound,
}

/// <summary>A finding with its sentences.</summary>
internal sealed record FindingEntry(string Sentence, string Remedy, FindingFacts Finding)
{
    public static FindingEntry Of(Finding finding, Phrasebook words) =>
        new(words.Sentence(finding), words.Remedy(finding), FindingFacts.Of(finding));

    /// <summary>The sentence says the values already.</summary>
    public FindingEntry WithoutValues() => this with { Finding = Finding with { Arguments = null, Citations = null } };
}

/// <summary>A finding as it is written.</summary>
internal sealed record FindingFacts(
    string Code,
    Severity Severity,
    ValueList<FindingArgument>? Arguments,
    string? ElementId,
    PlanPoint? Place,
    string? Field,
    bool CannotTell,
    ZoneRow? Row,
    ValueList<string>? Citations
)
{
    public static FindingFacts Of(Finding f) =>
        new(f.Code, f.Severity, f.Arguments, f.ElementId, f.Place, f.Field, f.CannotTell, f.Row, f.Citations);
}

/// <summary>A zone as it is written, with its words.</summary>
internal sealed record ZoneEntry(
    string Label,
    string Sentence,
    ZoneRow Row,
    string ElementId,
    ZoneEffect Effect,
    Audience Whom,
    Phases When,
    ZoneFrame Frame,
    Geometry Area,
    Quantity? Boundary,
    Quantity? Reach,
    string Part,
    ValueList<string> Citations
)
{
    public static ZoneEntry Of(Zone zone, Phrasebook words)
    {
        string? title = AssessedListeners.PartTitle(zone);
        return new(
            ZoneSentences.Label(zone, title),
            ZoneSentences.Of(zone, words, title),
            zone.Row,
            zone.ElementId,
            zone.Effect,
            zone.Whom,
            zone.When,
            zone.Frame,
            zone.Area,
            zone.Boundary,
            zone.Reach,
            zone.Part,
            zone.Citations
        );
    }
}

/// <summary>What the rooms give besides findings and zones; a drag gives the layout only.</summary>
internal sealed record RoomsEntry(LayoutAssessment Layout)
{
    public GateAssessment? Gate { get; init; }
    public DebrisAssessment? Debris { get; init; }
    public ExhaustAssessment? Exhaust { get; init; }
    public SoundAssessment? Sound { get; init; }
    public ExposureAssessment? Exposure { get; init; }
    public IndoorAirAssessment? IndoorAir { get; init; }
    public SuppliesAssessment? Supplies { get; init; }
    public CrowdAssessment? Crowd { get; init; }

    public static RoomsEntry Of(Assessment a) =>
        new(a.Layout)
        {
            Gate = a.Gate,
            Debris = a.Debris,
            Exhaust = a.Exhaust,
            Sound = a.Sound,
            Exposure = a.Exposure,
            IndoorAir = a.IndoorAir,
            Supplies = a.Supplies,
            Crowd = a.Crowd,
        };
}
