using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound.Outdoors.Reflections;

namespace ShowSafety.Core.Tests.Sound.Outdoors.Reflections;

public sealed class ReflectingWallTests
{
    [Fact]
    public void Of_Building_HasEveryFaceAndTheSmallerOfLengthAndHeight()
    {
        ReflectingWall[] faces =
        [
            .. ReflectingWall.Of(
                new()
                {
                    Id = "hall",
                    Kind = StructureKind.Building,
                    Line = [new(0, 0), new(10, 0), new(10, 2), new(0, 2)],
                    HeightMetres = SoundPlans.Stated(4),
                }
            ),
        ];

        Assert.Equal([4.0, 2, 4, 2], faces.Select(f => f.SizeMetres));
        Assert.Equal(faces[0].From, faces[3].To);
    }

    // A bent wall drawn in pieces of 1 m that turn by a few degrees throws long waves back as a whole.
    [Fact]
    public void Of_BentWallInShortPieces_CountsAsOneSurface()
    {
        ReflectingWall[] faces =
        [
            .. ReflectingWall.Of(
                new()
                {
                    Id = "bend",
                    Kind = StructureKind.Wall,
                    Line = [new(0, 0), new(1, 0), new(2, 0.1), new(3, 0.3), new(3, 5)],
                    HeightMetres = SoundPlans.Stated(9),
                }
            ),
        ];

        Assert.Equal(4, faces.Length);
        Assert.All(faces[..3], f => Assert.Equal(3.02, f.SizeMetres, 0.01));
        Assert.Equal(4.7, faces[3].SizeMetres, 1e-9);
    }

    [Fact]
    public void Of_CornersInOnePlace_AreOne() =>
        Assert.Single(
            ReflectingWall.Of(
                new()
                {
                    Id = "w",
                    Kind = StructureKind.Wall,
                    Line = [new(0, 0), new(0, 0), new(0, 3)],
                }
            )
        );

    [Fact]
    public void Of_HeightUnknown_IsUnknownAndSizedByItsLength()
    {
        ReflectingWall wall = Assert.Single(
            ReflectingWall.Of(
                new()
                {
                    Id = "w",
                    Kind = StructureKind.Wall,
                    Line = [new(0, 0), new(0, 3)],
                }
            )
        );

        Assert.Null(wall.HeightMetres);
        Assert.Equal(3, wall.SizeMetres, 1e-12);
    }
}
