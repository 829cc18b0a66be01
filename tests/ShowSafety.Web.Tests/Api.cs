using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ShowSafety.Web.Tests;

/// <summary>What a client of the service does, in its words.</summary>
internal static class Api
{
    /// <summary>The text of a template, as the program brings it.</summary>
    public static string Template(string name = "open-sided-marquee") =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "site-templates", name + ".json"));

    /// <summary>A template with one change.</summary>
    public static string Changed(Action<JsonNode> change)
    {
        var plan = JsonNode.Parse(Template())!;
        change(plan);
        return plan.ToJsonString();
    }

    /// <summary>Sends JSON text.</summary>
    public static Task<HttpResponseMessage> SendJsonAsync(this HttpClient client, string path, string json) =>
        client.SendAsAsync(path, json, "application/json", TestContext.Current.CancellationToken);

    /// <summary>Sends text as a media type.</summary>
    public static async Task<HttpResponseMessage> SendAsAsync(
        this HttpClient client,
        string path,
        string text,
        string mediaType,
        CancellationToken cancel
    )
    {
        using var content = new StringContent(text, Encoding.UTF8, mediaType);
        return await client.PostAsync(new Uri(path, UriKind.Relative), content, cancel);
    }

    /// <summary>The JSON of an answer that must be good.</summary>
    public static async Task<JsonElement> GoodAsync(this Task<HttpResponseMessage> sent)
    {
        using var response = await sent;
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(response.IsSuccessStatusCode, $"{(int)response.StatusCode}: {text}");
        return JsonDocument.Parse(text).RootElement;
    }

    /// <summary>Gets JSON.</summary>
    public static Task<JsonElement> GetGoodAsync(this HttpClient client, string path) =>
        client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken).GoodAsync();

    /// <summary>The problem details of an answer that must be a refusal.</summary>
    public static async Task<JsonElement> RefusedAsync(this Task<HttpResponseMessage> sent, HttpStatusCode expected)
    {
        using var response = await sent;
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(expected == response.StatusCode, $"{(int)response.StatusCode}: {text}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        var problem = JsonDocument.Parse(text).RootElement;
        Assert.Equal((int)expected, problem.GetProperty("status").GetInt32());
        Assert.False(string.IsNullOrWhiteSpace(problem.GetProperty("title").GetString()));
        return problem;
    }

    /// <summary>Pointer and code of every error, as "pointer code".</summary>
    public static IReadOnlyList<string> Errors(this JsonElement problem) =>
        [
            .. problem
                .GetProperty("errors")
                .EnumerateArray()
                .Select(e =>
                {
                    Assert.False(string.IsNullOrWhiteSpace(e.GetProperty("text").GetString()));
                    return $"{e.GetProperty("pointer").GetString()} {e.GetProperty("code").GetString()}";
                }),
        ];
}
