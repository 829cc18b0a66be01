using Microsoft.Playwright;
using ShowSafety.Core.Wording;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

public sealed class WelcomeTests(RunningService service, Browser browser)
    : IClassFixture<RunningService>,
        IClassFixture<Browser>
{
    [Fact]
    public async Task Page_Opened_SaysTheServiceRunsAndComplainsOfNothing()
    {
        var page = await browser.NewPageAsync();
        var complaints = new Complaints(page);

        await page.GotoAsync(service.Address.ToString());

        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("The service is running (version ");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.Empty(complaints.Heard);
    }

    [Fact]
    public async Task Page_Opened_SaysThatItIsAPlanningAid()
    {
        var page = await browser.NewPageAsync();

        await page.GotoAsync(service.Address.ToString());

        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("ShowSafety");
        var aid = page.GetByRole(AriaRole.Region, new() { Name = "This is a planning aid" });
        await Expect(aid).ToContainTextAsync("does not replace a competent person");
        await Expect(aid).ToContainTextAsync("Never run where the plan says NOT TO RUN.");
    }

    [Fact]
    public async Task Page_Text_HasNoForbiddenWords()
    {
        var page = await browser.NewPageAsync();

        await page.GotoAsync(service.Address.ToString());
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("running");

        Assert.Empty(ForbiddenWords.In(await page.InnerTextAsync("body")));
    }

    [Fact]
    public async Task Page_ServiceFailing_SaysSoInWords()
    {
        var page = await browser.NewPageAsync();
        await page.RouteAsync("**/health", route => route.FulfillAsync(new() { Status = 503 }));

        await page.GotoAsync(service.Address.ToString());

        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("it answered with status 503");
    }

    [Fact]
    public async Task Page_InlineScript_IsRefusedByThePolicy()
    {
        var page = await browser.NewPageAsync();
        var complaints = new Complaints(page);
        await page.GotoAsync(service.Address.ToString());

        await page.EvaluateAsync(
            "() => { const s = document.createElement('script'); s.textContent = 'window.ran = true'; document.body.append(s); }"
        );

        Assert.True(await page.EvaluateAsync<bool>("() => window.ran === undefined"));
        Assert.Contains(complaints.Heard, c => c.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Page_NarrowScreen_NeedsNoSidewaysScrolling()
    {
        var page = await browser.NewPageAsync();
        await page.SetViewportSizeAsync(320, 640);

        await page.GotoAsync(service.Address.ToString());
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("running");

        Assert.True(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= 320);
    }
}
