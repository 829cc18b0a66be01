using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class FieldCatalogueTests
{
    private static readonly IReadOnlyList<RecordDescription> Records = FieldCatalogue.Reachable(FieldCatalogue.Plan);

    private static readonly IReadOnlyList<FieldDescription> Fields = [.. Records.SelectMany(r => r.Fields)];

    [Fact]
    public void For_SameTypeTwice_GivesTheSameDescription() =>
        Assert.Same(FieldCatalogue.For(typeof(Engine)), FieldCatalogue.For(typeof(Engine)));

    [Fact]
    public void For_Plan_RequiresThreeMembersOnly()
    {
        Assert.Equal(
            ["schema", "title", "site"],
            FieldCatalogue.Plan.Fields.Where(f => f.Required).Select(f => f.Name)
        );
        Assert.Equal("outline", Assert.Single(FieldCatalogue.For(typeof(Site)).Fields, f => f.Required).Name);
    }

    [Fact]
    public void For_ThrottleState_DescribesTheThrust()
    {
        FieldDescription thrust = FieldCatalogue.For(typeof(ThrottleState)).Find("thrustNewtons")!;

        Assert.True(thrust.IsStated);
        Assert.Equal("ThrottleState.ThrustNewtons", thrust.FullName);
        Assert.Equal(Unit.Newton, thrust.Unit);
        Assert.Null(thrust.Cautious);
        Assert.Equal((0.1, 3000), (thrust.Record!.Find("value")!.Min, thrust.Record.Find("value")!.Max));
    }

    [Fact]
    public void For_TypeWithoutEntries_Throws() =>
        Assert.Throws<InvalidOperationException>(() => FieldCatalogue.For(typeof(UriBuilder)));

    [Fact]
    public void Catalogue_CautiousAndHopefulValues_LieInTheirRanges() =>
        Assert.DoesNotContain(
            Fields,
            f => new[] { f.Cautious, f.Hopeful }.Any(v => v is { } value && (value < f.Min || value > f.Max))
        );

    [Fact]
    public void Catalogue_Ranges_AreNotEmpty() =>
        Assert.DoesNotContain(Fields, f => f.Min >= f.Max || f.MinCount > f.MaxCount || f.MaxLength < 1);

    [Fact]
    public void Catalogue_NumbersOfAPlan_HaveARangeOfTheirOwn() =>
        Assert.DoesNotContain(
            Fields.Where(f => f.Kind is FieldKind.Number or FieldKind.WholeNumber || f.IsStated),
            f => f.FullName != "Stated.Value" && (f.Min == -1e9 || f.Max == 1e9)
        );

    [Fact]
    public void Catalogue_NumbersWithAUnit_CarryItInTheirName()
    {
        FieldDescription[] nameless =
        [
            .. Fields.Where(f =>
                (f.Kind == FieldKind.Number || f.IsStated)
                && f.Unit != Unit.One
                && f.FullName != "Stated.Value"
                && !Unitful.Any(word => f.Name.Contains(word, StringComparison.OrdinalIgnoreCase))
            ),
        ];

        // A number of people is a count and needs no word for it.
        Assert.DoesNotContain(nameless, f => f.Unit != Unit.Person);
    }

    [Fact]
    public void Catalogue_Meanings_ArePhrases() =>
        Assert.DoesNotContain(
            Fields,
            f => f.Meaning.Length < 3 || f.Meaning.EndsWith('.') || f.Meaning.Contains('|', StringComparison.Ordinal)
        );

    [Fact]
    public void CautiousValues_Friction_IsTheCatalogues()
    {
        Stated assumed = ((Stated?)null).Or<Bench>(nameof(Bench.Friction));

        Assert.Equal((0.2, Pedigree.Assumed), (assumed.Value, assumed.Pedigree));
        Assert.Throws<InvalidOperationException>(() => CautiousValues.Of<ThrottleState>("ThrustNewtons"));
    }

    private static string[] Unitful =>
        [
            "Metres",
            "Degrees",
            "Kilograms",
            "Grams",
            "Newtons",
            "Seconds",
            "Revolutions",
            "Celsius",
            "Percent",
            "Kilopascals",
            "Db",
            "Litres",
            "Hours",
            "Joules",
            "Watts",
            "Megajoules",
        ];
}
