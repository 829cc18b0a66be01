using System.Net.Http.Json;
using System.Text.Json;
using Microsoft.Playwright;
using ShowSafety.Web.Tests.Page;

namespace ShowSafety.PageSpeed;

/// <summary>A tab in which benches are dragged at the pace of a hand.</summary>
internal sealed class Dragging : IAsyncDisposable
{
    // A finger crossing a tablet: some 60 movements a second.
    private const int Movements = 180;
    private const int FrameMilliseconds = 16;
    private const float PixelsAcross = 160;

    private readonly Uri address;
    private readonly IPlaywright playwright;
    private readonly IBrowser chromium;

    private Dragging(Uri address, IPlaywright playwright, IBrowser chromium) =>
        (this.address, this.playwright, this.chromium) = (address, playwright, chromium);

    public static async Task<Dragging> OpenAsync(Uri address)
    {
        var playwright = await Playwright.CreateAsync();
        return new(address, playwright, await playwright.Chromium.LaunchAsync(InstalledChromium.Options()));
    }

    /// <summary>Names of the templates the service offers.</summary>
    public async Task<IReadOnlyList<string>> TemplatesAsync()
    {
        using var http = new HttpClient { BaseAddress = address };
        var list = await http.GetFromJsonAsync<JsonElement>("/api/templates");
        return [.. list.EnumerateArray().Select(t => t.GetProperty("name").GetString()!)];
    }

    /// <summary>Opens a template and drags its first bench to and fro.</summary>
    public async Task<DragTimes> DragBenchAsync(string template)
    {
        await using var context = await chromium.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 1280, Height = 900 },
            }
        );
        var page = await context.NewPageAsync();
        using var script = new StreamReader(typeof(Dragging).Assembly.GetManifestResourceStream("watch.js")!);
        await page.AddInitScriptAsync(await script.ReadToEndAsync());
        await page.GotoAsync(new Uri(address, $"/#/example/{template}").ToString());
        var bench = page.Locator("button.grip[data-kind=engine]").First;
        await bench.WaitForAsync();
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var box = await bench.BoundingBoxAsync() ?? throw new InvalidOperationException("The bench is not drawn.");
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await ToAndFroAsync(page, x, y, 60);
        await page.EvaluateAsync("() => window.dragTimes.start()");
        await ToAndFroAsync(page, x, y, Movements);
        await page.WaitForTimeoutAsync(500);
        return await page.EvaluateAsync<JsonElement>("() => window.dragTimes.read()") is { } read
            ? read.Deserialize<DragTimes>(JsonSerializerOptions.Web)!
            : throw new InvalidOperationException("The page noted nothing.");
    }

    public async ValueTask DisposeAsync()
    {
        await chromium.DisposeAsync();
        playwright.Dispose();
    }

    private static async Task ToAndFroAsync(IPage page, float x, float y, int movements)
    {
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 1; i <= movements; i++)
        {
            var across = PixelsAcross * (float)Math.Sin(2 * Math.PI * i / movements);
            await page.Mouse.MoveAsync(x + across, y + (across / 4));
            await page.WaitForTimeoutAsync(FrameMilliseconds);
        }
        await page.Mouse.UpAsync();
    }
}
