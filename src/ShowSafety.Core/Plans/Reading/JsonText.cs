using System.Text.Json;
using System.Text.Unicode;

namespace ShowSafety.Core.Plans;

/// <summary>Turns bytes into a JSON document, or says why they are none.</summary>
internal static class JsonText
{
    /// <summary>Largest file read, in bytes: 5 MB. A large plan has 0.2 MB.</summary>
    public const int MostBytes = 5_000_000;

    /// <summary>Deepest nesting read; a plan needs about ten.</summary>
    public const int MostLevels = 32;

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    /// <summary>The document, to be disposed of by the caller, or null when a problem was added.</summary>
    public static JsonDocument? Parse(ReadOnlyMemory<byte> bytes, ProblemList problems)
    {
        if (bytes.Length > MostBytes)
        {
            string size = AllowedValues.Number(Math.Round(bytes.Length / 1e6, 1));
            Refuse(problems, PlanProblemCodes.TooLarge, $"The file has {size} MB; at most 5 MB are read.");
            return null;
        }

        if (bytes.Span.StartsWith(ByteOrderMark))
        {
            bytes = bytes[ByteOrderMark.Length..];
        }

        if (!Utf8.IsValid(bytes.Span))
        {
            Refuse(problems, PlanProblemCodes.NotUtf8, "The file is not UTF-8 text. Save it as UTF-8.");
            return null;
        }

        return IsShallow(bytes.Span, problems) ? JsonDocument.Parse(bytes, new() { MaxDepth = 2 * MostLevels }) : null;
    }

    // Goes through every token first, so that broken text is met here once, with its line, and nowhere else.
    private static bool IsShallow(ReadOnlySpan<byte> text, ProblemList problems)
    {
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = 2 * MostLevels });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth > MostLevels)
                {
                    string levels = AllowedValues.Number(MostLevels);
                    Refuse(problems, PlanProblemCodes.TooDeep, $"The file is nested deeper than {levels} levels.");
                    return false;
                }
            }

            return true;
        }
        catch (JsonException broken)
        {
            string line = AllowedValues.Number(1 + (broken.LineNumber ?? 0));
            string column = AllowedValues.Number(1 + (broken.BytePositionInLine ?? 0));
            Refuse(
                problems,
                PlanProblemCodes.NotJson,
                $"The file is not JSON, or it ends too early: line {line}, column {column}. Comments and trailing commas are not JSON."
            );
            return false;
        }
    }

    private static void Refuse(ProblemList problems, string code, string text) =>
        problems.Add(JsonPointer.Root, code, null, null, text);
}
