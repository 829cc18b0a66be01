using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

/// <summary>A tab with the page in it, driven by what a user wants. Knows how the page is built, so that tests need not.</summary>
internal sealed partial class PlanTab
{
    private PlanTab(IPage page)
    {
        Page = page;
        Complaints = new(page);
        Headline = page.GetByRole(AriaRole.Region, new() { Name = "Headline" });
        Saving = page.GetByRole(AriaRole.Status, new() { Name = "Saving" });
        Undo = page.GetByRole(AriaRole.Button, new() { NameRegex = UndoName() });
        Redo = page.GetByRole(AriaRole.Button, new() { NameRegex = RedoName() });
        Bench = page.Locator("button.grip[data-kind=engine]").First;
        TurnHandle = page.Locator("button.grip[data-kind=turn]").First;
        Drawer = page.GetByRole(AriaRole.Complementary, new() { Name = "Drawer" });
        Title = page.GetByRole(AriaRole.Textbox, new() { Name = "Title", Exact = true });
        LineRow = Headline.Locator(".line-row");
        LayAsSuggested = LineRow.GetByRole(AriaRole.Button, new() { Name = "Lay the crowd line as suggested" });
    }

    public IPage Page { get; }

    /// <summary>What the tab complained about so far.</summary>
    public Complaints Complaints { get; }

    public ILocator Headline { get; }

    public ILocator Saving { get; }

    public ILocator Undo { get; }

    public ILocator Redo { get; }

    /// <summary>The first engine's bench on the plan.</summary>
    public ILocator Bench { get; }

    public ILocator TurnHandle { get; }

    public ILocator Drawer { get; }

    /// <summary>Title of the plan, written over in place.</summary>
    public ILocator Title { get; }

    /// <summary>What the page says of the line that is drawn.</summary>
    public ILocator LineRow { get; }

    public ILocator LayAsSuggested { get; }

    /// <summary>Opens the page and waits until its plan is checked.</summary>
    /// <param name="page">An empty tab.</param>
    /// <param name="address">Address of the service.</param>
    /// <param name="hash">What to open, for example "#/example/sports-hall"; empty for what opens by itself.</param>
    public static async Task<PlanTab> OpenAsync(IPage page, Uri address, string hash = "")
    {
        var tab = new PlanTab(page);
        await page.GotoAsync(new Uri(address, hash).ToString());
        await tab.WaitUntilCheckedAsync();
        return tab;
    }

    public static Task<PlanTab> OpenTemplateAsync(IPage page, Uri address, string name) =>
        OpenAsync(page, address, $"#/example/{name}");

    /// <summary>Waits until the sentence is that of the plan as drawn.</summary>
    public async Task WaitUntilCheckedAsync()
    {
        await Expect(Headline).ToHaveAttributeAsync("data-verdict", KnownVerdict(), new() { Timeout = 30_000 });
        await Expect(Headline).ToHaveAttributeAsync("data-stale", "false", new() { Timeout = 30_000 });
        await Expect(Bench).ToBeVisibleAsync();
    }

    public async Task WaitUntilSavedAsync() =>
        await Expect(Saving).ToHaveTextAsync(SavedAt(), new() { Timeout = 15_000 });

    /// <summary>Drags something by pixels on the screen, in steps as a hand does.</summary>
    public async Task DragAsync(ILocator grip, float right, float down)
    {
        await PressAsync(grip, right, down);
        await Page.Mouse.UpAsync();
    }

    /// <summary>The same without letting go.</summary>
    public async Task PressAsync(ILocator grip, float right, float down)
    {
        var (x, y) = await MiddleOfAsync(grip);
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 8 });
    }

    /// <summary>Turns the first engine about its place by an angle clockwise.</summary>
    public async Task TurnAsync(double degrees)
    {
        var (benchX, benchY) = await MiddleOfAsync(Bench);
        var (x, y) = await MiddleOfAsync(TurnHandle);
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (dx, dy) = (x - benchX, y - benchY);
        await DragAsync(TurnHandle, (float)((dx * cos) - (dy * sin) - dx), (float)((dx * sin) + (dy * cos) - dy));
    }

    /// <summary>Corner of the crowd line, counted from 1.</summary>
    public ILocator LineCorner(int number) =>
        Page.GetByRole(AriaRole.Button, new() { Name = $"Crowd line, corner {number}," });

    /// <summary>Where the bench stands and blows to, as the page says it.</summary>
    public async Task<string> BenchSaysAsync() => await Bench.GetAttributeAsync("aria-label") ?? "";

    public async Task<double> HeadingDegreesAsync() =>
        double.Parse(HeadingSaid().Match(await BenchSaysAsync()).Groups[1].Value, CultureInfo.InvariantCulture);

    public async Task<string> SentenceAsync() => await Headline.InnerTextAsync();

    /// <summary>Opens a section of the drawer.</summary>
    public async Task LookAtAsync(string section) =>
        await Page.GetByRole(AriaRole.Tab, new() { Name = section, Exact = true }).ClickAsync();

    /// <summary>Taps an empty place of the plan, away from the bench by pixels.</summary>
    public async Task TapBesideBenchAsync(float right, float down)
    {
        var (x, y) = await MiddleOfAsync(Bench);
        await Page.Mouse.ClickAsync(x + right, y + down);
    }

    public async Task OpenShelfAsync() =>
        await Page.GetByRole(AriaRole.Button, new() { Name = "Plans", Exact = true }).ClickAsync();

    /// <summary>Starts a plan of one's own from the first example of the shelf.</summary>
    public async Task StartFromFirstTemplateAsync()
    {
        await OpenShelfAsync();
        var shelf = Page.GetByRole(AriaRole.Dialog);
        await shelf.GetByRole(AriaRole.Button, new() { NameRegex = StartName() }).First.ClickAsync();
        await Expect(shelf).ToBeHiddenAsync();
        await WaitUntilCheckedAsync();
    }

    private static async Task<(float X, float Y)> MiddleOfAsync(ILocator grip)
    {
        await Expect(grip).ToBeVisibleAsync();
        var box =
            await grip.BoundingBoxAsync() ?? throw new InvalidOperationException("It is not drawn on the screen.");
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }

    [GeneratedRegex("^Start your own")]
    private static partial Regex StartName();

    [GeneratedRegex("^Undo")]
    private static partial Regex UndoName();

    [GeneratedRegex("^Redo")]
    private static partial Regex RedoName();

    [GeneratedRegex("^(notToRun|noStopFound)$")]
    private static partial Regex KnownVerdict();

    [GeneratedRegex(@"^Saved at \d\d:\d\d$")]
    private static partial Regex SavedAt();

    [GeneratedRegex(@"exhaust heading ([0-9.]+)°")]
    private static partial Regex HeadingSaid();
}
