using System.Buffers.Binary;
using System.Text.Json;
using ShowSafety.Core;

namespace ShowSafety.Web.Levels;

/// <summary>Writes a grid of levels as bytes a page can lay typed arrays over.</summary>
internal static class LevelPicture
{
    /// <summary>The layout in words.</summary>
    public const string Description =
        "The body is {\"plan\": plan file, \"window\": {\"lowerLeft\": [x, y], \"stepMetres\": 1, \"columns\": 200, "
        + "\"rows\": 150, \"earHeightMetres\": 1.55}}. The answer, little-endian: the length of the header in bytes "
        + "(uint32, a multiple of 4), the header as UTF-8 JSON padded with spaces, then one layer of float32 after the "
        + "other, each rows × columns values in dB(A), row by row from the lowest y. The header's layers names them: "
        + "best, planning. When nothing runs or a level can't be told, cannotTell is true and there is no layer.";

    private static readonly string[] Layers = ["best", "planning"];

    /// <summary>The bytes.</summary>
    /// <param name="window">The places.</param>
    /// <param name="earHeightMetres">Height of the ear in metres.</param>
    /// <param name="grid">Levels, or null when they can't be told.</param>
    public static byte[] Write(LevelWindow window, double earHeightMetres, AssessedGrid? grid)
    {
        var header = Header(window, earHeightMetres, grid is not null);
        var layers = grid is null ? [] : new[] { grid.BestDbA, grid.PlanningDbA };
        var bytes = new byte[sizeof(uint) + header.Length + layers.Sum(l => l.Count * sizeof(float))];
        BinaryPrimitives.WriteUInt32LittleEndian(bytes, (uint)header.Length);
        header.CopyTo(bytes, sizeof(uint));
        var at = sizeof(uint) + header.Length;
        foreach (var level in layers.SelectMany(l => l))
        {
            BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), (float)level);
            at += sizeof(float);
        }

        return bytes;
    }

    private static byte[] Header(LevelWindow window, double earHeightMetres, bool isKnown)
    {
        var json = JsonSerializer.SerializeToUtf8Bytes(
            new
            {
                lowerLeft = new[] { window.LowerLeft.XMetres, window.LowerLeft.YMetres },
                stepMetres = window.StepMetres,
                columns = window.Columns,
                rows = window.Rows,
                earHeightMetres,
                unit = "dB(A)",
                cannotTell = !isKnown,
                layers = isKnown ? Layers : [],
            }
        );
        var padded = new byte[(json.Length + 3) / 4 * 4];
        Array.Fill(padded, (byte)' ');
        json.CopyTo(padded, 0);
        return padded;
    }
}
