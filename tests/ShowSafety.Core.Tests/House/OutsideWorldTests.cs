using System.Reflection;

namespace ShowSafety.Core.Tests.House;

/// <summary>A room of physics never reads a file, JSON, a clock or a service.</summary>
public sealed class OutsideWorldTests
{
    private const string Root = "ShowSafety.Core";
    private const string SampleRoot = "ShowSafety.Core.Tests.House.Samples";

    private static readonly string[] Outside =
    [
        "System.IO.",
        "System.Text.Json.",
        "System.Net.",
        "System.TimeProvider",
        "System.Diagnostics.Stopwatch",
        "System.Console",
    ];

    // Plans reads plan files, Files writes assessments. Rule sets are data kept in files of their own, read by types of that name in Exposure.
    private static readonly string[] Readers =
    [
        "ShowSafety.Core.Plans.",
        "ShowSafety.Core.Exposure.Rules.RuleSet",
        "ShowSafety.Core.Files.",
    ];

    [Fact]
    public void Core_OutsideItsReaders_TouchesNothingOutside()
    {
        var uses = DependencyScan.OnOthers(Assembly.Load(Root), Root);

        var offenders = uses.Where(ReachesOutside).Where(use => !Readers.Any(r => Starts(use.FromType, r))).ToList();

        Assert.Empty(offenders);
    }

    [Fact]
    public void ReachesOutside_SampleThatReadsAFile_IsSeen()
    {
        var uses = DependencyScan.OnOthers(typeof(OutsideWorldTests).Assembly, SampleRoot);

        Assert.Contains(uses.Where(ReachesOutside), use => use.FromType == $"{SampleRoot}.Sound.ReadsAFile");
    }

    [Fact]
    public void Core_ReferencedAssemblies_AreTheRuntimeAndTheTwoLibrariesOfTheTrade()
    {
        var names = Assembly.Load(Root).GetReferencedAssemblies().Select(a => a.Name!);

        var others = names
            .Where(n => !Starts(n, "System.") && n is not ("MathNet.Numerics" or "NetTopologySuite"))
            .ToList();

        Assert.Empty(others);
    }

    private static bool ReachesOutside(Dependency use) => Outside.Any(o => Starts(use.ToType, o));

    private static bool Starts(string name, string prefix) => name.StartsWith(prefix, StringComparison.Ordinal);
}
