using CsCheck;
using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Enclosures;
using static ShowSafety.Core.Tests.Sound.SoundPlans;

namespace ShowSafety.Core.Tests.Sound.Enclosures;

public sealed class EnclosureTests
{
    private static EnclosureSound Build(Enclosure enclosure) =>
        SoundField.Build(Single(Reading()).Within(enclosure)).Enclosure!;

    [Fact]
    public void All_Materials_HaveKnownSourcesAndCoefficientsFromZeroToOne() =>
        Assert.All(
            Materials.All,
            m =>
            {
                Assert.NotNull(CitationRegistry.Get(m.CitationId));
                Assert.All(m.Absorption, a => Assert.InRange(a, 0, 1));
                Assert.Same(m, Materials.Find(m.Id));
            }
        );

    [Fact]
    public void Find_ConcreteOrTileFloorAt500Hertz_IsNotTheMisprintOfSomeTables() =>
        // Everest's table has 0.015; copies in circulation print 0.15.
        Assert.Equal(0.015, Materials.Find("terrazzo")!.Absorption[3]);

    [Fact]
    public void PersonSquareMetres_OneKilohertz_IsTheLeastPublished() =>
        // baunetzwissen.de, absorption by an audience: 0.4 m² (light summer dress) to 1.4 m² (winter coat).
        Assert.Equal(0.4, Materials.PersonSquareMetres[4], 1e-9);

    [Fact]
    public void FieldFactor_EvenRoomWithSoftFloor_IsFourOverTheRoomConstant()
    {
        // The hall of 2200 m² with a mean of 0.15: R = 388.2 m² (derived).
        var surface = new RoomSurface(1100, BandValues.Uniform(0.15), BandValues.Uniform(0.15));
        var room = new DiffuseRoom([surface], surface, BandValues.Zero, false);

        Assert.Equal(388.2, room.RoomConstantSquareMetres(4), 0.05);
    }

    [Fact]
    public void FieldFactor_HardFloor_IsTheUnfoldedRoom()
    {
        // Twice the height without the floor: 2 · 1000 m² of 0.2, power 2 W: 4 · 2/(400/0.8).
        var shell = new RoomSurface(1000, BandValues.Uniform(0.2), BandValues.Zero);
        var floor = new RoomSurface(300, BandValues.Uniform(0.02), BandValues.Zero);
        var room = new DiffuseRoom([shell], floor, BandValues.Zero, false);

        Assert.True(room.HasHardFloor);
        Assert.Equal(4 * 2 / (400 / 0.8), room.FieldFactor[2], 1e-12);
    }

    [Fact]
    public void EscapeFactor_AnyRoom_IsAShareOfThePower() =>
        Gen.Select(Gen.Double[0.01, 1], Gen.Double[10, 3000], Gen.Double[0, 200], Gen.Bool)
            .Sample(
                (absorption, area, other, outside) =>
                {
                    var shell = new RoomSurface(area, BandValues.Uniform(absorption), BandValues.Uniform(absorption));
                    var floor = new RoomSurface(area / 3, BandValues.Zero, BandValues.Zero);
                    var room = new DiffuseRoom([shell], floor, BandValues.Uniform(other), outside);
                    Assert.InRange(room.EscapeFactor[0], 0, 1);
                }
            );

    [Fact]
    public void FieldFactor_MorePeople_IsLower()
    {
        EnclosureSound empty = Build(Hall());
        EnclosureSound full = Build(Hall() with { FewestPeople = Stated(200) });

        Assert.True(full.Room.FieldFactor[4] < empty.Room.FieldFactor[4]);
    }

    [Fact]
    public void Build_Tent_IsTransparentLowAndReflectsHigh()
    {
        DiffuseRoom room = Build(Tent()).Room;

        // Limp wall of 0.65 kg/m²: 0.96 of the energy passes at 63 Hz, 0.005 at 8 kHz (derived).
        Assert.True(room.MeanAbsorption[0] > 0.6);
        Assert.True(room.FieldFactor[7] > 4 * room.FieldFactor[0]);
        Assert.True(room.IsOutsideRange);
    }

    [Fact]
    public void Build_SideOpened_LowersTheFieldAndLetsMoreOut()
    {
        DiffuseRoom closed = Build(Tent()).Room;
        DiffuseRoom open = Build(Tent() with { Sides = [new() { Side = 1, OpenShare = Stated(1) }] }).Room;

        Assert.True(open.FieldFactor[5] < closed.FieldFactor[5]);
        Assert.True(open.EscapeFactor[5] > closed.EscapeFactor[5]);
    }

    [Fact]
    public void Build_NothingNamed_AssumesTheLeastAbsorbingAndSaysSo()
    {
        Enclosure bare = Hall() with { FloorMaterial = null, WallMaterial = null, RoofMaterial = "marshmallow" };
        Plan plan = Single(Reading()).Within(bare);
        var field = SoundField.Build(plan);

        Assert.Equal(0.02, field.Enclosure!.Room.MeanAbsorption[4], 1e-9);
        Assert.Contains(field.Findings, f => f.Code == "sound.material-assumed");
        Assert.Contains(field.Findings, f => f.Code == "sound.material-unknown");
    }

    [Fact]
    public void Contains_PlacesOfALShape_AreInOrOut()
    {
        var shape = new Footprint([new(0, 0), new(10, 0), new(10, 4), new(4, 4), new(4, 10), new(0, 10)]);

        Assert.Equal(64, shape.AreaSquareMetres, 1e-9);
        Assert.True(shape.Contains(new(2, 8)));
        Assert.False(shape.Contains(new(8, 8)));
        Assert.Equal(4, shape.EdgeDistanceMetres(new(8, 8)), 1e-9);
    }

    [Fact]
    public void AddTo_OutsideTheEdge_FallsFromTheFieldInside()
    {
        EnclosureSound tent = Build(Tent());
        Gen.Double[0, 60]
            .Sample(metres =>
            {
                double[] near = new double[8];
                double[] far = new double[8];
                double[] power = [1, 1, 1, 1, 1, 1, 1, 1];
                tent.AddTo(near, new(0, 3 + metres), power);
                tent.AddTo(far, new(0, 3.1 + metres), power);
                Assert.All(Enumerable.Range(0, 8), b => Assert.True(far[b] <= near[b]));
                Assert.All(Enumerable.Range(0, 8), b => Assert.True(near[b] <= tent.Room.FieldFactor[b] + 1e-12));
            });
    }
}
