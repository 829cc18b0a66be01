using System.Reflection;

namespace ShowSafety.Core.Tests.House;

/// <summary>Nothing in the core changes behind one's back.</summary>
public sealed class ShapesTests
{
    private const string SampleRoot = "ShowSafety.Core.Tests.House.Samples";

    private static readonly Type[] Core = [.. Shapes.Written(Assembly.Load("ShowSafety.Core"))];

    private static readonly Type[] Samples =
    [
        .. Shapes.Written(typeof(ShapesTests).Assembly).Where(t => t.Namespace == SampleRoot),
    ];

    [Fact]
    public void Core_PublicMembers_CannotChangeAfterwards() => Assert.Empty(Shapes.Changeable(Core));

    [Fact]
    public void Core_Structs_AreReadonly() => Assert.Empty(Shapes.LooseStructs(Core));

    [Fact]
    public void Core_ConcreteClasses_AreSealed() => Assert.Empty(Shapes.OpenClasses(Core));

    [Fact]
    public void Changeable_Samples_NamesSettersFieldsArraysAndLists() =>
        Assert.Equal(
            [
                "ArrayRecord.Metres",
                "FieldClass.Metres",
                "ListRecord.Metres",
                "LooseStruct.Metres",
                "SettableRecord.Metres",
            ],
            Short(Shapes.Changeable(Samples))
        );

    [Fact]
    public void LooseStructs_Samples_NamesTheOneThatIsNotReadonly() =>
        Assert.Equal(["LooseStruct"], Short(Shapes.LooseStructs(Samples)));

    [Fact]
    public void OpenClasses_Samples_NamesTheOneThatIsNotSealed() =>
        Assert.Equal(["OpenClass"], Short(Shapes.OpenClasses(Samples)));

    private static IEnumerable<string> Short(IEnumerable<string> names) =>
        names.Select(name => name[(SampleRoot.Length + 1)..]).Order(StringComparer.Ordinal);
}
