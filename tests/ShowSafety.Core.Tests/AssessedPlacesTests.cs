using ShowSafety.Core.Exposure;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests;

public sealed class AssessedPlacesTests
{
    [Fact]
    public void Of_PlaceOfAGroup_SaysWhatTheAssessmentSaysOfThatGroup()
    {
        Plan plan = Template();
        var place = new PlanPoint(plan.Engines[0].Place.XMetres + 12, plan.Engines[0].Place.YMetres);
        var group = new PersonGroup
        {
            Id = "place",
            Role = PersonRole.Visitor,
            Adults = 1,
            Place = place,
        };

        AssessedPlace said = AssessedPlaces.Of(plan, [(place, null)], TestContext.Current.CancellationToken)[0];
        Assessment whole = Assessor.AssessWithoutCosts(
            plan with
            {
                People = [group],
            },
            TestContext.Current.CancellationToken
        );

        Assert.Equal(whole.Exposure.People.Single(p => p.Part == PersonPart.Adults), said.Visitor);
    }

    [Fact]
    public void Of_PlaceAtTheEngine_LiesInZonesThatKeepPeopleOut()
    {
        Plan plan = Template();

        AssessedPlace said = AssessedPlaces.Of(
            plan,
            [(plan.Engines[0].Place, 1.55)],
            TestContext.Current.CancellationToken
        )[0];

        Assert.Contains(said.Zones, z => z is { Effect: ZoneEffect.Excludes, Row: ZoneRow.HotAndSpinningParts });
        Assert.Equal(1.55, said.Loudest!.EarHeightMetres);
        Assert.True(said.Loudest.LevelDbA.Planning > said.Loudest.LevelDbA.Best);
    }

    [Fact]
    public void Of_PlanWithoutEngineSheet_CanNotTell()
    {
        Plan plan = Template();
        Plan bare = plan with { Engines = [plan.Engines[0] with { Sheet = null }] };

        AssessedPlace said = AssessedPlaces.Of(bare, [(new(0, 0), null)], TestContext.Current.CancellationToken)[0];

        Assert.Null(said.Loudest);
        Assert.Empty(said.Protectors);
        Assert.Equal(HearingState.CannotTell, said.Visitor.Hearing);
    }

    [Fact]
    public void Of_NobodyWaits_EndsEarly() =>
        Assert.Throws<OperationCanceledException>(() =>
            AssessedPlaces.Of(Template(), [(new(0, 0), null)], new CancellationToken(true))
        );

    [Fact]
    public void Assess_NobodyWaits_EndsEarly() =>
        Assert.Throws<OperationCanceledException>(() => Assessor.Assess(Template(), new CancellationToken(true)));

    [Fact]
    public void AssessWithoutCosts_Template_IsTheAssessmentLessThePrices()
    {
        Assessment full = Assessor.Assess(Template(), TestContext.Current.CancellationToken);
        Assessment quick = Assessor.AssessWithoutCosts(Template(), TestContext.Current.CancellationToken);

        Assert.Equal(full.Findings, quick.Findings);
        Assert.Equal(
            full.FindOut.Select(i => (i.Field, i.ElementId)).Order(),
            quick.FindOut.Select(i => (i.Field, i.ElementId)).Order()
        );
        Assert.All(quick.FindOut, item => Assert.Null(item.LineMetres));
    }

    [Fact]
    public void Grid_EveryPlace_IsTheLevelSaidOfThatPlace()
    {
        Plan plan = Template();
        PlanPoint corner = plan.Engines[0].Place.Along(45, 20);

        AssessedGrid grid = AssessedGrid.Of(plan, corner, 3, 4, 3, 1.55, TestContext.Current.CancellationToken)!;
        PlanPoint last = new(corner.XMetres + 9, corner.YMetres + 6);
        AssessedPlace said = AssessedPlaces.Of(plan, [(last, 1.55)], TestContext.Current.CancellationToken)[0];

        Assert.Equal(12, grid.BestDbA.Count);
        Assert.Equal(said.Loudest!.LevelDbA.Best, grid.BestDbA[11], 9);
        Assert.Equal(said.Loudest.LevelDbA.Planning, grid.PlanningDbA[11], 9);
    }

    private static Plan Template() =>
        PlanReader
            .Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "site-templates/open-sided-marquee.json")))
            .Plan!;
}
