using Microsoft.AspNetCore.StaticFiles;

namespace ShowSafety.Web.Hosting;

/// <summary>Serves the page built from plan-editor.</summary>
internal static class PageFiles
{
    private const string Forever = "public, max-age=31536000, immutable";
    private const string AskFirst = "no-cache";

    /// <summary>Serves the page at <c>/</c> and its files beside it.</summary>
    public static IApplicationBuilder UsePage(this IApplicationBuilder app) =>
        app.UseDefaultFiles().UseStaticFiles(new StaticFileOptions { OnPrepareResponse = SayHowLongToKeep });

    // The bundler names files in assets by their content, so a kept copy can never be an old one.
    private static void SayHowLongToKeep(StaticFileResponseContext file)
    {
        var named = file.Context.Request.Path.StartsWithSegments("/assets", StringComparison.Ordinal);
        file.Context.Response.Headers.CacheControl = named ? Forever : AskFirst;
    }
}
