using System.Diagnostics;

namespace ShowSafety.Web.Tests.Hosting;

/// <summary>The built service as a process of its own, started from a folder that is not its own.</summary>
internal sealed class ServiceProcess : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("showsafety");
    private readonly Process process;

    public ServiceProcess(params string[] arguments)
    {
        var start = new ProcessStartInfo(
            "dotnet",
            // The last one counts: a test may name a folder of its own.
            [typeof(Program).Assembly.Location, "--data", Path.Combine(folder.FullName, "data"), .. arguments]
        )
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment.Remove("ASPNETCORE_ENVIRONMENT");
        start.Environment.Remove("DOTNET_ENVIRONMENT");
        start.Environment.Remove("ASPNETCORE_URLS");
        process = Process.Start(start)!;
    }

    /// <summary>Where it saves plans unless the arguments name another folder.</summary>
    public string DataFolder => Path.Combine(folder.FullName, "data");

    /// <summary>Ends it at once, as a power cut would.</summary>
    public void Kill()
    {
        process.Kill(entireProcessTree: true);
        process.WaitForExit();
    }

    /// <summary>A client for the address it prints.</summary>
    public async Task<HttpClient> ClientAsync()
    {
        var line = await FirstLineAsync() ?? "nothing";
        var address = line.Split(' ').SingleOrDefault(w => w.StartsWith("http://", StringComparison.Ordinal));
        Assert.True(address is not null, $"The first line was: {line}");
        return new() { BaseAddress = new Uri(address) };
    }

    /// <summary>The next line it prints, or null when it ends without one.</summary>
    public async Task<string?> FirstLineAsync() =>
        await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);

    /// <summary>What it printed as errors and its exit code, once it has ended by itself.</summary>
    public async Task<(string Errors, int ExitCode)> EndAsync()
    {
        var errors = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (errors, process.ExitCode);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
        }
        process.Dispose();
        folder.Delete(recursive: true);
    }
}
