using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Wording;

/// <summary>Sentences, remedies and labels of the room Layout, in English.</summary>
internal static class LayoutPhrases
{
    /// <summary>Sentences of findings.</summary>
    public static ValueList<FindingPhrase> Findings { get; } =
    [
        new(
            "layout.people-in-zone",
            "{who}: inside a zone that keeps them out ({row}).",
            "Move them, or turn or move the bench, until the zone leaves them."
        ),
        new(
            "layout.post-in-zone",
            "The post {who} is inside a zone that keeps people out ({row}).",
            "Move the post out of the zone."
        ),
        new(
            "layout.stand-in-zone",
            "The stand {who} is inside a zone that keeps exhibitors out ({row}).",
            "Move the stand or the bench, or have the stand empty while the zone applies."
        ),
        new(
            "layout.exit-in-zone",
            "The way out {who} is inside a zone that keeps people out ({row}).",
            "Turn or move the bench, or plan with this way out closed and say so to the stewards."
        ),
        new(
            "layout.group-without-place",
            "The plan does not say where {who} are, so nobody can tell whether a zone reaches them.",
            "Draw the area they keep to."
        ),
        new(
            "layout.no-line-drawn",
            "Visitors are planned but no crowd line is drawn.",
            "Draw the line; the suggested one is on the site plan."
        ),
        new(
            "layout.no-line-possible",
            "No crowd line that meets the rules chosen was found on this site: the zones that keep visitors out leave no ground, or none a line could be drawn on.",
            "Choose a larger site, turn the bench, or show the engine standing still."
        ),
        new(
            "layout.line-inside-zone",
            "The planned crowd line runs through a zone that keeps visitors out ({row}) between {from} and {to}; it is short by up to {shortfall}.",
            "Move the line out of the zone; the suggested line is on the site plan."
        ),
        new(
            "layout.visitors-not-behind-line",
            "The planned crowd line does not lie between the engine and the whole of {who}.",
            "Lengthen or move the line, or draw the visitors' area behind it."
        ),
        new(
            "layout.zone-beyond-site",
            "A zone that keeps people out ({row}) reaches {reach} beyond edge {edge} of the site; the ground is kept empty for {empty} only. There: {who}.",
            "Have the ground emptied and watched as far as the zone reaches, in writing, or turn or move the bench."
        ),
        new(
            "layout.zone-over-unknown-ground",
            "A zone that keeps people out ({row}) reaches {reach} beyond edge {edge} of the site, and the plan does not say who is there.",
            "Find out who can be there while the engine runs and enter how far the ground is kept empty."
        ),
    ];

    /// <summary>Labels of figures.</summary>
    public static ValueList<FigurePhrase> Figures { get; } =
    [
        new("layout.line-distance", "Distance from the nozzle to the suggested crowd line"),
        new("layout.line-length", "Length of the suggested crowd line"),
    ];
}
