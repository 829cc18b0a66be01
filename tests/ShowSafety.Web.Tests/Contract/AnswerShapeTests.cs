using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace ShowSafety.Web.Tests.Contract;

/// <summary>
/// What the service sends fits the shapes its description promises, judged by JsonSchema.Net, an implementation of
/// JSON Schema that is not ours.
/// </summary>
public sealed class AnswerShapeTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("closed-marquee", "full")]
    [InlineData("field-with-neighbour", "full")]
    [InlineData("open-sided-marquee", "full")]
    [InlineData("sports-hall", "full")]
    [InlineData("closed-marquee", "drag")]
    [InlineData("field-with-neighbour", "drag")]
    [InlineData("open-sided-marquee", "drag")]
    [InlineData("sports-hall", "drag")]
    public async Task Assessment_OfATemplate_FitsItsShape(string template, string detail)
    {
        using var client = service.CreateClient();

        var answer = await client
            .SendJsonAsync($"/api/assessments?detail={detail}", Api.Template(template))
            .GoodAsync();

        Fits(await ShapeAsync(client, "Assessment"), answer);
    }

    [Fact]
    public async Task Assessment_OfAnEmptyPlan_FitsItsShape()
    {
        using var client = service.CreateClient();
        const string plan =
            """{"schema": "showsafety-plan/1", "title": "Bare", "site": {"outline": [[0,0],[9,0],[9,9]]}}""";

        var answer = await client.SendJsonAsync("/api/assessments", plan).GoodAsync();

        Fits(await ShapeAsync(client, "Assessment"), answer);
    }

    [Theory]
    [InlineData("closed-marquee")]
    [InlineData("open-sided-marquee")]
    public async Task Places_OfATemplate_FitTheirShape(string template)
    {
        using var client = service.CreateClient();
        var body = $$"""{"plan": {{Api.Template(template)}}, "places": [{"place": [0, 0]}, {"place": [9, -30]}]}""";

        var answer = await client.SendJsonAsync("/api/points", body).GoodAsync();

        Fits(await ShapeAsync(client, "PlacesAnswer"), answer);
    }

    [Fact]
    public async Task Shape_AnswerWithAMemberNotDescribed_DoesNotFit()
    {
        using var client = service.CreateClient();
        var answer = await client.SendJsonAsync("/api/assessments?detail=drag", Api.Template()).GoodAsync();
        var changed = JsonNode.Parse(answer.GetRawText())!;
        changed["zones"]![0]!["more"] = 1;

        var shape = await ShapeAsync(client, "Assessment");

        Assert.False(shape.Evaluate(JsonSerializer.SerializeToElement(changed)).IsValid);
    }

    [Fact]
    public async Task Problem_BadInput_FitsItsShape()
    {
        using var client = service.CreateClient();

        var problem = await client
            .SendJsonAsync("/api/assessments", "{}")
            .RefusedAsync(System.Net.HttpStatusCode.BadRequest);

        Fits(await ShapeAsync(client, "ProblemDetails"), problem);
    }

    private static async Task<JsonSchema> ShapeAsync(HttpClient client, string name)
    {
        var description = await client.GetGoodAsync("/openapi/v1.json");
        var shapes = description.GetProperty("components").GetProperty("schemas").GetRawText();
        // The description keeps its shapes elsewhere than a schema does.
        var defs = shapes.Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);
        return JsonSchema.FromText($$"""{"$ref": "#/$defs/{{name}}", "$defs": {{defs}}}""");
    }

    private static void Fits(JsonSchema shape, JsonElement answer)
    {
        var result = shape.Evaluate(answer, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                "\n",
                (result.Details ?? [])
                    .Where(d => d.Errors is not null)
                    .SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}"))
                    .Take(10)
            )
        );
    }
}
