using System.Text.Json;
using System.Text.RegularExpressions;

namespace ShowSafety.Core.Tests.House;

/// <summary>The page's packages: exact versions, checked by content, from whatever registry the reader uses.</summary>
public sealed partial class PageLockTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "src", "plan-editor");

    [Fact]
    public void LockFile_EveryPackage_IsKnownByItsContentAndNamesNoRegistry()
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "package-lock.json")));
        var packages = file
            .RootElement.GetProperty("packages")
            .EnumerateObject()
            .Where(p => p.Name.Length > 0)
            .ToList();

        Assert.NotEmpty(packages);
        Assert.All(packages, package => Assert.True(package.Value.TryGetProperty("integrity", out _), package.Name));
        Assert.All(packages, package => Assert.False(package.Value.TryGetProperty("resolved", out _), package.Name));
    }

    [Theory]
    [InlineData("dependencies")]
    [InlineData("devDependencies")]
    public void Package_EveryVersion_IsExact(string kind)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, "package.json")));
        var versions = file.RootElement.GetProperty(kind).EnumerateObject().ToList();

        Assert.NotEmpty(versions);
        Assert.All(versions, version => Assert.Matches(ExactVersion(), version.Value.GetString()));
    }

    [GeneratedRegex(@"^\d+\.\d+\.\d+$")]
    private static partial Regex ExactVersion();
}
