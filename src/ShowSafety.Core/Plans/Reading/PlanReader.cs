using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>
/// Reads plan files. A file is read whole or refused with all its problems; whether the plan makes sense is not asked
/// here but by <see cref="PlanCheck"/>, because people draw half a plan and go on tomorrow.
/// </summary>
public static class PlanReader
{
    /// <summary>Reads the bytes of a plan file: UTF-8 JSON, at most <see cref="CatalogueReader.MostBytes"/>.</summary>
    public static PlanReading Read(ReadOnlyMemory<byte> utf8)
    {
        CatalogueReading<Plan> reading = CatalogueReader.Read<Plan>(utf8);
        return new(reading.Value, reading.Problems);
    }

    /// <summary>Reads a plan file from a stream, no further than the largest file accepted.</summary>
    public static PlanReading Read(Stream stream)
    {
        using MemoryStream read = new();
        byte[] chunk = new byte[64 * 1024];
        while (read.Length <= CatalogueReader.MostBytes && stream.Read(chunk) is int count and > 0)
        {
            read.Write(chunk, 0, count);
        }

        return Read(read.GetBuffer().AsMemory(0, (int)read.Length));
    }
}

/// <summary>What reading a plan file gave: exactly one of a plan and problems.</summary>
/// <param name="Plan">The plan, or null when there are problems.</param>
/// <param name="Problems">All problems, in the order of the file; empty when the plan was read.</param>
public sealed record PlanReading(Plan? Plan, ValueList<PlanProblem> Problems);
