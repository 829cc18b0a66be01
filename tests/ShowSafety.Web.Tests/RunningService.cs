using Microsoft.AspNetCore.Mvc.Testing;

namespace ShowSafety.Web.Tests;

/// <summary>The service on a real socket of this machine, in the environment users run it in.</summary>
public sealed class RunningService : WebApplicationFactory<Program>
{
    public RunningService()
    {
        UseKestrel(0);
        StartServer();
    }

    /// <summary>Where it listens.</summary>
    public Uri Address => ClientOptions.BaseAddress;

    protected override void ConfigureWebHost(Microsoft.AspNetCore.Hosting.IWebHostBuilder builder) =>
        builder.UseSetting("environment", "Production");
}
