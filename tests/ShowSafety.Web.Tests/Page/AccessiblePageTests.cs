using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using ShowSafety.Core.Wording;
using static Microsoft.Playwright.Assertions;

namespace ShowSafety.Web.Tests.Page;

/// <summary>Whether everybody can use the page, on every size of screen.</summary>
[Collection(PageSuite.Name)]
public sealed class AccessiblePageTests(RunningService service, Browser browser)
{
    private const string Field = "field-with-neighbour";

    private static readonly string[] Grave = ["serious", "critical"];

    public static TheoryData<int, int> Screens =>
        new()
        {
            { 360, 740 },
            { 820, 1180 },
            { 1440, 900 },
        };

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Page_EverySection_HasNoGraveAxeFindings(int width, int height)
    {
        var tab = await OpenAsync(width, height);
        foreach (var section in new[] { "To do", "Find out", "People", "Areas", "This spot", "By numbers", "About" })
        {
            await tab.LookAtAsync(section);
            await AssertNothingGraveAsync(tab, section);
        }

        await tab.OpenShelfAsync();
        await Expect(tab.Page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
        await AssertNothingGraveAsync(tab, "Plans");
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Page_AnySize_NeedsNoSidewaysScrollingAndShowsSentencePlanAndDrawer(int width, int height)
    {
        var tab = await OpenAsync(width, height);

        Assert.True(await tab.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= width);
        await Expect(tab.Headline).ToBeInViewportAsync();
        await Expect(tab.Bench).ToBeInViewportAsync();
        await Expect(tab.Drawer).ToBeInViewportAsync();
    }

    [Theory]
    [MemberData(nameof(Screens))]
    public async Task Buttons_AnySize_AreLargeEnoughForAFinger(int width, int height)
    {
        var tab = await OpenAsync(width, height);

        var small = await tab.Page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('button, [role=tab], input[type=number]')]
              .filter((b) => b.checkVisibility() && b.dataset.kind !== 'element')
              .map((b) => [b, b.getBoundingClientRect()])
              .filter(([, r]) => r.width > 0 && (r.height < 43.5 || r.width < 43.5))
              .map(([b, r]) => `${b.getAttribute('aria-label') ?? b.textContent} ${r.width}x${r.height}`)
            """
        );

        Assert.Empty(small);
    }

    [Fact]
    public async Task Page_Text_HasNoForbiddenWords()
    {
        var tab = await OpenAsync(1440, 900);
        foreach (var section in new[] { "To do", "Find out", "People", "Areas", "By numbers", "About" })
        {
            await tab.LookAtAsync(section);
            Assert.Empty(ForbiddenWords.In(await tab.Page.InnerTextAsync("body")));
        }
    }

    [Fact]
    public async Task Finger_DragsTheBench_OnATouchScreen()
    {
        var context = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 390, Height = 800 },
                HasTouch = true,
                IsMobile = true,
            }
        );
        await using var closing = context;
        var tab = await PlanTab.OpenTemplateAsync(await context.NewPageAsync(), service.Address, Field);
        var place = await tab.BenchSaysAsync();
        var box = await tab.Bench.BoundingBoxAsync();
        Assert.NotNull(box);

        var finger = await context.NewCDPSessionAsync(tab.Page);
        await TouchAsync("touchStart", 0);
        for (var step = 1; step <= 6; step++)
        {
            await TouchAsync("touchMove", step * 8);
        }
        await finger.SendAsync(
            "Input.dispatchTouchEvent",
            new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() }
        );
        await tab.WaitUntilCheckedAsync();

        Assert.NotEqual(place, await tab.BenchSaysAsync());
        await Expect(tab.Undo).ToBeEnabledAsync();

        Task TouchAsync(string type, float right) =>
            finger.SendAsync(
                "Input.dispatchTouchEvent",
                new()
                {
                    ["type"] = type,
                    ["touchPoints"] = new[]
                    {
                        new { x = box.X + (box.Width / 2) + right, y = box.Y + (box.Height / 2) },
                    },
                }
            );
    }

    private async Task<PlanTab> OpenAsync(int width, int height)
    {
        var page = await browser.NewPageAsync();
        await page.SetViewportSizeAsync(width, height);
        return await PlanTab.OpenTemplateAsync(page, service.Address, Field);
    }

    private static async Task AssertNothingGraveAsync(PlanTab tab, string where)
    {
        AxeResult result = await tab.Page.RunAxe();
        Assert.True(
            !result.Violations.Any(v => Grave.Contains(v.Impact)),
            where
                + ": "
                + string.Join(
                    "; ",
                    result
                        .Violations.Where(v => Grave.Contains(v.Impact))
                        .Select(v => $"{v.Id} {v.Help} {string.Join(' ', v.Nodes.Select(n => n.Html))}")
                )
        );
    }
}
