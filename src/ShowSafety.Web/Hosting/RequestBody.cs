using ShowSafety.Core.Plans;

namespace ShowSafety.Web.Hosting;

/// <summary>Reads the body of a request, never more than the largest accepted.</summary>
internal static class RequestBody
{
    /// <summary>Largest body read, in bytes.</summary>
    public const int MostBytes = CatalogueReader.MostBytes;

    /// <summary>
    /// What the server may take in while it throws a too large body away, so that the sender still gets to read why.
    /// </summary>
    public const int MostBytesThrownAway = 64_000_000;

    private const int ChunkBytes = 64 * 1024;

    /// <summary>The bytes of a JSON body, or why they were refused: exactly one of the two.</summary>
    public static async Task<(byte[]? Bytes, IResult? Refusal)> ReadAsync(HttpRequest request)
    {
        // A page elsewhere can send a form here unasked, but not JSON.
        if (!request.HasJsonContentType())
        {
            return (null, Refusals.NotJson(request.ContentType));
        }

        if (request.ContentLength > MostBytes)
        {
            return (null, Refusals.TooLarge());
        }

        using var read = new MemoryStream();
        var chunk = new byte[ChunkBytes];
        while (await request.Body.ReadAsync(chunk, request.HttpContext.RequestAborted) is var count and > 0)
        {
            await read.WriteAsync(chunk.AsMemory(0, count), CancellationToken.None);
            if (read.Length > MostBytes)
            {
                return (null, Refusals.TooLarge());
            }
        }

        return (read.ToArray(), null);
    }
}
