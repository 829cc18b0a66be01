using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Tests.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests.Wording;

public sealed class ZoneSentencesTests
{
    [Fact]
    public void Of_AudienceLimit_SaysWhatWhomWhenAndTheEdge()
    {
        Zone zone = Zone(ZoneRow.AudienceLimit) with
        {
            Part = "who-venues-2022",
            Boundary = Quantity.Plain(100, Unit.DecibelA),
        };

        Assert.Equal(
            "The noise limit for an audience is exceeded here (Venues): it keeps out visitors and children while starting "
                + "and running; its edge is the line of 100.0\u00A0dB(A).",
            ZoneSentences.Of(zone, Names(), "Venues")
        );
        Assert.Equal("Audience noise limit: Venues", ZoneSentences.Label(zone, "Venues"));
    }

    [Theory]
    [InlineData(ZoneEffect.Excludes, Audience.Everyone, "it keeps everyone out")]
    [InlineData(ZoneEffect.Excludes, Audience.Crew, "it keeps out crew")]
    [InlineData(ZoneEffect.Requires, Audience.Crew | Audience.Exhibitors, "it asks of exhibitors and crew that")]
    [InlineData(ZoneEffect.Requires, Audience.None, "it asks that")]
    [InlineData(ZoneEffect.Informs, Audience.Everyone, "everyone there is to know of it")]
    public void Of_Effects_SayWhomTheyBind(ZoneEffect effect, Audience whom, string expected)
    {
        Zone zone = Zone(ZoneRow.HearingZone) with { Effect = effect, Whom = whom };

        Assert.Contains(expected, ZoneSentences.Of(zone, Names()), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ZoneWithoutValues_SaysThatItsEdgeCanNotBeTold() =>
        Assert.Contains(
            "can't be told",
            ZoneSentences.Of(Zone(ZoneRow.JetHeatCrew), Names()),
            StringComparison.Ordinal
        );

    [Fact]
    public void Of_EveryRow_HasAPhraseOfItsOwn() =>
        Assert.All(Enum.GetValues<ZoneRow>(), row => Assert.Contains(ZonePhrases.All, p => p.Row == row));

    // The templates hold every part the rooms make, rule sets aside; a part without a phrase would read as a code.
    [Theory]
    [InlineData("closed-marquee")]
    [InlineData("field-with-neighbour")]
    [InlineData("open-sided-marquee")]
    [InlineData("sports-hall")]
    public void Of_ZonesOfATemplate_AllHavePhrasesAndSayTheirValue(string template)
    {
        Plan plan = Templates.Plan(template);
        Assessment assessment = Assessor.AssessWithoutCosts(plan, TestContext.Current.CancellationToken);
        var names = new Phrasebook(assessment.Names);

        Assert.All(
            assessment.Zones,
            zone =>
            {
                Assert.Contains(ZonePhrases.All, p => p.Row == zone.Row && (p.Part ?? zone.Part) == zone.Part);
                string sentence = ZoneSentences.Of(zone, names, RuleSetLibrary.Find(zone.Part)?.Title);
                Assert.Contains(
                    ValueFormat.Planning((zone.Boundary ?? zone.Reach)!),
                    sentence,
                    StringComparison.Ordinal
                );
                Assert.DoesNotContain('{', sentence);
                Assert.Empty(ForbiddenWords.In(sentence));
            }
        );
        Assert.Equal(
            assessment.Zones.Count(),
            assessment.Zones.Select(z => (z.ElementId, ZoneSentences.Label(z))).Distinct().Count()
        );
    }

    private static Phrasebook Names() => new(new Dictionary<string, string>());

    private static Zone Zone(ZoneRow row) =>
        new(
            row,
            "e",
            ZoneEffect.Excludes,
            Audience.Visitors | Audience.Children,
            Phases.Start | Phases.Running,
            ZoneFrame.Site,
            SiteGeometry.Empty
        );
}
