using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors.Bounds;

/// <summary>The least and the most ground factor a way in a corridor can meet.</summary>
/// <param name="Least">No place has less.</param>
/// <param name="Most">No place has more.</param>
internal readonly record struct GroundRange(double Least, double Most)
{
    /// <summary>The range over a corridor; of pieces that overlap the harder counts.</summary>
    public static GroundRange Over(GroundProfile ground, Corridor corridor)
    {
        double least = 1;
        double most = 0;
        double covered = double.PositiveInfinity;
        foreach (GroundPiece piece in ground.Pieces)
        {
            bool meets = corridor.MeetsLine(piece.Outline, isRing: true);
            if (!meets && GroundProfile.Holds(piece.Outline, corridor.From))
            {
                // It lies under all of the corridor: nothing softer counts anywhere.
                covered = Math.Min(covered, piece.Factor);
            }
            else if (meets)
            {
                least = Math.Min(least, piece.Factor);
                most = Math.Max(most, piece.Factor);
            }
        }

        double under = double.IsFinite(covered) ? covered : ground.Elsewhere;
        return new(Math.Min(least, under), double.IsFinite(covered) ? covered : Math.Max(most, under));
    }

    /// <summary>The range over all of a site.</summary>
    public static GroundRange Over(GroundProfile ground) =>
        new(
            ground.Pieces.Select(p => p.Factor).Append(ground.Elsewhere).Min(),
            ground.Pieces.Select(p => p.Factor).Append(ground.Elsewhere).Max()
        );
}
