using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

/// <summary>What somebody does who opens the page for the first time: sees the bench, makes the line right, names a plan.</summary>
[Collection(PageSuite.Name)]
public sealed class LinePageTests(RunningService service, Browser browser)
{
    private const string Field = "field-with-neighbour";

    [Fact]
    public async Task Line_DraggedIntoTheKeepOut_IsMadeRightByOnePressAndOneUndo()
    {
        var tab = await OpenAsync();
        await Expect(tab.LineRow).ToContainTextAsync("Outside every zone that keeps the public out");

        await DragOntoBenchAsync(tab, tab.LineCorner(1));
        await tab.WaitUntilCheckedAsync();
        await Expect(tab.LineRow).ToContainTextAsync("Too near by");
        await Expect(tab.LineRow).ToContainTextAsync(" m or more");

        await tab.LayAsSuggested.ClickAsync();
        await tab.WaitUntilCheckedAsync();
        await Expect(tab.LineRow).ToContainTextAsync("Outside every zone that keeps the public out");
        await Expect(tab.Headline).ToHaveAttributeAsync("data-verdict", "noStopFound");
        await Expect(tab.LayAsSuggested).ToHaveCountAsync(0);

        await tab.Undo.ClickAsync();
        await tab.WaitUntilCheckedAsync();
        await Expect(tab.LineRow).ToContainTextAsync("Too near by");
        Assert.Empty(tab.Complaints.Heard);
    }

    [Fact]
    public async Task SuggestedLine_LongerThanTheView_IsInViewOnceItIsLaid()
    {
        var tab = await OpenAsync();
        await DragOntoBenchAsync(tab, tab.LineCorner(1));
        await tab.WaitUntilCheckedAsync();

        await tab.LayAsSuggested.ClickAsync();
        await tab.WaitUntilCheckedAsync();

        await Expect(tab.LineCorner(1)).ToBeInViewportAsync();
        var corners = tab.Page.Locator("button.grip[data-kind=corner]");
        await Expect(corners.Last).ToBeInViewportAsync();
        Assert.True(await corners.CountAsync() > 2);
    }

    [Fact]
    public async Task FirstView_LargeSite_ShowsTheLineLargeAndTheWholeSiteOnRequest()
    {
        var tab = await OpenAsync();
        var first = await LinePixelsAsync(tab);

        await tab.Page.GetByRole(AriaRole.Button, new() { Name = "whole site" }).ClickAsync();
        var whole = await LinePixelsUntilAsync(tab, pixels => pixels < first / 1.5);
        Assert.True(whole > 0);

        await tab.Page.GetByRole(AriaRole.Button, new() { Name = "bench and line" }).ClickAsync();
        await LinePixelsUntilAsync(tab, pixels => Math.Abs(pixels - first) < 3);
    }

    [Fact]
    public async Task Plan_StartedFromATemplate_HasATitleOfItsOwnAndSaysWhatIsStillInvented()
    {
        var tab = await OpenAsync();
        await tab.StartFromFirstTemplateAsync();
        await Expect(tab.Title).ToHaveValueAsync("Untitled plan");
        await Expect(tab.Headline).ToContainTextAsync("EXAMPLE VALUES");
        await tab.LookAtAsync("Find out");
        var invented = tab.Drawer.GetByText("values are still invented");
        await invented.ClickAsync(new() { Timeout = 30_000 });
        await Expect(tab.Drawer).ToContainTextAsync("temperature");

        await tab.Title.FillAsync("Our summer show");
        await tab.Title.PressAsync("Enter");
        await tab.WaitUntilSavedAsync();
        await tab.Page.ReloadAsync();
        await tab.WaitUntilCheckedAsync();

        await Expect(tab.Title).ToHaveValueAsync("Our summer show");
        await tab.OpenShelfAsync();
        await Expect(tab.Page.GetByRole(AriaRole.List, new() { Name = "Your plans" }))
            .ToContainTextAsync("Our summer show");
    }

    [Fact]
    public async Task LevelPicture_SwitchedOn_NamesTheRulesOfItsLines()
    {
        var tab = await OpenAsync();
        await tab.LookAtAsync("Areas");

        await tab.Drawer.GetByRole(AriaRole.Switch, new() { NameRegex = new("^Level picture") }).CheckAsync();

        await Expect(tab.Page.Locator(".level-note"))
            .ToContainTextAsync("80, 85 dB(A): Directive 2003/10/EC", new() { Timeout = 30_000 });
    }

    private async Task<PlanTab> OpenAsync() =>
        await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

    private static async Task<float> LinePixelsAsync(PlanTab tab)
    {
        var (a, b) = (await tab.LineCorner(1).BoundingBoxAsync(), await tab.LineCorner(2).BoundingBoxAsync());
        return (b?.X ?? 0) - (a?.X ?? 0);
    }

    private static async Task<float> LinePixelsUntilAsync(PlanTab tab, Predicate<float> reached)
    {
        for (var tries = 0; tries < 100; tries++)
        {
            var pixels = await LinePixelsAsync(tab);
            if (reached(pixels))
            {
                return pixels;
            }

            await tab.Page.WaitForTimeoutAsync(100);
        }

        throw new TimeoutException($"The crowd line stays {await LinePixelsAsync(tab)} pixels long.");
    }

    // Beside the bench, in the plane of the rotor: where direct flight keeps everybody out.
    private static async Task DragOntoBenchAsync(PlanTab tab, ILocator corner)
    {
        var (a, b) = (await corner.BoundingBoxAsync(), await tab.Bench.BoundingBoxAsync());
        Assert.NotNull(a);
        Assert.NotNull(b);
        await tab.DragAsync(corner, b.X + (b.Width / 2) - a.X - (a.Width / 2) - 60, b.Y - a.Y - 10);
    }
}
