using System.Net;

namespace ShowSafety.Web.Tests.Hosting;

public sealed class MethodTests(RunningService service) : IClassFixture<RunningService>
{
    // Every address of the description, by every method it does not list.
    [Fact]
    public async Task Request_MethodNotListed_IsRefusedWithProblemDetails()
    {
        using var client = service.CreateClient();
        var paths = (await client.GetGoodAsync("/openapi/v1.json")).GetProperty("paths").EnumerateObject().ToList();
        Assert.True(paths.Count > 15);
        foreach (var path in paths)
        {
            var listed = path.Value.EnumerateObject().Select(o => o.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
            foreach (var method in new[] { "GET", "POST", "PUT", "DELETE", "PATCH" }.Where(m => !listed.Contains(m)))
            {
                var address = path
                    .Name.Replace("{id}", "any", StringComparison.Ordinal)
                    .Replace("{name}", "any", StringComparison.Ordinal)
                    .Replace("{number}", "1", StringComparison.Ordinal);
                using var request = new HttpRequestMessage(new HttpMethod(method), new Uri(address, UriKind.Relative));
                await client
                    .SendAsync(request, TestContext.Current.CancellationToken)
                    .RefusedAsync(HttpStatusCode.MethodNotAllowed);
            }
        }
    }
}
