using Microsoft.AspNetCore.Connections;
using ShowSafety.Web.Plans;

namespace ShowSafety.Web.Hosting;

/// <summary>Where the service listens and where it finds its files.</summary>
internal static class LocalHost
{
    /// <summary>Used unless <c>--urls</c> names another: plans stay on the machine of the person who makes them.</summary>
    public const string DefaultAddress = "http://127.0.0.1:5081";

    /// <summary>Prepares the service so that neither the working directory nor the environment matters.</summary>
    public static WebApplicationBuilder CreateBuilder(string[] args)
    {
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory }
        );
        UseBuiltPage(builder);
        ListenLocally(builder);
        // One line with the address is enough for the person who starts it: no line per request.
        builder.Logging.AddFilter("Microsoft.Hosting.Lifetime", LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        // A start that fails ends in an exception or in our own sentence; the stack trace before it helps nobody.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = RequestBody.MostBytesThrownAway;
        });
        return builder;
    }

    /// <summary>Runs until stopped. Prints the address in one line once it answers there.</summary>
    /// <returns>0 when stopped by the user, 1 when the address is taken or the data folder can't be used.</returns>
    public static async Task<int> RunAndSayAddressAsync(this WebApplication app, TextWriter output, TextWriter errors)
    {
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            output.WriteLine($"ShowSafety is at {string.Join(" and ", app.Urls)} (stop it with Ctrl+C)");
            output.WriteLine($"Plans are saved in {app.Services.GetRequiredService<DataFolder>().Path}");
        });
        try
        {
            await app.RunAsync();
            return 0;
        }
        catch (IOException problem) when (problem.InnerException is AddressInUseException)
        {
            await errors.WriteLineAsync(
                "Another program already listens there. Choose another port, for example --urls http://127.0.0.1:5082"
            );
            return 1;
        }
        catch (DataFolderException problem)
        {
            await errors.WriteLineAsync(problem.Message);
            return 1;
        }
    }

    // A published service has its page beside it. A built one has only a list of where the page's files lie, and
    // that list is read by itself in the Development environment alone.
    private static void UseBuiltPage(WebApplicationBuilder builder)
    {
        var list = $"{builder.Environment.ApplicationName}.staticwebassets.runtime.json";
        if (File.Exists(Path.Combine(AppContext.BaseDirectory, list)))
        {
            builder.WebHost.UseStaticWebAssets();
        }
    }

    private static void ListenLocally(WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey]))
        {
            builder.WebHost.UseUrls(DefaultAddress);
        }
    }
}
