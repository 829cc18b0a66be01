using CsCheck;
using ShowSafety.Core.Crowd;

namespace ShowSafety.Core.Tests.Crowd;

/// <summary>ISO 13857:2008 and :2019, table 2, from memory.</summary>
public sealed class ReachTableTests
{
    private static readonly double[] Barriers = [1000, 1200, 1400, 1600, 1800, 2000, 2200, 2400, 2500, 2700];

    private static readonly double[] Hazards =
    [
        0,
        200,
        400,
        600,
        800,
        1000,
        1200,
        1400,
        1600,
        1800,
        2000,
        2200,
        2400,
        2600,
        2700,
    ];

    private static readonly double[] Printed =
    [
        0,
        100,
        300,
        400,
        500,
        600,
        700,
        800,
        900,
        1000,
        1100,
        1200,
        1300,
        1400,
        1500,
    ];

    private static readonly Gen<double> Hazard = Gen.Double[0, 3000];
    private static readonly Gen<double> Barrier = Gen.Double[1000, 3000];

    private static double At(double hazard, double barrier) => ReachTable.DistanceMillimetres(hazard, barrier)!.Value;

    // Each row as the table prints it, hazard height first.
    [Theory]
    [InlineData(2700, new double[] { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(2600, new double[] { 900, 800, 700, 600, 600, 500, 400, 300, 100, 0 })]
    [InlineData(2400, new double[] { 1100, 1000, 900, 800, 700, 600, 400, 300, 100, 0 })]
    [InlineData(2200, new double[] { 1300, 1200, 1000, 900, 800, 600, 400, 300, 0, 0 })]
    [InlineData(2000, new double[] { 1400, 1300, 1100, 900, 800, 600, 400, 0, 0, 0 })]
    [InlineData(1800, new double[] { 1500, 1400, 1100, 900, 800, 600, 0, 0, 0, 0 })]
    [InlineData(1600, new double[] { 1500, 1400, 1100, 900, 800, 500, 0, 0, 0, 0 })]
    [InlineData(1400, new double[] { 1500, 1400, 1100, 900, 800, 0, 0, 0, 0, 0 })]
    [InlineData(1200, new double[] { 1500, 1400, 1100, 900, 700, 0, 0, 0, 0, 0 })]
    [InlineData(1000, new double[] { 1500, 1400, 1000, 800, 0, 0, 0, 0, 0, 0 })]
    [InlineData(800, new double[] { 1500, 1300, 900, 600, 0, 0, 0, 0, 0, 0 })]
    [InlineData(600, new double[] { 1400, 1300, 800, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(400, new double[] { 1400, 1200, 400, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(200, new double[] { 1200, 900, 0, 0, 0, 0, 0, 0, 0, 0 })]
    [InlineData(0, new double[] { 1100, 500, 0, 0, 0, 0, 0, 0, 0, 0 })]
    public void DistanceMillimetres_ListedHeights_GiveThePrintedValue(double hazard, double[] row) =>
        Assert.Equal(row, Barriers.Select(b => At(hazard, b)));

    [Fact]
    public void DistanceMillimetres_AnyHeights_GiveAPrintedValueNotUnderTheNeighbours() =>
        Gen.Select(Hazard, Barrier)
            .Sample(
                (hazard, barrier) =>
                {
                    double distance = At(hazard, barrier);
                    double[] hazards = Neighbours(Hazards, hazard);
                    double[] barriers = Neighbours(Barriers, barrier);
                    Assert.Contains(distance, Printed);
                    Assert.Equal(hazards.Max(h => barriers.Max(b => At(h, b))), distance);
                }
            );

    [Fact]
    public void DistanceMillimetres_HigherBarrier_NeverAsksForMore() =>
        Gen.Select(Hazard, Barrier, Barrier)
            .Sample((hazard, a, b) => Assert.True(At(hazard, Math.Max(a, b)) <= At(hazard, Math.Min(a, b))));

    [Theory]
    [InlineData(999.9)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void DistanceMillimetres_BarrierUnderOneMetre_IsNotListed(double barrier) =>
        Assert.Null(ReachTable.DistanceMillimetres(1000, barrier));

    [Fact]
    public void OverHeights_WholeColumn_IsItsLargestValue() =>
        Assert.Equal(1400, ReachTable.OverHeights(0, double.MaxValue, 1200));

    private static double[] Neighbours(double[] heights, double value) =>
        [heights.Last(h => h <= value), heights.FirstOrDefault(h => h >= value, heights[^1])];
}
