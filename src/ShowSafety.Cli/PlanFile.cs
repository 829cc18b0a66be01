using ShowSafety.Core.Plans;

namespace ShowSafety.Cli;

/// <summary>Reads a plan file from disk, or says on the error stream why it can't be.</summary>
internal static class PlanFile
{
    /// <summary>Reads the plan and hands it on; bad input never reaches <paramref name="use"/>.</summary>
    public static int With(FileInfo file, Func<Plan, int> use)
    {
        if (Bytes(file) is not { } bytes)
        {
            return Refusal.BadInput;
        }

        PlanReading reading = PlanReader.Read(bytes);
        return reading.Plan is { } plan
            ? use(plan)
            : Refusal.Of(reading.Problems.Select(p => $"{file.Name}#{p.Pointer}: {p.Text}"));
    }

    private static byte[]? Bytes(FileInfo file)
    {
        try
        {
            if (file.Exists && file.Length > CatalogueReader.MostBytes)
            {
                Refusal.Of($"{file.Name}: {file.Length} bytes; a plan has at most {CatalogueReader.MostBytes}.");
                return null;
            }

            return File.ReadAllBytes(file.FullName);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Refusal.Of($"{file.FullName}: can't be read: {problem.Message}");
            return null;
        }
    }
}
