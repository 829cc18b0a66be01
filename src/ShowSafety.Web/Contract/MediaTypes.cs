namespace ShowSafety.Web.Contract;

/// <summary>Media types of the answers.</summary>
internal static class MediaTypes
{
    /// <summary>JSON, UTF-8.</summary>
    public const string Json = "application/json";

    /// <summary>Bytes of our own layout, described with the operation.</summary>
    public const string Binary = "application/octet-stream";

    /// <summary>A document.</summary>
    public const string Pdf = "application/pdf";

    /// <summary>A drawing.</summary>
    public const string Svg = "image/svg+xml";
}
