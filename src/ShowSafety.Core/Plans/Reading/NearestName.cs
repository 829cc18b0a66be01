namespace ShowSafety.Core.Plans;

/// <summary>Finds the known name a misspelt one was probably meant to be.</summary>
internal static class NearestName
{
    /// <summary>
    /// The nearest of the known names by edit distance, letter case aside, or null when none is near: more than a
    /// third of the letters differ.
    /// </summary>
    public static string? To(string misspelt, IEnumerable<string> known)
    {
        if (misspelt.Length > 100)
        {
            return null;
        }

        (string? name, int distance) = known
            .Select(name => ((string?)name, Distance(misspelt.ToUpperInvariant(), name.ToUpperInvariant())))
            .DefaultIfEmpty((null, int.MaxValue))
            .MinBy(candidate => candidate.Item2);
        return distance <= Math.Max(2, misspelt.Length / 3) ? name : null;
    }

    // Levenshtein's distance, one row at a time.
    private static int Distance(string from, string to)
    {
        int[] row = [.. Enumerable.Range(0, to.Length + 1)];
        for (int i = 1; i <= from.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int replaced = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[^1];
    }
}
