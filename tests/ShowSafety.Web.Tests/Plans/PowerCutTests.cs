using System.Net;
using System.Text;
using ShowSafety.Web.Tests.Hosting;

namespace ShowSafety.Web.Tests.Plans;

/// <summary>The service is ended in the middle of saving: what it called saved is there when it starts again.</summary>
public sealed class PowerCutTests
{
    private const int Rounds = 3;

    [Fact]
    public async Task Kill_DuringSaves_LosesNothingThatWasAcknowledged()
    {
        var folder = Directory.CreateTempSubdirectory("showsafety");
        try
        {
            var acknowledged = new List<(string Path, string Title)>();
            for (var round = 0; round < Rounds; round++)
            {
                using var process = new ServiceProcess("--urls", "http://127.0.0.1:0", "--data", folder.FullName);
                using var client = await process.ClientAsync();
                await CheckAsync(client, acknowledged);
                acknowledged.AddRange(await SaveUntilKilledAsync(process, client, round));
            }

            Assert.True(acknowledged.Count >= Rounds, $"Only {acknowledged.Count} saves were acknowledged.");
            using var last = new ServiceProcess("--urls", "http://127.0.0.1:0", "--data", folder.FullName);
            using var reader = await last.ClientAsync();
            await CheckAsync(reader, acknowledged);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<List<(string Path, string Title)>> SaveUntilKilledAsync(
        ServiceProcess process,
        HttpClient client,
        int round
    )
    {
        var saved = new List<(string, string)>();
        using var first = await client.SendJsonAsync("/api/plans", Titled($"Round {round}, first"));
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        saved.Add((first.Headers.Location!.ToString(), $"Round {round}, first"));
        var cut = Task.Delay(100 * (round + 1), TestContext.Current.CancellationToken)
            .ContinueWith(_ => process.Kill(), TestScheduler);
        try
        {
            for (var i = 0; ; i++)
            {
                var title = $"Round {round}, save {i}";
                using var response = await client.SendJsonAsync("/api/plans", Titled(title));
                Assert.Equal(HttpStatusCode.Created, response.StatusCode);
                saved.Add((response.Headers.Location!.ToString(), title));
            }
        }
        catch (HttpRequestException)
        {
            // The cut: this one was not acknowledged.
        }

        await cut;
        return saved;
    }

    private static async Task CheckAsync(HttpClient client, List<(string Path, string Title)> acknowledged)
    {
        foreach (var (path, title) in acknowledged)
        {
            Assert.Equal(title, (await client.GetGoodAsync(path)).GetProperty("title").GetString());
        }
    }

    private static TaskScheduler TestScheduler => TaskScheduler.Default;

    private static string Titled(string title) => Api.Changed(plan => plan["title"] = title);
}
