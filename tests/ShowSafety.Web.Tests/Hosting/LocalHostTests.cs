using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace ShowSafety.Web.Tests.Hosting;

public sealed partial class LocalHostTests
{
    [Fact]
    public async Task Start_FromAnotherFolderInProduction_SaysItsAddressAndServesThePage()
    {
        using var process = new ServiceProcess("--urls", "http://127.0.0.1:0");
        var line = await process.FirstLineAsync();

        var address = AddressLine().Match(line ?? "");
        Assert.True(address.Success, $"The first line was: {line}");
        using var client = new HttpClient { BaseAddress = new Uri(address.Groups[1].Value) };
        var page = await client.GetStringAsync(new Uri("/", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Contains("<title>ShowSafety</title>", page, StringComparison.Ordinal);
        Assert.Equal($"Plans are saved in {process.DataFolder}", await process.FirstLineAsync());
        Assert.True(File.Exists(Path.Combine(process.DataFolder, "plans.sqlite")));
    }

    [Fact]
    public async Task Start_AddressTaken_SaysSoInOneLineAndEnds()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        using var process = new ServiceProcess("--urls", $"http://{taken.LocalEndpoint}");

        var (errors, exitCode) = await process.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.StartsWith("Another program already listens there.", errors, StringComparison.Ordinal);
        Assert.Single(errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public void DefaultAddress_WithoutUrls_IsThisMachineOnly() =>
        Assert.True(
            IPAddress.IsLoopback(IPAddress.Parse(new Uri(ShowSafety.Web.Hosting.LocalHost.DefaultAddress).Host))
        );

    [Theory]
    [InlineData(new string[0], "http://127.0.0.1:5081", "127.0.0.1;localhost;[::1]")]
    [InlineData(new[] { "--urls", "http://127.0.0.1:6001" }, "http://127.0.0.1:6001", "127.0.0.1;localhost;[::1]")]
    [InlineData(new[] { "--hosts", "bench" }, "http://127.0.0.1:5081", "bench")]
    public void CreateBuilder_Arguments_DecideAddressAndHosts(string[] arguments, string urls, string hosts)
    {
        var builder = ShowSafety.Web.Hosting.LocalHost.CreateBuilder(arguments);

        Assert.Equal(urls, builder.Configuration["urls"]);
        Assert.Equal(hosts, ShowSafety.Web.Hosting.OwnPageOnly.NamesFor(builder.Configuration));
    }

    [GeneratedRegex(@"^ShowSafety is at (http://127\.0\.0\.1:\d+) \(stop it with Ctrl\+C\)$")]
    private static partial Regex AddressLine();
}
