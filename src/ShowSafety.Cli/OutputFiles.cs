namespace ShowSafety.Cli;

/// <summary>Writes output files so that nothing is ever left half written.</summary>
internal static class OutputFiles
{
    /// <summary>
    /// Writes every file beside its place under another name first, then moves all into place. When one can't be
    /// written none is, and the problem is printed.
    /// </summary>
    public static int Write(DirectoryInfo folder, params IReadOnlyList<(string Name, byte[] Content)> files)
    {
        var written = new List<(string From, string To)>();
        try
        {
            folder.Create();
            foreach ((string name, byte[] content) in files)
            {
                string place = Path.Combine(folder.FullName, name);
                string draft = place + ".part";
                written.Add((draft, place));
                File.WriteAllBytes(draft, content);
            }

            foreach ((string from, string to) in written)
            {
                File.Move(from, to, overwrite: true);
            }

            return Refusal.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Discard(written.Select(w => w.From));
            return Refusal.Of($"{folder.FullName}: can't be written: {problem.Message}");
        }
    }

    private static void Discard(IEnumerable<string> drafts)
    {
        foreach (string draft in drafts)
        {
            try
            {
                File.Delete(draft);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // The folder is not ours to write: there is no draft to take away.
            }
        }
    }
}
