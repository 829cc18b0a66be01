using Microsoft.Playwright;

namespace ShowSafety.Web.Tests.Page;

/// <summary>The Chromium of this machine. It must be installed: a test that cannot look has not passed.</summary>
internal static class InstalledChromium
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

    /// <summary>How it is started.</summary>
    /// <exception cref="InvalidOperationException">It was not found.</exception>
    public static BrowserTypeLaunchOptions Options() =>
        new()
        {
            ExecutablePath = Find(),
            // Chromium refuses its sandbox to the super-user, as whom tests run in a container.
            Args = Environment.IsPrivilegedProcess ? [.. Quiet, "--no-sandbox"] : Quiet,
        };

    private static string Find() =>
        Environment.GetEnvironmentVariable("SHOWSAFETY_CHROMIUM")
        ?? Places.FirstOrDefault(File.Exists)
        ?? throw new InvalidOperationException(
            "Chromium was not found. Install it, or name its executable in SHOWSAFETY_CHROMIUM."
        );
}
