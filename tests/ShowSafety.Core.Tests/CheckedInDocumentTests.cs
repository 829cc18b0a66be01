using System.Runtime.CompilerServices;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Wording;

namespace ShowSafety.Core.Tests;

/// <summary>
/// Compares the documents made from the field catalogue and the registry of citations with those checked in. With SHOWSAFETY_REGENERATE=1 in the
/// environment it writes them anew instead.
/// </summary>
public sealed class CheckedInDocumentTests
{
    [Fact]
    public void PlanSchema_CheckedIn_IsUpToDate() => Compare("plan-schema.json", PlanSchema.Write());

    [Fact]
    public void PlanFileDocument_CheckedIn_IsUpToDate() => Compare("plan-file.md", PlanFileDocument.Write());

    [Fact]
    public void SourcesDocument_CheckedIn_IsUpToDate() => Compare("sources.md", SourcesDocument.Write());

    private static void Compare(string file, string made, [CallerFilePath] string here = "")
    {
        if (Environment.GetEnvironmentVariable("SHOWSAFETY_REGENERATE") == "1")
        {
            string docs = Path.Combine(Path.GetDirectoryName(here)!, "../../docs");
            Directory.CreateDirectory(docs);
            File.WriteAllText(Path.Combine(docs, file), made);
            return;
        }

        string path = Path.Combine(AppContext.BaseDirectory, "docs", file);
        string stands = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        Assert.True(
            stands == made,
            $"docs/{file} no longer says what the code says ({FirstDifference(stands, made)}). "
                + "Run the tests of the core with SHOWSAFETY_REGENERATE=1 and build again."
        );
    }

    private static string FirstDifference(string stands, string made)
    {
        string[] old = stands.Split('\n');
        string[] now = made.Split('\n');
        int line = Enumerable.Range(0, now.Length).FirstOrDefault(i => i >= old.Length || old[i] != now[i], now.Length);
        return $"line {line + 1}: \"{old.ElementAtOrDefault(line)}\" should be \"{now.ElementAtOrDefault(line)}\"";
    }
}
