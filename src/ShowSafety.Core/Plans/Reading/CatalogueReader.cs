using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// Reads a JSON file into a record by the field catalogue. Whatever the bytes are, it answers: the record, or all
/// problems at once, each by name and place.
/// </summary>
public static class CatalogueReader
{
    /// <summary>Largest file read, in bytes.</summary>
    public const int MostBytes = JsonText.MostBytes;

    /// <summary>Reads UTF-8 text, with or without a byte order mark.</summary>
    /// <typeparam name="T">Record whose members all carry a <see cref="FieldAttribute"/>.</typeparam>
    public static CatalogueReading<T> Read<T>(ReadOnlyMemory<byte> utf8)
        where T : class
    {
        ProblemList problems = new();
        using JsonDocument? document = JsonText.Parse(utf8, problems);
        if (document is null)
        {
            return new(null, problems.ToValueList());
        }

        RecordDescription record = FieldCatalogue.For(typeof(T));
        object? read = RecordBinder.Bind(document.RootElement, record, JsonPointer.Root, problems);
        return new(problems.IsEmpty ? (T?)read : null, problems.ToValueList());
    }
}

/// <summary>What reading a file gave: exactly one of a record and problems.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="Value">The record, or null when there are problems.</param>
/// <param name="Problems">All problems, in the order of the file; empty when it was read.</param>
public sealed record CatalogueReading<T>(T? Value, ValueList<PlanProblem> Problems)
    where T : class;
