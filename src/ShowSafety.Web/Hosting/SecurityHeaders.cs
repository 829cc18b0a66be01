namespace ShowSafety.Web.Hosting;

/// <summary>Headers that keep the page to its own files and out of other pages' frames.</summary>
internal static class SecurityHeaders
{
    /// <summary>Scripts, styles, typefaces and requests from this origin only; nothing inline; no framing.</summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; connect-src 'self'; "
        + "img-src 'self' data: blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Adds the headers to every answer, errors included.</summary>
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) =>
        app.Use(
            (context, next) =>
            {
                // Set late, because the error page empties the headers that were there before it.
                context.Response.OnStarting(Add, context.Response.Headers);
                return next(context);
            }
        );

    private static Task Add(object state)
    {
        var headers = (IHeaderDictionary)state;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=()";
        return Task.CompletedTask;
    }
}
