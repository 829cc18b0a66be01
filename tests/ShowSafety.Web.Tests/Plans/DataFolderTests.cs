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
    public void Take_FolderGivenBack_CanBeTakenAgain()
    {
        var path = Path.Combine(service.DataFolder, "once-more");
        DataFolder.Take(path).Dispose();

        using var again = DataFolder.Take(path);

        Assert.Throws<DataFolderException>(() => DataFolder.Take(path));
        Assert.Equal(path, again.Path);
    }
}
