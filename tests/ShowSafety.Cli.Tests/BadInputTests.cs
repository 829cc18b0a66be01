namespace ShowSafety.Cli.Tests;

/// <summary>Bad input: a clear problem with its place, exit 2, nothing half written.</summary>
public sealed class BadInputTests : IDisposable
{
    private const string Triangle = "[[0,0],[9,0],[0,9]]";

    private readonly CommandLine _line = new();

    public void Dispose() => _line.Dispose();

    [Theory]
    [InlineData("{\"schema\":\"showsafety-plan/1\",\"title\":\"x\"", "#")]
    [InlineData("[null]", "#")]
    [InlineData("null", "#")]
    [InlineData("", "#")]
    [InlineData("{}", "#/schema")]
    [InlineData(Head + "\"colour\":1}", "#/colour")]
    [InlineData(Head + "\"title\":\"y\"}", "#/title")]
    [InlineData(Head + "\"notes\":7}", "#/notes")]
    [InlineData(Head + "\"engines\":[null]}", "#/engines/0")]
    [InlineData(Head + "\"site\":{\"outline\":[]}}", "#/site/outline")]
    [InlineData(Head + "\"site\":{\"outline\":[[0,0],[9,9],[9,0],[0,9]]}}", "#/site/outline")]
    [InlineData(Head + "\"site\":{\"outline\":[[0,0],[1e999,0],[0,9]]}}", "#/site/outline/1/0")]
    [InlineData(Head + "\"site\":{\"outline\":[[0,0],[\"NaN\",0],[0,9]]}}", "#/site/outline/1/0")]
    [InlineData(
        Head + "\"site\":{\"outline\":" + Triangle + ",\"enclosure\":{\"id\":\"t\",\"footprint\":" + Triangle + "}}}",
        "#/site/enclosure/kind"
    )]
    public void Assess_BadPlan_NamesThePlaceAndWritesNothing(string plan, string place)
    {
        string file = _line.Put("plan.json", plan);

        CommandResult result = _line.Run("assess", file, "--out", _line.File("out"));

        Assert.Equal(2, result.ExitCode);
        Assert.Contains($"plan.json{place}", result.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_line.File("out")));
        Assert.DoesNotContain("   at ", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Assess_SeveralProblems_AreAllNamedOneALine()
    {
        string file = _line.Put("plan.json", Head + "\"colour\":1,\"notes\":7,\"site\":{\"outline\":[]}}");

        CommandResult result = _line.Run("check-plan", file);

        Assert.Equal(2, result.ExitCode);
        Assert.Equal(3, result.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void CheckPlan_TwentyMegabytes_AreRefusedBySize()
    {
        string file = _line.Put("plan.json", Head + "\"notes\":\"" + new string('x', 20_000_000) + "\"}");

        CommandResult result = _line.Run("check-plan", file);

        Assert.Equal(2, result.ExitCode);
        Assert.Contains("bytes", result.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void CheckPlan_NoSuchFile_SaysSo()
    {
        CommandResult result = _line.Run("check-plan", _line.File("nowhere.json"));

        Assert.Equal(2, result.ExitCode);
        Assert.Contains("nowhere.json", result.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", result.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("brief")]
    public void Run_OutputThatCannotBeWritten_SaysSoAndLeavesNothing(string command)
    {
        // A file stands where a folder is needed: not even an administrator can write below it.
        string blocked = Path.Combine(_line.Put("file", "x"), "out");

        CommandResult result = _line.Run(
            command,
            CommandLine.Template("closed-marquee"),
            "--out",
            Path.Combine(blocked, "brief.pdf")
        );

        Assert.Equal(2, result.ExitCode);
        Assert.Contains("can't be written", result.Errors, StringComparison.Ordinal);
        Assert.Equal(["file"], Directory.EnumerateFileSystemEntries(_line.Folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("assess")]
    [InlineData("brief", "plan.json")]
    [InlineData("paint", "plan.json")]
    public void Run_BadArguments_ExitWithTwo(params string[] arguments) =>
        Assert.Equal(2, _line.Run(arguments).ExitCode);

    private const string Head = "{\"schema\":\"showsafety-plan/1\",\"title\":\"x\",";
}
