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
        // A question that a newer one made useless is ended by the page itself.
        page.RequestFailed += (_, request) =>
            Add(request.Failure != "net::ERR_ABORTED", $"no answer: {request.Url} {request.Failure}");
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
