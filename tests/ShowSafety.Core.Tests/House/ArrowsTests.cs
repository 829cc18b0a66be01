using System.Reflection;

namespace ShowSafety.Core.Tests.House;

/// <summary>Holds the arrows between rooms, and first shows that a broken one would be seen.</summary>
public sealed class ArrowsTests
{
    private const string Root = "ShowSafety.Core";
    private const string SampleRoot = "ShowSafety.Core.Tests.House.Samples";

    private static readonly Assembly Core = Assembly.Load(Root);
    private static readonly Assembly Samples = typeof(ArrowsTests).Assembly;

    [Fact]
    public void Core_AllRooms_FollowTheArrows()
    {
        var uses = DependencyScan.BetweenRooms(Core, Root);

        Assert.Contains(uses, use => use is { FromRoom: "Layout", ToRoom: "Measures" });
        Assert.Empty(Arrows.Violations(uses));
    }

    [Theory]
    [InlineData("UsesInField")]
    [InlineData("UsesInSignature")]
    [InlineData("UsesInBody")]
    [InlineData("UsesInLambda")]
    [InlineData("UsesInIterator")]
    [InlineData("UsesAsBase")]
    [InlineData("UsesAsTypeArgument")]
    public void Violations_SampleAgainstAnArrow_IsNamed(string sample)
    {
        var violations = Arrows.Violations(DependencyScan.BetweenRooms(Samples, SampleRoot));

        Assert.Contains(
            violations,
            v => v.Contains($"Sound → Exhaust: {SampleRoot}.Sound.{sample}", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Violations_SampleAlongAnArrow_IsNotNamed()
    {
        var uses = DependencyScan.BetweenRooms(Samples, SampleRoot);

        Assert.Contains(uses, u => u is { FromRoom: "Exposure", ToRoom: "Sound" });
        Assert.DoesNotContain(Arrows.Violations(uses), v => v.StartsWith("Exposure → Sound", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Sound", Arrows.Assessor)]
    [InlineData("Wording", Arrows.Assessor)]
    [InlineData("Sums", Arrows.Assessor)]
    [InlineData(Arrows.Contracts, Arrows.Assessor)]
    [InlineData("Wording", "Sound")]
    [InlineData("Plans", "Wording")]
    [InlineData("Wording", "Files")]
    [InlineData("Measures", "Plans")]
    [InlineData("Sound", "Exposure")]
    [InlineData("Exhaust", "Gate")]
    [InlineData("Gate", "Sound")]
    [InlineData("Layout", "Gate")]
    [InlineData("Sound", "Sums")]
    [InlineData("Attic", "Measures")]
    [InlineData("Sound", "Attic")]
    public void Violations_UseAgainstTheArrows_IsNamed(string from, string to) =>
        Assert.Equal([$"{from} → {to}: A uses B"], Arrows.Violations([new Dependency(from, "A", to, "B")]));

    [Theory]
    [InlineData("Exposure", "Sound")]
    [InlineData("Layout", "Debris")]
    [InlineData("Gate", "Supplies")]
    [InlineData("Sums", "Exhaust")]
    [InlineData("Crowd", Arrows.Contracts)]
    [InlineData(Arrows.Assessor, "Wording")]
    public void Violations_UseAlongTheArrows_IsNotNamed(string from, string to) =>
        Assert.Empty(Arrows.Violations([new Dependency(from, "A", to, "B")]));

    [Theory]
    [InlineData("ShowSafety.Core.Finding", Arrows.Contracts)]
    [InlineData("ShowSafety.Core.Zone+Frame", Arrows.Contracts)]
    [InlineData("ShowSafety.Core.Assessor", Arrows.Assessor)]
    [InlineData("ShowSafety.Core.Assessment", Arrows.Assessor)]
    [InlineData("ShowSafety.Core.Sound.SoundField", "Sound")]
    [InlineData("ShowSafety.Core.Sound.Outdoors.Ground`1", "Sound")]
    [InlineData("System.String", "(elsewhere)")]
    [InlineData("ShowSafety.Corelike.Thing", "(elsewhere)")]
    public void RoomOf_FullName_GivesTheRoom(string fullName, string room) =>
        Assert.Equal(room, Arrows.RoomOf(fullName, Root));

    [Fact]
    public void Allowed_EveryArrow_LeadsToARoomAndNeverInACircleOfPhysics()
    {
        Assert.All(Arrows.Allowed.Values.SelectMany(to => to), to => Assert.Contains(to, Arrows.Allowed.Keys));
        Assert.All(
            Arrows.Allowed.Where(room => room.Key is not ("Measures" or "Citations" or Arrows.Contracts)),
            room => Assert.All(room.Value, to => Assert.DoesNotContain(room.Key, Arrows.Allowed[to]))
        );
    }
}
