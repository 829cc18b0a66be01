using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound;
using ShowSafety.Core.Sound.Sources;
using ShowSafety.Core.Sound.Sources.Reduction;

namespace ShowSafety.Core.Tests.Sound.Sources.Reduction;

public sealed class DirectivityFitTests
{
    private static readonly JetDirectivity Table = JetDirectivity.Subsonic;

    private static readonly DirectedReading[] Five =
    [
        At(30, 121.0),
        At(60, 118.5),
        At(90, 113.2),
        At(135, 109.8),
        At(170, 107.1),
    ];

    // Golden numbers by linear_regression of Python 3's statistics module on the printed table (memory: Heller and Franken).
    [Fact]
    public void Of_FiveReadings_MeetsAnotherLibrary()
    {
        DirectivityFit fit = DirectivityFit.Of(Five, Table)!;

        Assert.All(fit.Share, s => Assert.Equal(0.6523915109280967, s, 1e-6));
        Assert.All(fit.BaseDb, b => Assert.Equal(117.52570513492607, b, 1e-6));
        Assert.Equal(0.497139956567992, fit.StandardDb, 1e-6);
        Assert.True(fit.Holds);
    }

    // Readings taken from a jet that has 0.6 of the published directivity are found again without residuals. Derived.
    [Fact]
    public void Of_ReadingsOnTheLine_FindsItAndLeavesNothing() =>
        Gen.Select(Gen.Double[90, 130], Gen.Double[-0.5, 1.5])
            .Sample(
                (level, share) =>
                {
                    double[] angles = [20, 50, 95, 160];
                    DirectedReading[] readings = [.. angles.Select(a => At(a, level + (share * Table.IndexDb(a))))];
                    DirectivityFit fit = DirectivityFit.Of(readings, Table)!;
                    Assert.Equal(level, fit.BaseDb[3], 1e-9);
                    Assert.Equal(share, fit.Share[3], 1e-9);
                    Assert.Equal(0, fit.StandardDb, 1e-9);
                    Assert.All(fit.Residuals, r => Assert.Equal(0, r.LevelDb, 1e-9));
                }
            );

    // Fit and residual give the reading: at the microphone nothing is lost.
    [Fact]
    public void Of_AnyReadings_FitAndResidualAreTheReading() =>
        Readings.Sample(readings =>
        {
            if (DirectivityFit.Of(readings, Table) is { } fit)
            {
                Assert.All(
                    readings.Zip(fit.Residuals),
                    pair =>
                    {
                        BandValues fitted = fit.LevelsDb(Table.IndexDb(pair.First.AngleDegrees));
                        BandValues back = fitted + pair.Second.BandsDb;
                        Assert.All(back.Zip(pair.First.LevelsDb), l => Assert.Equal(l.Second, l.First, 1e-9));
                    }
                );
            }
        });

    [Fact]
    public void Of_TwoDirections_IsNone() =>
        Assert.Null(DirectivityFit.Of([At(30, 120), At(33, 121), At(90, 112)], Table));

    [Fact]
    public void Of_DirectionsTheTableHardlyTellsApart_IsNone() =>
        Assert.Null(DirectivityFit.Of([At(140, 120), At(150, 121), At(160, 112)], Table));

    [Fact]
    public void Holds_ReadingFarOff_DoesNot() =>
        Assert.False(DirectivityFit.Of([At(30, 120), At(60, 105), At(90, 118), At(150, 104)], Table)!.Holds);

    [Fact]
    public void FittedPower_AtAReading_IsTheLargerOfFitAndReading()
    {
        DirectivityFit fit = DirectivityFit.Of(Five, Table)!;
        var power = new FittedPower(fit, Five, Table, null);

        Assert.All(
            Five.Zip(fit.Residuals),
            p =>
                Assert.Equal(
                    p.First.LevelsDb[2] - Math.Min(0, p.Second.BandsDb[2]),
                    power.LevelsDb(p.First.AngleDegrees)[2],
                    1e-9
                )
        );
    }

    [Fact]
    public void FittedPower_InTheDirectionOfAnyReading_IsNeverUnderIt() =>
        Readings.Sample(readings =>
        {
            if (DirectivityFit.Of(readings, Table) is { } fit)
            {
                var power = new FittedPower(fit, readings, Table, null);
                Assert.All(
                    readings,
                    r =>
                        Assert.All(
                            power.LevelsDb(r.AngleDegrees).Zip(r.LevelsDb),
                            l => Assert.True(l.First >= l.Second - 1e-9)
                        )
                );
            }
        });

    // Beyond 20 degrees from every reading nothing is taken off what the readings and the table say.
    [Fact]
    public void FittedPower_FarFromReadings_IsNeverUnderTheirEnvelope() =>
        Gen.Select(Readings, Gen.Double[0, 180])
            .Sample(
                (readings, angle) =>
                {
                    if (
                        DirectivityFit.Of(readings, Table) is { } fit
                        && readings.All(r => Math.Abs(r.AngleDegrees - angle) >= 20)
                    )
                    {
                        BandValues envelope = new ReadingEnvelope(readings, Table, null).LevelsDb(angle);
                        BandValues fitted = new FittedPower(fit, readings, Table, null).LevelsDb(angle);
                        Assert.All(fitted.Zip(envelope), l => Assert.True(l.First >= l.Second - 1e-9));
                    }
                }
            );

    [Fact]
    public void FittedPower_AnyDirection_IsNoSteeperThanItSaysAndOverItsFloor() =>
        Readings.Sample(
            readings =>
            {
                if (DirectivityFit.Of(readings, Table) is { } fit)
                {
                    var power = new FittedPower(fit, readings, Table, BandValues.Uniform(100));
                    for (double angle = 0; angle < 180; angle += 0.5)
                    {
                        double here = power.LevelsDb(angle)[0];
                        double step = Math.Abs(power.LevelsDb(angle + 0.5)[0] - here);
                        Assert.True(step <= (0.5 * power.SteepestDbPerDegree) + 1e-9, $"{step} dB at {angle} degrees");
                        Assert.True(here >= 100 && double.IsFinite(here));
                    }
                }
            },
            iter: 30
        );

    // Three more readings cost less than the table: the mean of the fit is under the envelope of a single one at 90 degrees.
    [Fact]
    public void SphereMeanDb_FiveReadings_IsUnderTheEnvelopeOfOne()
    {
        var fitted = new FittedPower(DirectivityFit.Of(Five, Table)!, Five, Table, null);
        var single = new ReadingEnvelope([Five[2]], Table, null);

        Assert.True(fitted.SphereMeanDb()[3] < single.SphereMeanDb()[3] - 2);
    }

    private static Gen<DirectedReading[]> Readings { get; } =
        Gen.Select(Gen.Double[0, 180], Gen.Double[80, 140]).Select((a, l) => At(a, l)).Array[3, 7];

    private static DirectedReading At(double angle, double level) => new(angle, BandValues.Uniform(level));
}
