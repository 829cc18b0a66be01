using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Sound;

/// <summary>Plans for tests of the sound room. The numbers are invented.</summary>
internal static class SoundPlans
{
    public const string EngineId = "e1";
    public const string Full = "full";
    public const string Mid = "half";
    public const string Idle = "idle";

    public static BandValues Bands { get; } = BandValues.Of(78, 82, 88, 93, 97, 99, 97, 92);

    public static Dictionary<string, string> At(string state) => new() { [EngineId] = state };

    public static SoundMeasurement Reading(string id = "m1", string state = Full) =>
        new()
        {
            Id = id,
            StateId = state,
            Pedigree = Pedigree.Measured,
            BandLevelsDb = Bands,
            DistanceMetres = 5,
            AngleDegrees = 90,
            MicrophoneHeightMetres = 1.5,
            SourceHeightMetres = 1,
            Ground = GroundKind.Hard,
            Outdoors = true,
            BackgroundDbA = 50,
            MeterClass = MeterClass.Class1,
            Calibrated = true,
            WindMetresPerSecond = 2,
            PeakDbC = 120,
        };

    public static Stated Stated(double value) => new() { Value = value, Pedigree = Pedigree.Measured };

    public static ThrottleState State(string id, double? speed = null, double? shaft = null) =>
        new()
        {
            Id = id,
            ExhaustSpeedMetresPerSecond = speed is { } u ? Stated(u) : null,
            ShaftSpeedRevolutionsPerMinute = shaft is { } n ? Stated(n) : null,
        };

    public static Engine Engine(params SoundMeasurement[] readings) =>
        new()
        {
            Id = EngineId,
            Name = "Bench engine",
            Place = new(0, 0),
            ExhaustHeadingDegrees = 0,
            ShaftHeightMetres = Stated(1),
            Sheet = new()
            {
                Measurements = [.. readings],
                States = [State(Idle, 120), State(Mid, 200), State(Full, 300)],
                NozzleDiameterMetres = Stated(0.05),
            },
        };

    public static Plan Plan(params Engine[] engines) =>
        new()
        {
            Title = "Test",
            Site = new()
            {
                Outline = [new(-30, -30), new(30, -30), new(30, 30), new(-30, 30)],
                Ground = GroundKind.Hard,
                Air = new()
                {
                    TemperatureCelsius = Stated(15),
                    HumidityPercent = Stated(60),
                    PressureKilopascals = Stated(101.325),
                },
            },
            Engines = [.. engines],
        };

    public static Plan Single(params SoundMeasurement[] readings) => Plan(Engine(readings));

    public static Plan Within(this Plan plan, Enclosure enclosure) =>
        plan with
        {
            Site = plan.Site with { Enclosure = enclosure },
        };

    public static Enclosure Hall(double halfLength = 15, double halfWidth = 10, double height = 8) =>
        new()
        {
            Id = "hall",
            Kind = EnclosureKind.Hall,
            Footprint =
            [
                new(-halfLength, -halfWidth),
                new(halfLength, -halfWidth),
                new(halfLength, halfWidth),
                new(-halfLength, halfWidth),
            ],
            EavesHeightMetres = Stated(height),
            FloorMaterial = "concrete-sealed",
            WallMaterial = "brick",
            RoofMaterial = "steel-profiled",
        };

    public static Enclosure Tent() =>
        new()
        {
            Id = "tent",
            Kind = EnclosureKind.Tent,
            Footprint = [new(-9, -3), new(9, -3), new(9, 3), new(-9, 3)],
            EavesHeightMetres = Stated(3),
            FloorMaterial = "grass",
            FabricKilogramsPerSquareMetre = Stated(0.65),
        };
}
