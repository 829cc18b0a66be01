using Microsoft.AspNetCore.Mvc.Testing;

namespace ShowSafety.Web.Tests;

/// <summary>The service on a real socket of this machine, in the environment users run it in.</summary>
public sealed class RunningService : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("showsafety");

    public RunningService()
    {
        // Not UseKestrel(0): that sets the port while the service may already be starting.
        UseKestrel();
        StartServer();
    }

    /// <summary>The folder it saves plans in; nobody else's.</summary>
    public string DataFolder => data.FullName;

    /// <summary>Where it listens.</summary>
    public Uri Address => ClientOptions.BaseAddress;

    protected override void ConfigureWebHost(Microsoft.AspNetCore.Hosting.IWebHostBuilder builder) =>
        builder
            .UseSetting("environment", "Production")
            .UseSetting("urls", "http://127.0.0.1:0")
            .UseSetting("data", data.FullName);

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && data.Exists)
        {
            data.Delete(recursive: true);
        }
    }
}
