using System.Text;
using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class PlanWriterTests
{
    private static readonly Plan Small = PlanJson.Plan(PlanJson.Smallest);

    [Fact]
    public void Write_SmallestPlan_IsCompactAndInOrder() =>
        Assert.Equal(PlanJson.Smallest, Encoding.UTF8.GetString(PlanWriter.Write(Small)));

    [Fact]
    public void Write_ThenRead_GivesAnEqualPlan() =>
        Gen.ULong.Sample(
            seed =>
            {
                Plan plan = PlanJson.Plan(RandomPlan.Some(seed).ToJsonString());
                byte[] bytes = PlanWriter.Write(plan);
                Plan again = PlanReader.Read(bytes).Plan!;
                Assert.Equal(plan, again);
                Assert.Equal(bytes, PlanWriter.Write(again));
                Assert.Equal(PlanHash.Of(plan), PlanHash.Of(again));
            },
            iter: 300
        );

    [Fact]
    public void Write_CompletePlan_KeepsEveryMember()
    {
        string json = RandomPlan.Complete(7).ToJsonString();

        string written = Encoding.UTF8.GetString(PlanWriter.Write(PlanJson.Plan(json)));

        Assert.True(
            System.Text.Json.Nodes.JsonNode.DeepEquals(
                System.Text.Json.Nodes.JsonNode.Parse(json),
                System.Text.Json.Nodes.JsonNode.Parse(written)
            )
        );
    }

    [Fact]
    public void Write_NegativeZero_IsZero()
    {
        Plan minus = Small with { Site = Small.Site with { NorthDegrees = -0.0 } };
        Plan plus = Small with { Site = Small.Site with { NorthDegrees = 0.0 } };

        Assert.Equal(PlanHash.Of(plus), PlanHash.Of(minus));
    }

    [Fact]
    public void Write_TenthOfAMetre_UsesTheShortestDigits()
    {
        Plan plan = Small with { Site = Small.Site with { NorthDegrees = 0.1 } };

        Assert.Contains(
            "\"northDegrees\":0.1}",
            Encoding.UTF8.GetString(PlanWriter.Write(plan)),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Hash_SmallestPlan_IsSha256OfItsBytes() =>
        // The digest of the line above by sha256sum of GNU coreutils.
        Assert.Equal("a2c779eef8186782a4db9cffa03618227e341b2c2cff57facbc0859809a71059", PlanHash.Of(Small));

    [Fact]
    public void Hash_OneMillimetreMoved_Differs()
    {
        ValueList<PlanPoint> moved = [new(0, 0.001), .. Small.Site.Outline.Skip(1)];

        Assert.NotEqual(PlanHash.Of(Small), PlanHash.Of(Small with { Site = Small.Site with { Outline = moved } }));
    }
}
