using System.Runtime.CompilerServices;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Contract;

/// <summary>
/// The description of the service is checked in for the page, which is built before the service. With
/// SHOWSAFETY_REGENERATE=1 in the environment it is written anew instead.
/// </summary>
public sealed class OpenApiTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Description_CheckedIn_IsUpToDate()
    {
        using var client = service.CreateClient();
        var made =
            (
                await client.GetStringAsync(
                    new Uri("/openapi/v1.json", UriKind.Relative),
                    TestContext.Current.CancellationToken
                )
            ).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("SHOWSAFETY_REGENERATE") == "1")
        {
            await File.WriteAllTextAsync(CheckedIn(), made, TestContext.Current.CancellationToken);
            return;
        }

        var stands = await File.ReadAllTextAsync(
            Path.Combine(AppContext.BaseDirectory, "docs/openapi.json"),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(stands.ReplaceLineEndings("\n"), made);
    }

    [Fact]
    public async Task Description_EveryOperation_IsNamedAndDescribed()
    {
        using var client = service.CreateClient();

        var description = await client.GetGoodAsync("/openapi/v1.json");

        Assert.StartsWith("3.1", description.GetProperty("openapi").GetString(), StringComparison.Ordinal);
        var operations = description
            .GetProperty("paths")
            .EnumerateObject()
            .SelectMany(p => p.Value.EnumerateObject().Select(o => (Path: $"{o.Name} {p.Name}", o.Value)))
            .ToList();
        Assert.True(operations.Count > 10);
        Assert.All(operations, o => Assert.NotEqual("", Text(o.Value, "operationId", o.Path)));
        Assert.All(operations, o => Assert.NotEqual("", Text(o.Value, "summary", o.Path)));
        Assert.All(operations, o => Assert.NotEqual("", Text(o.Value, "description", o.Path)));
    }

    private static string Text(JsonElement operation, string member, string path) =>
        operation.TryGetProperty(member, out var text)
            ? text.GetString()!
            : throw new InvalidOperationException($"{path} has no {member}.");

    private static string CheckedIn([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "../../../docs/openapi.json");
}
