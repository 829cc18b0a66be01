using Microsoft.Playwright;

namespace ShowSafety.Web.Tests.Page;

/// <summary>What a tab complains about: console errors, uncaught exceptions, requests without an answer.</summary>
internal sealed class Complaints
{
    private readonly List<string> heard = [];

    public Complaints(IPage page)
    {
        page.Console += (_, message) => Add(message.Type == "error", $"console: {message.Text}");
        page.PageError += (_, error) => Add(true, $"page error: {error}");
        page.RequestFailed += (_, request) => Add(true, $"no answer: {request.Url}");
    }

    /// <summary>All so far.</summary>
    public IReadOnlyList<string> Heard
    {
        get
        {
            lock (heard)
            {
                return [.. heard];
            }
        }
    }

    private void Add(bool complaint, string text)
    {
        lock (heard)
        {
            if (complaint)
            {
                heard.Add(text);
            }
        }
    }
}
