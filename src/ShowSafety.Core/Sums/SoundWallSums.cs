using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Outdoors;
using ShowSafety.Core.Sound.Outdoors.Reflections;
using ShowSafety.Core.Sound.Outdoors.Screens;
using static ShowSafety.Core.Sums.SoundSums;

namespace ShowSafety.Core.Sums;

/// <summary>The worked sum about a wall that throws sound back.</summary>
internal static class SoundWallSums
{
    /// <summary>All of them.</summary>
    public static IEnumerable<WorkedSum> Make() => [Reflection()];

    private static WorkedSum Reflection() =>
        new(
            "wall-reflection",
            "sound thrown back by an upright wall, as from an image of the source behind it",
            [
                Metres("sourceMetres", "source: x, y, height", 3),
                Metres("earMetres", "ear: x, y, height", 3),
                Metres("wallMetres", "ends of the wall: x, y, x, y", 4),
                Number("wallHeightMetres", "height of the wall", Unit.Metre, 0.1, 500),
                Number("reflected", "ρ, share of the energy thrown back", Unit.One, 0, 1, 1),
            ],
            ["iso-9613-2"],
            input =>
            {
                RaisedPoint source = SoundScreenSums.Raised(input, "sourceMetres");
                RaisedPoint ear = SoundScreenSums.Raised(input, "earMetres");
                WallReflection way =
                    WallReflection.Of(source, ear, Wall(input))
                    ?? throw new ArgumentException(
                        "No point of this wall throws sound from the one to the other.",
                        "wallMetres"
                    );
                return Answer(way, source, ear);
            }
        );

    private static ReflectingWall Wall(SumInput input)
    {
        ValueList<double> ends = input.Numbers("wallMetres");
        return ReflectingWall.Alone(
            "wall",
            new(ends[0], ends[1]),
            new(ends[2], ends[3]),
            input.Number("wallHeightMetres"),
            BandValues.Uniform(input.Number("reflected"))
        );
    }

    private static SumAnswer Answer(WallReflection way, RaisedPoint source, RaisedPoint ear)
    {
        Emitter image = way.Mirror.Image(new(source.Place, 0, 1));
        double longer =
            SoundPower.SphereDb(OutdoorPath.SlantMetres(way.LengthMetres, 0))
            - SoundPower.SphereDb(OutdoorPath.SlantMetres(source.DistanceMetres(ear), 0));
        return new(
            [
                new("lengthMetres", way.LengthMetres, Unit.Metre, "length of the way, d_so + d_or"),
                new("imageXMetres", image.Place.XMetres, Unit.Metre, "x of the image"),
                new("imageYMetres", image.Place.YMetres, Unit.Metre, "y of the image"),
                new("incidenceCosine", way.IncidenceCosine, Unit.One, "cos β"),
                new("leastHertz", way.LeastHertz, Unit.Hertz, "the wall is large enough above this frequency"),
                new("longerWayDb", longer, Unit.Decibel, "what the longer way takes off against the straight one"),
                .. BandResults(
                    "energyShare",
                    BandValues.Build(way.EnergyShare),
                    Unit.One,
                    "share of the energy that arrives, ρ or 0"
                ),
            ],
            [
                Step(
                    $"image at ({image.Place.XMetres:F3}, {image.Place.YMetres:F3}) m; thrown back at ({way.Point.Place.XMetres:F3}, {way.Point.Place.YMetres:F3}) m, {way.Point.HeightMetres:F2} m high"
                ),
                Step(
                    $"d_so = {way.SourceLegMetres:F3} m, d_or = {way.ReceiverLegMetres:F3} m, cos β = {way.IncidenceCosine:F4}"
                ),
                Step(
                    $"1/λ > 2/(l_min cos β)² · d_so d_or/(d_so + d_or), l_min = {way.Wall.SizeMetres:F2} m: above {way.LeastHertz:G6} Hz"
                ),
            ]
        );
    }
}
