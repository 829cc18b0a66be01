using CsCheck;
using ShowSafety.Core.Exposure;
using ShowSafety.Core.Exposure.People;
using ShowSafety.Core.Exposure.Rules;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Exposure.People;

public sealed class ListeningPlacesTests
{
    private static readonly PersonGroup Square = new()
    {
        Id = "g",
        Area = [new(10, -5), new(20, -5), new(20, 5), new(10, 5)],
    };

    [Fact]
    public void Of_Area_HasTheNearestPlaceToEveryEngine() =>
        Gen.Select(Gen.Double[-30, 9], Gen.Double[-4, 4])
            .Sample(
                (x, y) =>
                {
                    var engine = new PlanPoint(x, y);
                    double nearest = ListeningPlaces.Of(Square, [engine]).Min(p => p.DistanceMetres(engine));
                    Assert.Equal(10 - x, nearest, 6);
                }
            );

    [Fact]
    public void Of_EngineInsideTheArea_KeepsAnEarsDistance()
    {
        var engine = new PlanPoint(15, 0);

        ValueList<PlanPoint> places = ListeningPlaces.Of(Square, [engine]);

        Assert.Equal(ListeningPlaces.NearestMetres, places.Min(p => p.DistanceMetres(engine)), 6);
    }

    [Fact]
    public void Of_PlaceOnTheEngine_IsMovedOut()
    {
        var group = new PersonGroup { Place = new(0, 0) };

        Assert.Equal(0.5, ListeningPlaces.Of(group, [new(0, 0)]).Single().DistanceMetres(new(0, 0)), 9);
    }

    [Fact]
    public void Of_NeitherAreaNorPlace_IsEmpty() => Assert.Empty(ListeningPlaces.Of(new(), []));

    [Fact]
    public void EarHeights_Children_AddAChildStandingAndOneOnShoulders() =>
        Assert.Equal(
            [1.0, 1.7, 2.2],
            ListeningPlaces.EarHeights(new() { EarHeightMetres = SamplePlan.Measured(1.7) }, PersonPart.Children)
        );

    [Theory]
    [InlineData(PersonRole.Crew, LegalClass.Worker, "eu-2003-10", false)]
    [InlineData(PersonRole.Crew, LegalClass.Volunteer, "eu-2003-10", true)]
    [InlineData(PersonRole.Exhibitor, LegalClass.SelfEmployed, "eu-2003-10", true)]
    [InlineData(PersonRole.Crew, null, "eu-2003-10", true)]
    [InlineData(PersonRole.Visitor, null, "who-venues-2022", false)]
    [InlineData(PersonRole.Visitor, LegalClass.Visitor, "who-venues-2022", false)]
    public void For_Group_AppliesItsKindOfRuleOnly(PersonRole role, LegalClass? legal, string id, bool comparison)
    {
        var group = new PersonGroup { Role = role, LegalClass = legal };

        AppliedRule applied = RuleCover
            .For(
                group,
                PersonPart.Adults,
                [RuleSetLibrary.Find("eu-2003-10")!, RuleSetLibrary.Find("who-venues-2022")!]
            )
            .Single();

        Assert.Equal(id, applied.Set.Id);
        Assert.Equal(comparison, applied.IsComparison);
    }

    [Fact]
    public void For_NeighbourOrChildAtWork_IsCoveredByNone()
    {
        RuleSet[] all = [.. RuleSetLibrary.All];

        Assert.Empty(RuleCover.For(new() { Role = PersonRole.Neighbour }, PersonPart.Adults, all));
        Assert.Empty(
            RuleCover.For(new() { Role = PersonRole.Crew, LegalClass = LegalClass.Volunteer }, PersonPart.Children, all)
        );
    }
}
