using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>An engine or its mirror image in an upright wall: place and exhaust axis. An image mirrors the axis as well.</summary>
/// <param name="Place">Place on the plan.</param>
/// <param name="AxisX">x of the unit vector the exhaust blows along.</param>
/// <param name="AxisY">y of that vector.</param>
public sealed record Emitter(PlanPoint Place, double AxisX, double AxisY)
{
    /// <summary>An engine.</summary>
    public static Emitter Of(PlanPoint place, double headingDegrees)
    {
        (double x, double y) = Math.SinCos(Heading.ToRadians(headingDegrees));
        return new(place, x, y);
    }
}
