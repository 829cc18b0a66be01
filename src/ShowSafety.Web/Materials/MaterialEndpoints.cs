using Microsoft.AspNetCore.Http.HttpResults;
using ShowSafety.Core.Citations;

namespace ShowSafety.Web.Materials;

/// <summary>A surface of a hall or tent.</summary>
/// <param name="Id">Id used in plans.</param>
/// <param name="Name">What it is.</param>
/// <param name="Absorption">Absorption coefficients of the octave bands, 63 Hz first.</param>
/// <param name="Source">Where the coefficients come from.</param>
/// <param name="Basis">How well they are known.</param>
internal sealed record MaterialEntry(
    string Id,
    string Name,
    IReadOnlyList<double> Absorption,
    Citation Source,
    Basis Basis
);

/// <summary>The surfaces a hall or tent may have.</summary>
internal static class MaterialEndpoints
{
    private static readonly IReadOnlyList<MaterialEntry> Entries =
    [
        .. Core.Sound.Enclosures.Materials.All.Select(m => new MaterialEntry(
            m.Id,
            m.Name,
            m.Absorption,
            CitationRegistry.Get(m.CitationId),
            m.Basis
        )),
    ];

    /// <summary>Adds <c>GET /api/materials</c>.</summary>
    public static IEndpointRouteBuilder MapMaterials(this IEndpointRouteBuilder routes)
    {
        routes
            .MapGet("/api/materials", List)
            .WithName("ListMaterials")
            .WithTags("Materials")
            .WithSummary("Surfaces of halls and tents")
            .WithDescription("Absorption coefficients by octave band, with their source.");
        return routes;
    }

    private static Ok<IReadOnlyList<MaterialEntry>> List() => TypedResults.Ok(Entries);
}
