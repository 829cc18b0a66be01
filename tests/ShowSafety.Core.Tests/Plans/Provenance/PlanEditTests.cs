using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Plans.Provenance;

public sealed class PlanEditTests
{
    private static readonly Plan Field = new()
    {
        Title = "Field",
        Site = new Site { Outline = [new(0, 0), new(10, 0), new(0, 10)] },
        Engines =
        [
            new Engine
            {
                Id = "e1",
                Place = new(1, 1),
                Bench = new Bench(),
            },
        ],
    };

    [Fact]
    public void WithStated_AbsentNumber_IsThereAndTheRestUnchanged()
    {
        Plan edited = PlanEdit.WithStated(Field, "/engines/0/bench/friction", 0.5);

        Assert.Equal(new Stated { Value = 0.5, Pedigree = Pedigree.Estimated }, edited.Engines[0].Bench!.Friction);
        Assert.Equal(Field, edited with { Engines = Field.Engines });
    }

    [Fact]
    public void WithStated_AbsentParent_IsMade() =>
        Assert.Equal(
            21,
            PlanEdit.WithStated(Field, "/site/air/temperatureCelsius", 21).Site.Air!.TemperatureCelsius!.Value
        );

    [Theory]
    [InlineData("/engines/0/bench/friction", 99)]
    [InlineData("/engines/0/bench/colour", 1)]
    public void WithStated_OutOfRangeOrNoSuchPlace_IsRefused(string place, double value) =>
        Assert.Throws<ArgumentException>(() => PlanEdit.WithStated(Field, place, value));
}
