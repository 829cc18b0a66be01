using CsCheck;
using ShowSafety.Core.Crowd;

namespace ShowSafety.Core.Tests.Crowd;

public sealed class SignSizeTests
{
    // Geometry: the disc and the triangle have the area they were made for.
    [Fact]
    public void Sizes_AnyArea_GiveTheAreaBack() =>
        Gen.Double[0.001, 2]
            .Sample(area =>
            {
                double disc = SignSize.DiscMetres(area);
                double side = SignSize.TriangleMetres(area);
                Assert.Equal(area, Math.PI * disc * disc / 4, 9);
                Assert.Equal(area, Math.Sqrt(3) / 4 * side * side, 9);
            });
}
