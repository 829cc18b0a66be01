using CsCheck;
using ShowSafety.Core.IndoorAir;

namespace ShowSafety.Core.Tests.IndoorAir;

public sealed class RoomHistoryTests
{
    private static readonly RoomBalance Room = new(500, 2, 0);
    private static readonly SourceStretch[] TwoRuns = [new(0, 180, 250), new(1800, 2100, 400)];

    private static readonly Gen<RoomHistory> Histories = Gen.Select(
        Gen.Double[50, 5000],
        Gen.Double[0, 10],
        Gen.Select(Gen.Double[0, 5000], Gen.Double[10, 900], Gen.Double[0, 1000]).Array[1, 4],
        (volume, fresh, runs) =>
            new RoomHistory(
                new(volume, fresh, 0),
                [.. runs.Select(r => new SourceStretch(r.Item1, r.Item1 + r.Item2, r.Item3))]
            )
    );

    [Fact]
    public void At_SecondRun_StartsFromWhatTheFirstLeft()
    {
        var history = new RoomHistory(Room, TwoRuns);
        double left = Room.After(1620, 0, Room.After(180, 250, 0));

        Assert.Equal(left, history.At(1800), 1e-9);
        Assert.Equal(Room.After(300, 400, left), history.At(2100), 1e-9);
        Assert.Equal(0, history.At(-10));
    }

    [Fact]
    public void At_RunSplitInTwo_IsUnchanged()
    {
        var whole = new RoomHistory(Room, TwoRuns);
        var split = new RoomHistory(Room, [new(0, 90, 250), new(90, 180, 250), TwoRuns[1]]);

        Assert.All(Enumerable.Range(0, 100), i => Assert.Equal(whole.At(37.0 * i), split.At(37.0 * i), 1e-9));
        Assert.Equal(whole.LargestMean(900).Mean, split.LargestMean(900).Mean, 1e-9);
    }

    [Fact]
    public void At_TwoEnginesAtOnce_Add()
    {
        var both = new RoomHistory(Room, [new(0, 180, 250), new(60, 120, 100)]);
        var one = new RoomHistory(Room, [new(0, 180, 250)]);
        var other = new RoomHistory(Room, [new(60, 120, 100)]);

        Assert.All(
            Enumerable.Range(0, 50),
            i => Assert.Equal(one.At(10.0 * i) + other.At(10.0 * i), both.At(10.0 * i), 1e-9)
        );
    }

    // Against a fine scan: no sampled window has a larger mean than the exact search finds.
    [Fact]
    public void LargestMean_AnyHistory_IsNotUnderAnySampledWindow() =>
        Gen.Select(Histories, Gen.Double[30, 4000])
            .Sample(
                (history, window) =>
                {
                    double largest = history.LargestMean(window).Mean;
                    return Enumerable
                        .Range(0, 400)
                        .All(i => history.Mean(window, 25.0 * i) <= largest * (1 + 1e-7) + 1e-9);
                },
                iter: 200
            );

    [Fact]
    public void FirstOver_AnyHistory_IsTheFirstMomentOver() =>
        Gen.Select(Histories, Gen.Double[30, 4000], Gen.Double[0.1, 0.95])
            .Sample(
                (history, window, share) =>
                {
                    double limit = share * history.LargestMean(window).Mean;
                    return limit <= 1e-6
                        || (
                            history.FirstOver(window, limit) is { } first
                            && history.Mean(window, first + 1e-3) >= limit * (1 - 1e-6)
                            && Enumerable
                                .Range(1, 100)
                                .All(i => history.Mean(window, first * (1 - (i / 100.0))) <= limit * (1 + 1e-6))
                        );
                },
                iter: 200
            );

    [Fact]
    public void FirstOver_LimitNotReached_IsNever() => Assert.Null(new RoomHistory(Room, TwoRuns).FirstOver(900, 1e6));

    [Fact]
    public void LargestMean_LongerWindow_IsNeverLarger() =>
        Gen.Select(Histories, Gen.Double[30, 2000])
            .Sample(
                (history, window) =>
                    history.LargestMean(2 * window).Mean <= history.LargestMean(window).Mean * (1 + 1e-9) + 1e-9,
                iter: 200
            );

    [Fact]
    public void ClearAt_AfterTheLastRun_MeetsTheLimit()
    {
        var history = new RoomHistory(Room, TwoRuns);

        Assert.Equal(20, history.At(history.ClearAt(20)!.Value), 1e-6);
        Assert.Equal(history.EndSeconds, history.ClearAt(1e6));
        Assert.Null(new RoomHistory(Room with { Exchange = 0 }, TwoRuns).ClearAt(20));
    }
}
