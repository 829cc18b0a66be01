namespace ShowSafety.Web.Tests.PlanFormat;

public sealed class ReferenceEndpointsTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task PlanSchema_Asked_IsTheSchemaOfPlans()
    {
        using var client = service.CreateClient();

        var schema = await client.GetGoodAsync("/api/plan-schema");

        Assert.Equal("urn:showsafety:plan:1", schema.GetProperty("$id").GetString());
    }

    [Fact]
    public async Task RuleSets_Asked_SayWhomTheyCoverAndTheirSource()
    {
        using var client = service.CreateClient();

        var sets = (await client.GetGoodAsync("/api/rule-sets")).EnumerateArray().ToList();

        var law = sets.Single(s => s.GetProperty("id").GetString() == "eu-2003-10");
        Assert.Equal("work", law.GetProperty("covers").GetProperty("kind").GetString());
        Assert.All(sets, s => Assert.NotEqual("", s.GetProperty("source").GetProperty("edition").GetString()));
        Assert.All(sets, s => Assert.NotEqual(0, s.GetProperty("clauses").GetArrayLength()));
    }

    [Fact]
    public async Task Materials_Asked_HaveEightBandsAndASource()
    {
        using var client = service.CreateClient();

        var materials = (await client.GetGoodAsync("/api/materials")).EnumerateArray().ToList();

        Assert.NotEmpty(materials);
        Assert.All(materials, m => Assert.Equal(8, m.GetProperty("absorption").GetArrayLength()));
        Assert.All(materials, m => Assert.NotEqual("", m.GetProperty("source").GetProperty("title").GetString()));
    }
}
