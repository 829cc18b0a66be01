using CsCheck;
using ShowSafety.Core.IndoorAir;

namespace ShowSafety.Core.Tests.IndoorAir;

public sealed class RoomBalanceTests
{
    private static readonly Gen<RoomBalance> Rooms = Gen.Select(
        Gen.Double[20, 20000],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[1e-9, 1e-4], Gen.Double[1e-4, 50]),
        Gen.Double[0, 500],
        (volume, fresh, outside) => new RoomBalance(volume, fresh, outside)
    );

    private static readonly Gen<(RoomBalance Room, double Source, double Start, double Seconds)> Cases = Gen.Select(
        Rooms,
        Gen.Double[0, 1e5],
        Gen.Double[0, 5000],
        Gen.Double[0, 40000]
    );

    // The textbook form of the solution, where fresh air is enough for it to be exact in floating point.
    [Fact]
    public void After_FreshAir_IsTheTextbookSolution() =>
        Gen.Select(
                Gen.Double[20, 20000],
                Gen.Double[0.1, 50],
                Gen.Double[0, 1e5],
                Gen.Double[0, 5000],
                Gen.Double[1, 4000]
            )
            .Sample(
                (volume, fresh, source, start, seconds) =>
                {
                    double fall = Math.Exp(-fresh * seconds / volume);
                    double expected = 40 + (source / fresh * (1 - fall)) + ((start - 40) * fall);
                    double actual = new RoomBalance(volume, fresh, 40).After(seconds, source, start);
                    return Math.Abs(actual - expected) <= 1e-7 * (1 + expected);
                }
            );

    [Fact]
    public void After_AnyRoom_IsNeverNegativeOrNonsense() =>
        Cases.Sample(c =>
            c.Room.After(c.Seconds, c.Source, c.Start) is var value && value >= 0 && double.IsFinite(value)
        );

    [Fact]
    public void After_NoFreshAir_IsLinear() =>
        Gen.Select(Gen.Double[20, 20000], Gen.Double[0, 1e5], Gen.Double[0, 40000])
            .Sample(
                (volume, source, seconds) =>
                    Math.Abs(
                        new RoomBalance(volume, 0, 0).After(seconds, source, 7) - (7 + (source * seconds / volume))
                    )
                    <= 1e-9 * (7 + (source * seconds / volume))
            );

    [Fact]
    public void After_TwoEqualSteps_EqualOneStep() =>
        Cases.Sample(c =>
        {
            double half = c.Room.After(c.Seconds / 2, c.Source, c.Start);
            double whole = c.Room.After(c.Seconds, c.Source, c.Start);
            return Math.Abs(c.Room.After(c.Seconds / 2, c.Source, half) - whole) <= 1e-6 * (1 + Math.Abs(whole));
        });

    [Fact]
    public void Integral_TwoEqualSteps_EqualOneStep() =>
        Cases.Sample(c =>
        {
            double half = c.Room.After(c.Seconds / 2, c.Source, c.Start);
            double parts =
                c.Room.Integral(c.Seconds / 2, c.Source, c.Start) + c.Room.Integral(c.Seconds / 2, c.Source, half);
            double whole = c.Room.Integral(c.Seconds, c.Source, c.Start);
            return Math.Abs(parts - whole) <= 1e-5 * (1 + Math.Abs(whole));
        });

    [Fact]
    public void After_MoreFreshAirOfCleanOutside_NeverRaisesTheConcentration() =>
        Gen.Select(Cases, Gen.Double[0, 10])
            .Sample(
                (c, more) =>
                {
                    RoomBalance clean = c.Room with { Outside = 0 };
                    RoomBalance fresher = clean with { Exchange = clean.Exchange + more };
                    double value = clean.After(c.Seconds, c.Source, c.Start);
                    return fresher.After(c.Seconds, c.Source, c.Start) <= (value * (1 + 1e-9)) + 1e-300;
                }
            );

    [Fact]
    public void SecondsUntil_ThatTime_GivesTheValue() =>
        Gen.Select(Cases, Gen.Double[1, 2000])
            .Sample(
                (c, above) =>
                    c.Room.SecondsUntil(c.Start + above, c.Source, c.Start) is not { } seconds
                    || Math.Abs(c.Room.After(seconds, c.Source, c.Start) - c.Start - above) <= 1e-4 * (above + c.Start)
            );

    [Fact]
    public void SecondsUntil_SteadyValueUnderIt_IsNever() =>
        Assert.Null(new RoomBalance(500, 2, 0).SecondsUntil(100, 150, 0));

    [Fact]
    public void SecondsToClear_ThatTime_GivesTheLimit()
    {
        var room = new RoomBalance(500, 2, 5);

        Assert.Equal(30, room.After(room.SecondsToClear(30, 400)!.Value, 0, 400), 1e-9);
        Assert.Equal(0, room.SecondsToClear(500, 400));
        Assert.Null(room.SecondsToClear(5, 400));
        Assert.Null((room with { Exchange = 0 }).SecondsToClear(30, 400));
    }

    // Q = 0.0001 m³/s and none give the same 0.1668 g/m³: the solution has no division by a vanishing flow.
    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-9)]
    [InlineData(1e-15)]
    [InlineData(0)]
    public void After_VanishingFreshAir_MeetsTheClosedRoom(double fresh) =>
        Assert.Equal(0.1668, new RoomBalance(500, fresh, 0).After(300, 0.278, 0), 2e-5);
}
