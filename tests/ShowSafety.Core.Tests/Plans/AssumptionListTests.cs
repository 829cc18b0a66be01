using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans;

public sealed class AssumptionListTests
{
    private static readonly Plan Small = PlanJson.Plan(PlanJson.Smallest);

    [Fact]
    public void Of_SmallestPlan_ListsTheAirAndWeatherAssumed() =>
        Assert.Equal(
            [
                ("/site/air/temperatureCelsius", 10.0),
                ("/site/air/humidityPercent", 70.0),
                ("/site/air/pressureKilopascals", 101.325),
                ("/site/weather/highestWindMetresPerSecond", 8.0),
                ("/site/weather/highestTemperatureCelsius", 35.0),
            ],
            AssumptionList.Of(Small).Select(a => (a.Pointer, a.Value ?? 0))
        );

    [Fact]
    public void Of_MeasuredValue_IsNotListed()
    {
        Stated measured = new() { Value = 12, Pedigree = Pedigree.Measured };
        Plan plan = Small with { Site = Small.Site with { Air = new() { TemperatureCelsius = measured } } };

        Assert.DoesNotContain(AssumptionList.Of(plan), a => a.Pointer == "/site/air/temperatureCelsius");
    }

    [Fact]
    public void Of_EstimatedValue_IsListedWithUnitNoteAndElement()
    {
        Stated guess = new()
        {
            Value = 40,
            Pedigree = Pedigree.Estimated,
            Note = "lifted it",
        };
        Engine engine = new()
        {
            Id = "e1",
            Bench = new() { MassKilograms = guess },
        };

        Assumption mass = Assert.Single(
            AssumptionList.Of(Small with { Engines = [engine] }),
            a => a.Field == "Bench.MassKilograms"
        );

        Assert.Equal("/engines/0/bench/massKilograms", mass.Pointer);
        Assert.Equal((40.0, Unit.Kilogram, Pedigree.Estimated), (mass.Value, mass.Unit, mass.Pedigree));
        Assert.Equal(("lifted it", "e1", (string?)null), (mass.Note, mass.ElementId, mass.PartId));
    }

    [Fact]
    public void Of_BenchWithoutFriction_ListsTheCautiousValue()
    {
        Plan plan = Small with { Engines = [new() { Id = "e1", Bench = new() }] };

        Assumption friction = Assert.Single(AssumptionList.Of(plan), a => a.Field == "Bench.Friction");

        Assert.Equal((0.2, Pedigree.Assumed, FindOut.Scale), (friction.Value, friction.Pedigree, friction.FindOut));
    }

    [Fact]
    public void Of_SoundMeasurementOfTheMaker_IsListedOnceWithItsLevel()
    {
        SoundMeasurement reading = new()
        {
            Id = "m1",
            Pedigree = Pedigree.Maker,
            LevelDbA = 101,
        };
        Engine engine = new()
        {
            Id = "e1",
            Sheet = new() { Measurements = [reading] },
        };

        Assumption listed = Assert.Single(
            AssumptionList.Of(Small with { Engines = [engine] }),
            a => a.Pointer.StartsWith("/engines/0/sheet/measurements", StringComparison.Ordinal)
        );

        Assert.Equal("/engines/0/sheet/measurements/0", listed.Pointer);
        Assert.Equal((101.0, Unit.DecibelA, "e1", "m1"), (listed.Value, listed.Unit, listed.ElementId, listed.PartId));
    }

    [Fact]
    public void Of_Template_PointsIntoTheFileAndNamesCatalogueEntries()
    {
        ValueList<Assumption> list = AssumptionList.Of(Templates.Plan("sports-hall"));

        Assert.Equal(list.Count, list.Select(a => a.Pointer).Distinct().Count());
        Assert.All(list, a => Assert.Contains('.', a.Field));
    }
}
