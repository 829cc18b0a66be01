using CsCheck;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Tests.Sound.Outdoors;

public sealed class FlatWayTests
{
    // The sum that is quick is the sum that is written out in terms of the standard.
    [Fact]
    public void Write_AnyGroundAndHeights_IsTheFlatPath() =>
        Gen.Select(
                Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool),
                Gen.Double[-1, 3.5],
                Gen.Double[0, 6],
                Gen.Double[0, 6],
                Gen.Double[0, 0.03]
            )
            .Sample(
                (g, distance, source, ear, air) =>
                {
                    GroundFactors ground = g.Item4 ? GroundFactors.Even(0) : new(g.Item1, g.Item2, g.Item3);
                    double flat = Math.Pow(10, distance);
                    var factors = new double[OctaveBand.Count];

                    FlatWay.To(flat, source, ear).Write(ground, [.. BandValues.Uniform(air)], factors);

                    BandValues loss = FlatPath.Of(ground, flat, source, ear, BandValues.Uniform(air)).LossDb;
                    Assert.All(
                        loss.Zip(factors),
                        pair =>
                            Assert.Equal(
                                Math.Max(Decibels.SilenceDb, -pair.First),
                                Decibels.FromEnergy(pair.Second),
                                1e-6
                            )
                    );
                },
                iter: 5000
            );
}
