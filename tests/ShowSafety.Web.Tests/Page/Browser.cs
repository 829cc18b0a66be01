using Microsoft.Playwright;

namespace ShowSafety.Web.Tests.Page;

/// <summary>One Chromium for the tests that look at the page.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? chromium;

    public async ValueTask InitializeAsync()
    {
        // A machine that also runs other tests answers late, and late is not wrong.
        Assertions.SetDefaultExpectTimeout(30_000);
        playwright = await Playwright.CreateAsync();
        chromium = await playwright.Chromium.LaunchAsync(InstalledChromium.Options());
    }

    /// <summary>An empty tab of its own context.</summary>
    public Task<IPage> NewPageAsync() => chromium!.NewPageAsync();

    /// <summary>A context of its own: tabs opened in it share what the browser remembers.</summary>
    public Task<IBrowserContext> NewContextAsync(BrowserNewContextOptions? options = null) =>
        chromium!.NewContextAsync(options);

    public async ValueTask DisposeAsync()
    {
        if (chromium is not null)
        {
            await chromium.DisposeAsync();
        }
        playwright?.Dispose();
    }
}
