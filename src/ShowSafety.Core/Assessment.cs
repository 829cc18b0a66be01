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

namespace ShowSafety.Core;

/// <summary>
/// Everything this project has to say about one plan: figures, zones, findings, areas, what to find out and what was
/// assumed. Made by <see cref="Assessor"/> from the plan alone; the same plan gives the same assessment.
/// </summary>
public sealed record Assessment
{
    /// <summary>SHA-256 of the plan's canonical form, lower-case hexadecimal.</summary>
    public required string PlanHash { get; init; }

    /// <summary>Whether any input is from a template; then every output says EXAMPLE.</summary>
    public required bool IsExample { get; init; }

    /// <summary>How loud.</summary>
    public required SoundAssessment Sound { get; init; }

    /// <summary>For how long one may stand there, and with what on the ears.</summary>
    public required ExposureAssessment Exposure { get; init; }

    /// <summary>Where the jet goes.</summary>
    public required ExhaustAssessment Exhaust { get; init; }

    /// <summary>What the air indoors becomes.</summary>
    public required IndoorAirAssessment IndoorAir { get; init; }

    /// <summary>Where a piece would go.</summary>
    public required DebrisAssessment Debris { get; init; }

    /// <summary>Fuel, gas, extinguishers.</summary>
    public required SuppliesAssessment Supplies { get; init; }

    /// <summary>How many people, which exits, what they can reach.</summary>
    public required CrowdAssessment Crowd { get; init; }

    /// <summary>Whether it may run at all.</summary>
    public required GateAssessment Gate { get; init; }

    /// <summary>Where people may be.</summary>
    public required LayoutAssessment Layout { get; init; }

    /// <summary>All findings, the gravest first, then by code and element.</summary>
    public required ValueList<Finding> Findings { get; init; }

    /// <summary>Inputs that are not measured, and values assumed because nobody stated one.</summary>
    public required ValueList<Assumption> Assumptions { get; init; }

    /// <summary>Missing and unsure facts, the costliest first.</summary>
    public required ValueList<FindOutItem> FindOut { get; init; }

    /// <summary>Names of the plan's elements by id, for sentences.</summary>
    public required ElementNames Names { get; init; }

    /// <summary>Whether a stop stands.</summary>
    public bool NotToRun => Findings.Any(f => f.Severity == Severity.Stop);

    /// <summary>All zones, room by room.</summary>
    public IEnumerable<Zone> Zones => Rooms.SelectMany(r => r.Assessment.Zones);

    /// <summary>All figures, room by room.</summary>
    public IEnumerable<Figure> Figures => Rooms.SelectMany(r => r.Assessment.Figures);

    /// <summary>The rooms by name, in the order they are printed.</summary>
    public IEnumerable<(string Name, RoomAssessment Assessment)> Rooms =>
        [
            ("gate", Gate),
            ("debris", Debris),
            ("exhaust", Exhaust),
            ("sound", Sound),
            ("exposure", Exposure),
            ("indoorAir", IndoorAir),
            ("supplies", Supplies),
            ("crowd", Crowd),
            ("layout", Layout),
        ];

    /// <summary>The one sentence that is always in view.</summary>
    public string HeadlineSentence =>
        Headline.Of(
            Findings,
            new Phrasebook(Names),
            Layout.LineSetBy,
            Layout.Figures.Where(f => f.Key == "layout.line-distance").Select(f => f.Value).MinBy(v => v.Best)
        );

    /// <summary>Ids of every citation a figure, zone or finding rests on, in the registry's order.</summary>
    public ValueList<string> CitationIds
    {
        get
        {
            HashSet<string> used =
            [
                .. Figures.SelectMany(f => f.Value.Citations),
                .. Zones.SelectMany(z => z.Citations),
                .. Zones.SelectMany(z => z.Boundary?.Citations ?? []),
                .. Findings.SelectMany(f => f.Citations),
            ];
            return [.. Citations.CitationRegistry.All.Select(c => c.Id).Where(used.Contains)];
        }
    }
}
