using System.Reflection;

namespace ShowSafety.Core.Tests.House;

/// <summary>Every public type and member of the core says what it means.</summary>
public sealed class DocumentedTests
{
    private const string SampleRoot = "ShowSafety.Core.Tests.House.Samples";

    [Fact]
    public void Core_PublicTypesAndMembers_AreDocumented()
    {
        var core = Assembly.Load("ShowSafety.Core");

        Assert.Empty(new Documented(core).Missing(Shapes.Written(core)));
    }

    [Fact]
    public void Missing_Samples_NamesWhatHasNoWords()
    {
        var tests = typeof(DocumentedTests).Assembly;
        var samples = Shapes.Written(tests).Where(t => t.Namespace == SampleRoot);

        var missing = new Documented(tests).Missing(samples).Select(name => name[(SampleRoot.Length + 1)..]);

        Assert.Equal(
            [
                "BlankSummary",
                "LooseStruct.Metres",
                "NoDocs",
                "NoDocs.Documentless",
                "NoDocs.Metres",
                "NoParamDocs.Metres",
                "OneOverloadWithoutDocs.Add",
            ],
            missing.Order(StringComparer.Ordinal)
        );
    }
}
