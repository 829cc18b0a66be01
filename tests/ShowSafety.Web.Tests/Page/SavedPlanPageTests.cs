using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

/// <summary>What the page keeps, hands out and starts.</summary>
[Collection(PageSuite.Name)]
public sealed class SavedPlanPageTests(RunningService service, Browser browser)
{
    private const string Field = "field-with-neighbour";

    [Fact]
    public async Task Plan_Changed_IsSavedByItselfAndFoundAfterReload()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

        await tab.DragAsync(tab.Bench, 50, -30);
        await tab.WaitUntilSavedAsync();
        var moved = await tab.BenchSaysAsync();
        Assert.Contains("#/plan/", tab.Page.Url, StringComparison.Ordinal);

        await tab.Page.ReloadAsync();
        await tab.WaitUntilCheckedAsync();
        Assert.Equal(moved, await tab.BenchSaysAsync());
        await tab.WaitUntilSavedAsync();
        Assert.Empty(tab.Complaints.Heard);
    }

    [Fact]
    public async Task Brief_Downloaded_HoldsTheEventsName()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

        var download = await tab.Page.RunAndWaitForDownloadAsync(
            () => tab.Page.GetByRole(AriaRole.Button, new() { Name = "Brief", Exact = true }).ClickAsync(),
            new() { Timeout = 60_000 }
        );

        Assert.EndsWith(".pdf", download.SuggestedFilename, StringComparison.Ordinal);
        using var brief = PdfDocument.Open(await download.PathAsync());
        Assert.Contains("Invented", brief.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_StartedFromATemplate_OpensNotToRunWithItsFindOutList()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

        await tab.OpenShelfAsync();
        await tab
            .Page.GetByRole(AriaRole.Dialog)
            .GetByRole(AriaRole.Button, new() { NameRegex = new("^Start your own") })
            .First.ClickAsync();
        await Expect(tab.Page.GetByRole(AriaRole.Dialog)).ToBeHiddenAsync();
        await tab.WaitUntilCheckedAsync();

        await Expect(tab.Headline).ToContainTextAsync("NOT TO RUN");
        await tab.LookAtAsync("Find out");
        await Expect(tab.Drawer.GetByRole(AriaRole.Listitem).First).ToBeVisibleAsync(new() { Timeout = 30_000 });
    }

    [Fact]
    public async Task TwoTabs_InConflict_AreToldAndNothingIsLost()
    {
        await using var context = await browser.NewContextAsync();
        var first = await PlanTab.OpenTemplateAsync(await context.NewPageAsync(), service.Address, Field);
        await first.DragAsync(first.Bench, 30, 0);
        await first.WaitUntilSavedAsync();
        var second = await PlanTab.OpenAsync(
            await context.NewPageAsync(),
            service.Address,
            new Uri(first.Page.Url).Fragment
        );

        await second.DragAsync(second.Bench, 0, -40);
        await second.WaitUntilSavedAsync();
        await first.Page.BringToFrontAsync();
        await first.DragAsync(first.Bench, 0, 40);
        var mine = await first.BenchSaysAsync();
        var theirs = await second.BenchSaysAsync();

        var notice = first.Page.GetByRole(AriaRole.Alert, new() { Name = "Changed in another window" });
        await Expect(notice).ToContainTextAsync("This plan was changed in another window");
        var shared = first.Page.Url;
        await notice.GetByRole(AriaRole.Button).First.ClickAsync();
        await first.WaitUntilSavedAsync();

        Assert.NotEqual(shared, first.Page.Url);
        Assert.Equal(mine, await first.BenchSaysAsync());
        await second.Page.ReloadAsync();
        await second.WaitUntilCheckedAsync();
        Assert.Equal(theirs, await second.BenchSaysAsync());
    }
}
