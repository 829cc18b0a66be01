using System.Text.Json;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Files;

/// <summary>Writes what is said about single places as JSON, rounded as in <see cref="AssessmentJson"/>.</summary>
public static class PlacesJson
{
    /// <summary>An object with the places in the order asked, as UTF-8.</summary>
    public static byte[] Write(ValueList<AssessedPlace> places) =>
        JsonSerializer.SerializeToUtf8Bytes(new PlacesAnswer(places), AssessmentJson.Dense);
}

/// <summary>The answer about places.</summary>
/// <param name="Places">The places in the order asked.</param>
internal sealed record PlacesAnswer(ValueList<AssessedPlace> Places);
