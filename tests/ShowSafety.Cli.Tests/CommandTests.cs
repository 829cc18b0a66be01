using System.Text.Json;
using UglyToad.PdfPig;

namespace ShowSafety.Cli.Tests;

public sealed class CommandTests : IDisposable
{
    private readonly CommandLine _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void Assess_Template_WritesThreeFilesThatAgreeOnTheVerdict()
    {
        CommandResult result = _line.Run("assess", CommandLine.Template("closed-marquee"), "--out", _line.File("out"));

        Assert.Equal(0, result.ExitCode);
        Assert.StartsWith("NOT TO RUN", result.Output, StringComparison.Ordinal);
        using JsonDocument assessment = JsonDocument.Parse(File.ReadAllBytes(_line.File("out/assessment.json")));
        Assert.Equal("notToRun", assessment.RootElement.GetProperty("verdict").GetString());
        string[] levels = File.ReadAllLines(_line.File("out/levels.csv"));
        Assert.True(levels.Length > 100);
        Assert.All(levels.Skip(1), row => Assert.EndsWith("EXAMPLE NOT TO RUN", row, StringComparison.Ordinal));
        Assert.Contains("NOT TO RUN", File.ReadAllText(_line.File("out/site-plan.svg")), StringComparison.Ordinal);
        Assert.Equal(3, Directory.EnumerateFiles(_line.File("out")).Count());
    }

    [Theory]
    [InlineData("closed-marquee", 1)]
    [InlineData("field-with-neighbour", 0)]
    public void Assess_FailOnStop_ExitsWithOneWhileAStopStands(string template, int exitCode) =>
        Assert.Equal(
            exitCode,
            _line.Run("assess", CommandLine.Template(template), "--out", _line.File("out"), "--fail-on-stop").ExitCode
        );

    [Theory]
    [InlineData("field-with-neighbour")]
    [InlineData("open-sided-marquee")]
    [InlineData("sports-hall")]
    [InlineData("closed-marquee")]
    public void Brief_EveryTemplate_IsAPdfWithEventAndMarksOnEveryPage(string template)
    {
        CommandResult result = _line.Run("brief", CommandLine.Template(template), "--out", _line.File("brief.pdf"));

        Assert.Equal((0, ""), (result.ExitCode, result.Errors));
        using PdfDocument pdf = PdfDocument.Open(_line.File("brief.pdf"));
        Assert.All(pdf.GetPages(), page => Assert.Contains("EXAMPLE", page.Text, StringComparison.Ordinal));
        Assert.Equal(
            result.Output.StartsWith("NOT TO RUN", StringComparison.Ordinal),
            pdf.GetPage(1).Text.Contains("NOT TO RUN:", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void CheckPlan_Template_SaysThatTheFileReads()
    {
        CommandResult result = _line.Run("check-plan", CommandLine.Template("sports-hall"));

        Assert.Equal(0, result.ExitCode);
        Assert.Contains("the file reads", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void FindOut_HalfAPlan_ListsWhatIsMissingWithItsCost()
    {
        string plan = _line.Put(
            "half.json",
            """
            {"schema":"showsafety-plan/1","title":"Half","site":{"outline":[[0,0],[90,0],[90,90],[0,90]]},
             "engines":[{"id":"e1","name":"Blower","place":[45,45],"exhaustHeadingDegrees":0}]}
            """
        );

        CommandResult result = _line.Run("find-out", plan);

        Assert.Equal(0, result.ExitCode);
        Assert.StartsWith("NOT TO RUN", result.Output, StringComparison.Ordinal);
        Assert.Contains("(Blower): without it: NOT TO RUN; ", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void SumList_Names_ShowParametersAndUnits()
    {
        CommandResult result = _line.Run("sum", "--list");

        Assert.Equal(0, result.ExitCode);
        Assert.Contains("air-absorption: ", result.Output, StringComparison.Ordinal);
        Assert.Contains("temperatureCelsius", result.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sum_AirAbsorption_ShowsStepsResultAndSource()
    {
        // ISO 9613-1:1993 Table 1: 20 °C, 50 %, 1 kHz, 4.66 dB/km (through a transcription).
        CommandResult result = _line.Run(
            "sum",
            "air-absorption",
            "temperatureCelsius=20",
            "humidityPercent=50",
            "frequencyHertz=1000"
        );

        Assert.Equal((0, ""), (result.ExitCode, result.Errors));
        Assert.Contains("= 4.66", result.Output, StringComparison.Ordinal);
        Assert.Contains("dB/km", result.Output, StringComparison.Ordinal);
        Assert.Contains("source: ISO 9613-1", result.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sum", "no-such-sum")]
    [InlineData("sum")]
    [InlineData("sum", "air-absorption", "temperatureCelsius=hot", "humidityPercent=50", "frequencyHertz=1000")]
    [InlineData("sum", "air-absorption", "temperatureCelsius=20", "temperatureCelsius=21")]
    [InlineData("sum", "air-absorption", "20")]
    public void Sum_BadInput_ExitsWithTwoAndSaysWhy(params string[] arguments)
    {
        CommandResult result = _line.Run(arguments);

        Assert.Equal(2, result.ExitCode);
        Assert.NotEmpty(result.Errors);
        Assert.Empty(result.Output);
    }
}
