using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class CatalogueReaderTests
{
    [Fact]
    public void Read_AnyRecordOfTheCatalogue_RoundTrips()
    {
        CatalogueReading<HearingProtector> reading = CatalogueReader.Read<HearingProtector>(
            PlanJson.Bytes("""{"id":"m","kind":"muff","snrDb":{"value":31,"pedigree":"maker"}}""")
        );

        Assert.Empty(reading.Problems);
        Assert.Equal(31, reading.Value!.SnrDb!.Value);
        Assert.Equal(reading.Value, CatalogueReader.Read<HearingProtector>(CatalogueWriter.Write(reading.Value)).Value);
    }

    [Fact]
    public void Read_RecordWithProblems_GivesNoRecord()
    {
        CatalogueReading<HearingProtector> reading = CatalogueReader.Read<HearingProtector>(
            PlanJson.Bytes("""{"id":"m","kind":1}""")
        );

        Assert.Null(reading.Value);
        Assert.Equal("/kind", Assert.Single(reading.Problems).Pointer);
    }
}
