using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Reflections;

/// <summary>
/// Ground along a way that is folded at a wall: the regions of ISO 9613-2:1996 clause 7.3.1 laid along the unfolded way.
/// </summary>
internal static class FoldedGround
{
    /// <summary>Mean factors of the regions along the way from source by the wall to the receiver.</summary>
    public static GroundFactors Along(
        GroundProfile ground,
        PlanPoint source,
        PlanPoint wall,
        PlanPoint receiver,
        double sourceHeightMetres,
        double receiverHeightMetres
    )
    {
        double first = source.DistanceMetres(wall);
        double whole = first + wall.DistanceMetres(receiver);
        if (!(whole > 0))
        {
            return GroundFactors.Even(ground.At(source));
        }

        double near = Math.Min(whole, GroundEffect.RegionHeights * sourceHeightMetres);
        double far = whole - Math.Min(whole, GroundEffect.RegionHeights * receiverHeightMetres);
        return new(Mean(0, near), Mean(Math.Min(near, far), Math.Max(near, far)), Mean(far, whole));

        double Mean(double from, double to)
        {
            double before = Math.Max(0, Math.Min(to, first) - from);
            double after = Math.Max(0, to - Math.Max(from, first));
            double sum =
                (before * Of(source, wall, first, from, from + before))
                + (after * Of(wall, receiver, whole - first, to - after - first, to - first));
            return before + after > 0 ? sum / (before + after) : ground.At(Place(from));
        }

        PlanPoint Place(double at) =>
            at <= first
                ? PlanLines.Between(source, wall, first > 0 ? at / first : 0)
                : PlanLines.Between(wall, receiver, Math.Min(1, (at - first) / (whole - first)));

        double Of(PlanPoint from, PlanPoint to, double length, double start, double end) =>
            end > start && length > 0
                ? ground
                    .Along(
                        PlanLines.Between(from, to, start / length),
                        PlanLines.Between(from, to, end / length),
                        // A region as long as the piece.
                        end - start,
                        0
                    )
                    .Source
                : 0;
    }
}
