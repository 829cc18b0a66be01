using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;

namespace ShowSafety.Web.Tests.Hosting;

public sealed class EmptyErrorsTests(RunningService service) : IClassFixture<RunningService>
{
    [Theory]
    [InlineData("*/*")]
    [InlineData("text/html")]
    public async Task UnknownApiPath_WhateverIsAccepted_GivesProblemDetails(string accepted)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/api/nothing", UriKind.Relative));
        request.Headers.Accept.Add(MediaTypeWithQualityHeaderValue.Parse(accepted));

        var problem = await ProblemOf(request, HttpStatusCode.NotFound);

        Assert.Equal("Not Found", problem.GetProperty("title").GetString());
        Assert.Equal("There is nothing at /api/nothing.", problem.GetProperty("detail").GetString());
    }

    [Fact]
    public async Task WrongMethod_KnownPath_GivesProblemDetails()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri("/health", UriKind.Relative));

        var problem = await ProblemOf(request, HttpStatusCode.MethodNotAllowed);

        Assert.Equal("/health does not answer POST.", problem.GetProperty("detail").GetString());
    }

    private async Task<JsonElement> ProblemOf(HttpRequestMessage request, HttpStatusCode expected)
    {
        using var client = service.CreateClient();
        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(expected, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        var problem = await response.Content.ReadFromJsonAsync<JsonElement>(TestContext.Current.CancellationToken);
        Assert.Equal((int)expected, problem.GetProperty("status").GetInt32());
        return problem;
    }
}
