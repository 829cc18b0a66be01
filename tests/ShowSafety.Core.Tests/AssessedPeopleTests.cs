using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Tests.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests;

public sealed class AssessedPeopleTests
{
    private static readonly Plan Template = Templates.Plan("open-sided-marquee");

    [Fact]
    public void Of_Template_SaysForEveryExposureWhatWasWorkedOut()
    {
        Assessment assessment = Assessed(Template);

        ValueList<AssessedPerson> people = AssessedPeople.Of(Template, assessment);

        Assert.Equal(
            assessment.Exposure.People.Select(p => (p.GroupId, p.Part, p.WorstPlace)),
            people.Select(p => (p.GroupId, p.Part, p.Place))
        );
        foreach ((AssessedPerson said, PersonExposure known) in people.Zip(assessment.Exposure.People))
        {
            Assert.Contains(ValueFormat.Best(known.HighestLevel!), said.Sentence, StringComparison.Ordinal);
            Assert.Contains(ValueFormat.Planning(known.HighestLevel!), said.Sentence, StringComparison.Ordinal);
            Assert.Contains(ValueFormat.Planning(known.WholeDayLevel!), said.Sentence, StringComparison.Ordinal);
            Assert.Contains(ValueFormat.Planning(known.LevelAtEar!), said.Wear, StringComparison.Ordinal);
            Assert.Equal(known.Rules.Select(r => r.RuleSetId).Distinct(), said.Limits.Select(l => l.RuleSetId));
            Assert.Empty(ForbiddenWords.In($"{said.Sentence} {said.Wear} {said.Stay}"));
        }
    }

    [Fact]
    public void Of_Operator_SaysTheDutiesSetOff()
    {
        AssessedPerson said = One(Template, "operator");

        AssessedLimit limit = Assert.Single(said.Limits);
        Assert.Equal(Verdict.Exceeds, limit.Verdict);
        Assert.True(limit.IsComparison);
        Assert.Contains(ExposureWords.WearAndMark, limit.Sentence, StringComparison.Ordinal);
        Assert.Contains(ExposureWords.Comparison, limit.Sentence, StringComparison.Ordinal);
        Assert.Contains(limit.Sentence, said.Wear, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoSheet_CanNotTellAndSaysWhy() =>
        AssertUntold(
            Template with
            {
                Engines = [Template.Engines[0] with { Sheet = null }],
            },
            "a usable sound measurement is missing"
        );

    [Fact]
    public void Of_NoProgramme_CanNotTellAndSaysWhy() =>
        AssertUntold(Template with { Programme = null }, "the plan has no runs");

    [Fact]
    public void Of_NoPlace_CanNotTellAndSaysWhy() =>
        AssertUntold(
            Template with
            {
                People = [.. Template.People.Select(p => p with { Area = [], Place = null })],
            },
            "nobody says where they are"
        );

    [Fact]
    public void Of_NoRulesChosen_CanNotTellWhatIsAskedNorHowLong()
    {
        AssessedPerson said = One(Template with { RuleSets = [] }, "visitors");

        Assert.Contains("no noise rules are chosen", said.Wear, StringComparison.Ordinal);
        Assert.StartsWith("Cannot tell how long", said.Stay, StringComparison.Ordinal);
        Assert.Empty(said.Limits);
    }

    [Fact]
    public void Of_NobodyThereWhileItRuns_SaysSo()
    {
        PersonGroup visitors = Template.People.First(p => p.Id == "visitors") with
        {
            Presence = [new() { From = new(3, 0), To = new(3, 1) }],
        };

        AssessedPerson said = One(Template with { People = [visitors] }, "visitors");

        Assert.All([said.Sentence, said.Wear, said.Stay], s => Assert.Contains(ExposureWords.NothingRuns, s));
    }

    [Fact]
    public void Of_VisitorsBesideTheEngine_SayFirstThatTheyAreKeptOutAndThatTheCeilingIsReached()
    {
        PersonGroup visitors = Template.People.First(p => p.Id == "visitors") with
        {
            Area = [],
            Place = Template.Engines[0].Place.Along(Template.Engines[0].ExhaustHeadingDegrees + 90, 1),
        };

        AssessedPerson said = One(Template with { People = [visitors] }, "visitors");

        Assert.StartsWith("No stay while it applies: kept out by", said.Stay, StringComparison.Ordinal);
        Assert.Contains(RowLabels.Of(ZoneRow.HotAndSpinningParts), said.Stay, StringComparison.Ordinal);
        Assert.Contains("the ceiling of 115.0\u00A0dB(A) is reached", said.Stay, StringComparison.Ordinal);
    }

    private static void AssertUntold(Plan plan, string why) =>
        Assert.All(
            AssessedPeople.Of(plan, Assessed(plan)),
            said =>
            {
                Assert.Null(said.Place);
                Assert.All(
                    [said.Sentence, said.Wear, said.Stay],
                    sentence => Assert.Contains(why, sentence, StringComparison.Ordinal)
                );
                Assert.Contains("cannot tell", said.Sentence, StringComparison.Ordinal);
                Assert.StartsWith("Cannot tell", said.Wear, StringComparison.Ordinal);
                Assert.DoesNotContain(said.Limits, l => l.Verdict == Verdict.Meets);
            }
        );

    private static AssessedPerson One(Plan plan, string groupId) =>
        AssessedPeople.Of(plan, Assessed(plan)).First(p => p.GroupId == groupId);

    private static Assessment Assessed(Plan plan) =>
        Assessor.AssessWithoutCosts(plan, TestContext.Current.CancellationToken);
}
