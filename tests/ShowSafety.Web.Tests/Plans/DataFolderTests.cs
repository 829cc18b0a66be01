using System.Text;
using Microsoft.Data.Sqlite;
using ShowSafety.Core.Plans;
using ShowSafety.Web.Plans;
using ShowSafety.Web.Tests.Hosting;

namespace ShowSafety.Web.Tests.Plans;

public sealed class DataFolderTests(RunningService service) : IClassFixture<RunningService>
{
    [Fact]
    public async Task Start_FolderInUse_SaysSoInOneLineAndEnds()
    {
        using var second = new ServiceProcess("--urls", "http://127.0.0.1:0", "--data", service.DataFolder);

        var (errors, exitCode) = await second.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.StartsWith("ShowSafety already runs on the folder", errors, StringComparison.Ordinal);
        Assert.Single(errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task Start_FolderThatIsAFile_SaysSoInOneLineAndEnds()
    {
        var file = Path.Combine(service.DataFolder, "a-file");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);
        using var process = new ServiceProcess("--urls", "http://127.0.0.1:0", "--data", file);

        var (errors, exitCode) = await process.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.StartsWith("Plans can't be saved in the folder", errors, StringComparison.Ordinal);
        Assert.Single(errors.TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task Start_FolderBelowAFile_SaysSoInOneLineAndEnds()
    {
        var file = Path.Combine(service.DataFolder, "another-file");
        await File.WriteAllTextAsync(file, "kept", TestContext.Current.CancellationToken);

        var errors = await ErrorsOfStartAsync(Path.Combine(file, "below"));

        Assert.StartsWith("Plans can't be saved in the folder", errors, StringComparison.Ordinal);
        Assert.Equal("kept", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(5000)]
    public async Task Start_DamagedPlans_SaysSoAndChangesNothing(int damagedFrom)
    {
        var folder = Directory.CreateDirectory(Path.Combine(service.DataFolder, $"damaged-{damagedFrom}")).FullName;
        var file = Path.Combine(folder, "plans.sqlite");
        using (var data = DataFolder.Take(folder))
        using (var store = new SqlitePlanStore(data, TimeProvider.System))
        {
            store.Add(PlanReader.Read(Encoding.UTF8.GetBytes(Api.Template())).Plan!);
        }

        var bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
        Array.Fill(bytes, (byte)'x', damagedFrom, bytes.Length - damagedFrom);
        await File.WriteAllBytesAsync(file, bytes, TestContext.Current.CancellationToken);

        var errors = await ErrorsOfStartAsync(folder);

        Assert.StartsWith($"The saved plans in {folder}", errors, StringComparison.Ordinal);
        Assert.Contains("Nothing was changed.", errors, StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Start_PlansOfALaterVersion_SaysSoAndChangesNothing()
    {
        var folder = Directory.CreateDirectory(Path.Combine(service.DataFolder, "later")).FullName;
        var file = Path.Combine(folder, "plans.sqlite");
        using (var later = new SqliteConnection($"Data Source={file};Pooling=False"))
        {
            await later.OpenAsync(TestContext.Current.CancellationToken);
            using var edition = later.CreateCommand();
            edition.CommandText = "PRAGMA user_version = 2; CREATE TABLE plans (other TEXT);";
            await edition.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
        }

        var bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);

        var errors = await ErrorsOfStartAsync(folder);

        Assert.StartsWith("A later version of the program wrote", errors, StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken));
    }

    private static async Task<string> ErrorsOfStartAsync(string folder)
    {
        using var process = new ServiceProcess("--urls", "http://127.0.0.1:0", "--data", folder);
        var (errors, exitCode) = await process.EndAsync();
        Assert.Equal(1, exitCode);
        Assert.Single(errors.TrimEnd().Split('\n'));
        return errors;
    }

    [Fact]
    public void Take_FolderGivenBack_CanBeTakenAgain()
    {
        var path = Path.Combine(service.DataFolder, "once-more");
        DataFolder.Take(path).Dispose();

        using var again = DataFolder.Take(path);

        Assert.Throws<DataFolderException>(() => DataFolder.Take(path));
        Assert.Equal(path, again.Path);
    }
}
