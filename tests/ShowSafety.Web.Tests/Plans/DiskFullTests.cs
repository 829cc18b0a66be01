using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Plans;

namespace ShowSafety.Web.Tests.Plans;

/// <summary>A store that fails as SQLite does (https://www.sqlite.org/rescode.html) is answered with a way out.</summary>
public sealed class DiskFullTests
{
    [Theory]
    [InlineData(13, HttpStatusCode.InsufficientStorage, "The disk is full.")]
    [InlineData(10, HttpStatusCode.InternalServerError, "The data folder can't be written to.")]
    [InlineData(8, HttpStatusCode.InternalServerError, "The data folder can't be written to.")]
    [InlineData(11, HttpStatusCode.InternalServerError, "The file of saved plans is damaged.")]
    [InlineData(1, HttpStatusCode.InternalServerError, "The service failed on this request.")]
    public async Task Add_StoreFails_SaysWhatCanBeDone(int code, HttpStatusCode status, string expected)
    {
        using var broken = new BrokenService(new FailingStore(code));
        using var client = broken.CreateClient();

        var problem = await client.SendJsonAsync("/api/plans", Api.Template()).RefusedAsync(status);

        Assert.StartsWith(expected, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", problem.GetRawText(), StringComparison.Ordinal);
    }

    private sealed class BrokenService(IPlanStore store) : WebApplicationFactory<Program>
    {
        private readonly DirectoryInfo data = Directory.CreateTempSubdirectory("showsafety");

        protected override void ConfigureWebHost(IWebHostBuilder builder) =>
            builder
                .UseSetting("environment", "Production")
                .UseSetting("data", data.FullName)
                .ConfigureTestServices(services => services.Replace(ServiceDescriptor.Singleton(store)));

        protected override void Dispose(bool disposing)
        {
            base.Dispose(disposing);
            if (disposing && data.Exists)
            {
                data.Delete(recursive: true);
            }
        }
    }

    private sealed class FailingStore(int code) : IPlanStore
    {
        public IReadOnlyList<PlanSummary> List() => throw Failure();

        public SavedPlan? Find(string id) => throw Failure();

        public PlanSummary Add(Plan plan) => throw Failure();

        public (ChangeOutcome Outcome, PlanSummary? Saved) Save(string id, int revision, Plan plan) => throw Failure();

        public ChangeOutcome Remove(string id, int revision) => throw Failure();

        public VersionSummary? Keep(string id, string name) => throw Failure();

        public IReadOnlyList<VersionSummary> Versions(string id) => throw Failure();

        public byte[]? FindVersion(string id, int number) => throw Failure();

        private SqliteException Failure() => new("as SQLite says it", code);
    }
}
