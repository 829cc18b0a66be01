using System.Xml.Linq;

namespace ShowSafety.Core.Tests.House;

/// <summary>Holds the arrows between projects and what each brings in from outside.</summary>
public sealed class ProjectsTests
{
    [Theory]
    [InlineData("ShowSafety.Core", new string[0])]
    [InlineData("ShowSafety.Brief", new[] { "ShowSafety.Core" })]
    [InlineData("ShowSafety.Cli", new[] { "ShowSafety.Brief", "ShowSafety.Core" })]
    [InlineData("ShowSafety.Web", new[] { "ShowSafety.Brief", "ShowSafety.Core" })]
    public void ProjectReferences_OfProject_AreTheArrows(string project, string[] expected) =>
        Assert.Equal(expected, References(project, "ProjectReference").Select(Path.GetFileNameWithoutExtension));

    [Fact]
    public void PackageReferences_OfCore_AreTheTwoLibrariesOfTheTrade() =>
        Assert.Equal(["MathNet.Numerics", "NetTopologySuite"], References("ShowSafety.Core", "PackageReference"));

    [Fact]
    public void Sources_Projects_AreTheOnesWithArrows() =>
        Assert.Equal(
            ["ShowSafety.Brief", "ShowSafety.Cli", "ShowSafety.Core", "ShowSafety.Web"],
            Directory
                .GetFiles(Path.Combine(Repository.Root, "src"), "*.csproj", SearchOption.AllDirectories)
                .Where(file => !file.Contains("node_modules", StringComparison.Ordinal))
                .Select(Path.GetFileNameWithoutExtension)
                .Order(StringComparer.Ordinal)
        );

    private static IEnumerable<string> References(string project, string kind)
    {
        var file = XDocument.Load(Path.Combine(Repository.Root, "src", project, $"{project}.csproj"));
        return file.Descendants(kind)
            .Select(r => r.Attribute("Include")!.Value.Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
    }
}
