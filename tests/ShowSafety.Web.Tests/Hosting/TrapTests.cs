using System.Net;
using System.Net.Http.Headers;
using System.Text;

namespace ShowSafety.Web.Tests.Hosting;

/// <summary>
/// Bodies that careless services take for good, sent to every operation that takes one: refused with the right status
/// and every problem by name.
/// </summary>
public sealed class TrapTests(RunningService service) : IClassFixture<RunningService>
{
    private const string Places = """, "places": [{"place": [0, 0]}]}""";

    private const string Window = """, "window": {"lowerLeft": [0, 0], "stepMetres": 1, "columns": 2, "rows": 2}}""";

    private static readonly (string Path, string Before, string After)[] TakePlans =
    [
        ("/api/assessments", "", ""),
        ("/api/assessments?detail=drag", "", ""),
        ("/api/briefs", "", ""),
        ("/api/site-plans", "", ""),
        ("/api/plans", "", ""),
        ("/api/points", """{"plan": """, Places),
        ("/api/levels", """{"plan": """, Window),
    ];

    private static readonly string[] TakeBodies =
    [
        .. TakePlans.Select(p => p.Path),
        "/api/sums/air-absorption",
        "/api/plans/any/versions",
    ];

    private static readonly (string Name, byte[] Body, string Code)[] Broken =
    [
        ("empty", [], "not-json"),
        ("spaces", "   "u8.ToArray(), "not-json"),
        ("truncated", """{"title": "Half a pl"""u8.ToArray(), "not-json"),
        ("two documents", "{} {}"u8.ToArray(), "not-json"),
        ("comment", "{} // done"u8.ToArray(), "not-json"),
        ("a zero byte", [0], "not-json"),
        ("null", "null"u8.ToArray(), "*"),
        ("a number", "5"u8.ToArray(), "wrong-type"),
        ("a list", "[]"u8.ToArray(), "wrong-type"),
        ("a text", "\"plan\""u8.ToArray(), "wrong-type"),
        ("not UTF-8", [(byte)'{', (byte)'"', 0xC3, 0x28, (byte)'"', (byte)':', (byte)'1', (byte)'}'], "*"),
        ("half a surrogate pair", """{"\ud800": 1}"""u8.ToArray(), "*"),
        ("UTF-16", Encoding.Unicode.GetBytes("{}"), "*"),
        ("deep", Encoding.ASCII.GetBytes(new string('[', 100_000)), "*"),
        ("deep members", Encoding.ASCII.GetBytes(string.Concat(Enumerable.Repeat("{\"a\":", 10_000))), "*"),
    ];

    // Found in every template that way, and what is put there instead.
    private static readonly (string Stands, string Instead, string Code)[] Traps =
    [
        ("\"northDegrees\": 340", "\"northDegrees\": \"NaN\"", "/site/northDegrees wrong-type"),
        ("\"northDegrees\": 340", "\"northDegrees\": NaN", "not-json"),
        ("\"northDegrees\": 340", "\"northDegrees\": \"12\"", "/site/northDegrees wrong-type"),
        ("\"northDegrees\": 340", "\"northDegrees\": 1e999", "/site/northDegrees not-finite"),
        ("\"northDegrees\": 340", "\"northDegrees\": 1e99", "/site/northDegrees out-of-range"),
        ("\"northDegrees\": 340", "\"northDegrees\": null", "/site/northDegrees null"),
        ("\"northDegrees\": 340", "\"northDegrees\": [340]", "/site/northDegrees wrong-type"),
        ("\"northDegrees\": 340", "\"northDegrees\": true", "/site/northDegrees wrong-type"),
        ("\"northDegrees\": 340", "\"northDegres\": 340", "/site/northDegres unknown-member"),
        (
            "\"northDegrees\": 340",
            "\"northDegrees\": 340, \"northDegrees\": 341",
            "/site/northDegrees duplicate-member"
        ),
        ("{\"value\": 18, ", "{", "/site/air/temperatureCelsius/value missing"),
        ("{\"value\": 18, ", "{\"value\": 4000, ", "/site/air/temperatureCelsius/value out-of-range"),
        ("\"outline\": [[-50, -90], [50, -90], [50, 110], [-50, 110]],", "", "/site/outline missing"),
        ("[[-50, -90], [50, -90], [50, 110], [-50, 110]]", "[]", "/site/outline too-few"),
        ("[[-50, -90], [50, -90],", "[[-50], [50, -90],", "/site/outline/0 "),
        ("\"ground\": \"hard\"", "\"ground\": 99", "/site/ground wrong-type"),
        ("\"ground\": \"hard\"", "\"ground\": \"marble\"", "/site/ground unknown-word"),
        ("\"ground\": \"hard\"", "\"ground\": \"Hard\"", "/site/ground unknown-word"),
        ("\"groundPatches\": [", "\"groundPatches\": [null, ", "/site/groundPatches/0 null"),
        ("\"groundPatches\": [", "\"groundPatches\": [5, ", "/site/groundPatches/0 wrong-type"),
        ("\"title\": \"Open-sided marquee on hard standing\"", "\"title\": \" \"", "/title blank"),
        ("\"title\": \"Open-sided marquee on hard standing\"", "\"title\": \"a\\u0007b\"", "/title control-character"),
        ("\"title\": \"Open-sided marquee on hard standing\"", "\"title\": \"a\\ud800b\"", "/title "),
    ];

    public static TheoryData<string, string> EveryBrokenBody() =>
        [.. TakeBodies.SelectMany(path => Broken.Select(b => (path, b.Name)))];

    public static TheoryData<string, string, string> EveryTrap() =>
        [.. TakePlans.SelectMany(p => Traps.Select(t => (p.Path, t.Stands, t.Instead)))];

    public static TheoryData<string> EveryPath() => [.. TakeBodies];

    [Theory]
    [MemberData(nameof(EveryBrokenBody))]
    public async Task Body_Broken_IsRefusedWithWhatIsTheMatter(string path, string name)
    {
        var (_, body, code) = Broken.Single(b => b.Name == name);

        var problem = await SendAsync(path, body, "application/json").RefusedAsync(HttpStatusCode.BadRequest);

        Assert.NotEmpty(problem.Errors());
        Assert.True(code == "*" || problem.Errors() is [var error] && error == $" {code}", problem.GetRawText());
    }

    [Theory]
    [MemberData(nameof(EveryTrap))]
    public async Task Body_Trap_IsRefusedByName(string path, string stands, string instead)
    {
        var (_, before, after) = TakePlans.Single(p => p.Path == path);
        var expected = Traps.Single(t => (t.Stands, t.Instead) == (stands, instead)).Code;
        var plan = Api.Template();
        Assert.Contains(stands, plan, StringComparison.Ordinal);
        var body = before + plan.Replace(stands, instead, StringComparison.Ordinal) + after;

        var problem = await SendAsync(path, Encoding.UTF8.GetBytes(body), "application/json")
            .RefusedAsync(HttpStatusCode.BadRequest);

        var pointer = before.Length > 0 && expected.StartsWith('/') ? "/plan" + expected : expected;
        Assert.Contains(problem.Errors(), e => e.Trim().StartsWith(pointer, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Body_WithAByteOrderMark_IsReadAllTheSame()
    {
        byte[] body = [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Api.Template())];

        using var response = await SendAsync("/api/plans", body, "application/json");

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Body_NotSaidToBeJson_IsRefused(string path)
    {
        var body = Encoding.UTF8.GetBytes(Api.Template());
        foreach (var mediaType in new[] { null, "text/plain", "application/x-www-form-urlencoded", "text/json" })
        {
            await SendAsync(path, body, mediaType).RefusedAsync(HttpStatusCode.UnsupportedMediaType);
        }
    }

    [Theory]
    [MemberData(nameof(EveryPath))]
    public async Task Body_OfTwentyMegabytes_IsRefusedWithItsProblem(string path)
    {
        var body = new byte[20_000_000];
        Array.Fill(body, (byte)' ');

        var problem = await SendAsync(path, body, "application/json")
            .RefusedAsync(HttpStatusCode.RequestEntityTooLarge);

        Assert.Equal([" too-large"], problem.Errors());
    }

    private async Task<HttpResponseMessage> SendAsync(string path, byte[] body, string? mediaType)
    {
        using var client = service.CreateClient();
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = mediaType is null ? null : MediaTypeHeaderValue.Parse(mediaType);
        return await client.PostAsync(new Uri(path, UriKind.Relative), content, TestContext.Current.CancellationToken);
    }
}
