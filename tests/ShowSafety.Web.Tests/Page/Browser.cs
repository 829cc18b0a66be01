using Microsoft.Playwright;

namespace ShowSafety.Web.Tests.Page;

/// <summary>One Chromium for the tests of a class. It must be installed: a test that cannot look has not passed.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Places =
    [
        "/usr/bin/chromium",
        "/usr/bin/chromium-browser",
        "/usr/bin/google-chrome",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
    ];

    private static readonly string[] Quiet =
    [
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--disable-quic",
    ];

    private IPlaywright? playwright;
    private IBrowser? chromium;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        chromium = await playwright.Chromium.LaunchAsync(
            new BrowserTypeLaunchOptions
            {
                ExecutablePath = Find(),
                // Chromium refuses its sandbox to the super-user, as whom tests run in a container.
                Args = Environment.IsPrivilegedProcess ? [.. Quiet, "--no-sandbox"] : Quiet,
            }
        );
    }

    /// <summary>An empty tab of its own context.</summary>
    public Task<IPage> NewPageAsync() => chromium!.NewPageAsync();

    public async ValueTask DisposeAsync()
    {
        if (chromium is not null)
        {
            await chromium.DisposeAsync();
        }
        playwright?.Dispose();
    }

    private static string Find() =>
        Environment.GetEnvironmentVariable("SHOWSAFETY_CHROMIUM")
        ?? Places.FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException(
            "Chromium was not found. Install it, or name its executable in SHOWSAFETY_CHROMIUM."
        );
}
