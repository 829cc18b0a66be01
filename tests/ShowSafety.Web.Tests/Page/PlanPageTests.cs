using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

/// <summary>What a user does with the plan on the page, in Chromium against the service.</summary>
[Collection(PageSuite.Name)]
public sealed class PlanPageTests(RunningService service, Browser browser)
{
    private const string Field = "field-with-neighbour";

    [Fact]
    public async Task Page_Opened_ShowsAPlannedDemonstrationAtOnceAndComplainsOfNothing()
    {
        await using var fresh = new RunningService();
        var tab = await PlanTab.OpenAsync(await browser.NewPageAsync(), fresh.Address);

        await Expect(tab.Saving).ToHaveTextAsync("Example, nothing saved");
        await Expect(tab.Headline).ToContainTextAsync("EXAMPLE");
        await Expect(tab.Headline).ToContainTextAsync(" m");
        await Expect(tab.LineCorner(1)).ToBeVisibleAsync();
        await tab.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.Empty(tab.Complaints.Heard);
    }

    [Fact]
    public async Task Bench_DraggedTowardsTheLine_IsSaidInWordsAndUndone()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        var (place, sentence) = (await tab.BenchSaysAsync(), await tab.SentenceAsync());

        await tab.DragAsync(tab.Bench, 60, 40);
        await tab.WaitUntilCheckedAsync();

        Assert.NotEqual(place, await tab.BenchSaysAsync());
        await Expect(tab.Undo).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^Undo: Move "));
        await Expect(tab.Headline).ToContainTextAsync("ine");

        await tab.Undo.ClickAsync();
        await tab.WaitUntilCheckedAsync();
        Assert.Equal(place, await tab.BenchSaysAsync());
        Assert.StartsWith(sentence.Split('\n')[0], await tab.SentenceAsync(), StringComparison.Ordinal);

        await tab.Redo.ClickAsync();
        await tab.WaitUntilCheckedAsync();
        Assert.NotEqual(place, await tab.BenchSaysAsync());
        Assert.Empty(tab.Complaints.Heard);
    }

    [Fact]
    public async Task Line_MovedIntoTheKeepOut_IsNotToRunUntilUndone()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        await Expect(tab.Headline).ToHaveAttributeAsync("data-verdict", "noStopFound");

        await DragOntoAsync(tab, tab.LineCorner(1), tab.Bench);
        await tab.WaitUntilCheckedAsync();

        await Expect(tab.Headline).ToHaveAttributeAsync("data-verdict", "notToRun");
        await Expect(tab.Headline).ToContainTextAsync("NOT TO RUN");

        await tab.Page.Keyboard.PressAsync("Control+z");
        await tab.WaitUntilCheckedAsync();
        await Expect(tab.Headline).ToHaveAttributeAsync("data-verdict", "noStopFound");
    }

    [Fact]
    public async Task Engine_TurnedByItsHandle_BlowsAnotherWay()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        var before = await tab.HeadingDegreesAsync();

        await tab.TurnAsync(30);
        await tab.WaitUntilCheckedAsync();

        // The handle turns about the engine, not about the middle of its bench: near thirty degrees, and clockwise.
        Assert.InRange((await tab.HeadingDegreesAsync() - before + 360) % 360, 20, 45);
        await Expect(tab.Undo).ToContainTextAsync("Turn ");
    }

    [Fact]
    public async Task Bench_MovedByKeys_GoesADecimetreOrAMetre()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        await tab.Bench.FocusAsync();

        await tab.Page.Keyboard.PressAsync("ArrowRight");
        await tab.Page.Keyboard.PressAsync("Shift+ArrowUp");
        await tab.Page.Keyboard.PressAsync("]");

        await Expect(tab.Undo).ToContainTextAsync("Turn ");
        Assert.Contains("at 0.1, 1.0 m", await tab.BenchSaysAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drag_GivenUpWithEscape_ChangesNothing()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        var place = await tab.BenchSaysAsync();

        await tab.Bench.FocusAsync();
        await tab.PressAsync(tab.Bench, 80, 0);
        Assert.NotEqual(place, await tab.BenchSaysAsync());
        await tab.Page.Keyboard.PressAsync("Escape");
        await tab.Page.Mouse.UpAsync();

        Assert.Equal(place, await tab.BenchSaysAsync());
        await Expect(tab.Undo).ToBeDisabledAsync();
        await Expect(tab.Saving).ToHaveTextAsync("Example, nothing saved");
    }

    [Fact]
    public async Task Spot_Tapped_SaysHowLoudHowLongAndWhatToWear()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

        await tab.TapBesideBenchAsync(150, -60);

        await Expect(tab.Drawer).ToContainTextAsync("dB(A)");
        foreach (var fact in new[] { "How loud", "Stay", "Wear", "Why" })
        {
            await Expect(tab.Drawer.GetByText(fact, new() { Exact = true })).ToBeVisibleAsync();
        }

        await tab.Drawer.GetByText("How the sound gets there").ClickAsync();
        await Expect(tab.Drawer.GetByText("Straight from")).ToBeVisibleAsync();
        await Expect(tab.Drawer).ToContainTextAsync("dB by distance");
        Assert.Empty(tab.Complaints.Heard);
    }

    [Fact]
    public async Task Drawer_EverySection_HasSomethingToSayWithItsUnit()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);

        await tab.LookAtAsync("To do");
        await Expect(tab.Drawer.GetByRole(AriaRole.Listitem).First).ToBeVisibleAsync();
        await tab.LookAtAsync("People");
        await Expect(tab.Drawer).ToContainTextAsync("dB(A)");
        await tab.LookAtAsync("Areas");
        await Expect(tab.Drawer).ToContainTextAsync(" m");
        await tab.LookAtAsync("By numbers");
        await Expect(tab.Drawer.GetByRole(AriaRole.Spinbutton).Or(tab.Drawer.GetByRole(AriaRole.Textbox)).First)
            .ToBeVisibleAsync();
        await tab.LookAtAsync("About");
        await Expect(tab.Drawer).ToContainTextAsync("Never run where the plan says NOT TO RUN.");
    }

    [Fact]
    public async Task Page_ServiceSilent_SaysSoAndLosesNothing()
    {
        var tab = await PlanTab.OpenTemplateAsync(await browser.NewPageAsync(), service.Address, Field);
        await tab.Page.RouteAsync("**/api/assessments**", route => route.AbortAsync());

        await tab.DragAsync(tab.Bench, 40, 0);
        var moved = await tab.BenchSaysAsync();
        await Expect(tab.Headline).ToContainTextAsync("Not checked");

        await tab.Page.UnrouteAsync("**/api/assessments**");
        await tab.Headline.GetByRole(AriaRole.Button, new() { Name = "Try again" }).ClickAsync();
        await Expect(tab.Headline).Not.ToContainTextAsync("Not checked");
        await tab.WaitUntilCheckedAsync();
        Assert.Equal(moved, await tab.BenchSaysAsync());
    }

    [Fact]
    public async Task Page_InlineScript_IsRefusedByThePolicy()
    {
        var tab = await PlanTab.OpenAsync(await browser.NewPageAsync(), service.Address);

        await tab.Page.EvaluateAsync(
            "() => { const s = document.createElement('script'); s.textContent = 'window.ran = true'; document.body.append(s); }"
        );

        Assert.True(await tab.Page.EvaluateAsync<bool>("() => window.ran === undefined"));
        Assert.Contains(tab.Complaints.Heard, c => c.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    private static async Task DragOntoAsync(PlanTab tab, ILocator from, ILocator to)
    {
        await Expect(from).ToBeVisibleAsync();
        var (a, b) = (await from.BoundingBoxAsync(), await to.BoundingBoxAsync());
        Assert.NotNull(a);
        Assert.NotNull(b);
        await tab.DragAsync(
            from,
            // Beside the bench, in the plane of the rotor: where direct flight keeps everybody out.
            b.X
                + (b.Width / 2)
                - a.X
                - (a.Width / 2)
                - 60,
            b.Y + (b.Height / 2) - a.Y - (a.Height / 2) - 10
        );
    }
}
