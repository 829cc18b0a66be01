using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>A piece of ground with its factor.</summary>
/// <param name="Outline">Its outline, 3 corners or more, no ring closed twice.</param>
/// <param name="Factor">G, 0 hard to 1 porous.</param>
public sealed record GroundPiece(ValueList<PlanPoint> Outline, double Factor);

/// <summary>
/// The ground mapped on a plan, averaged along a path for each region of ISO 9613-2:1996 clause 7.3.1. Where pieces
/// overlap the harder one counts.
/// </summary>
/// <param name="Pieces">Pieces of ground other than the rest.</param>
/// <param name="Elsewhere">G where no piece lies, 0 to 1.</param>
public sealed record GroundProfile(ValueList<GroundPiece> Pieces, double Elsewhere)
{
    // Up to here the places where the ground changes lie on the stack.
    private const int FewEdges = 64;

    private readonly int _edges = Pieces.Sum(p => p.Outline.Count);

    /// <summary>Mean factors of the regions of a path along the ground.</summary>
    /// <param name="source">Foot of the source.</param>
    /// <param name="receiver">Foot of the receiver.</param>
    /// <param name="sourceHeightMetres">h_s, 0 or more.</param>
    /// <param name="receiverHeightMetres">h_r, 0 or more.</param>
    public GroundFactors Along(
        PlanPoint source,
        PlanPoint receiver,
        double sourceHeightMetres,
        double receiverHeightMetres
    )
    {
        double length = source.DistanceMetres(receiver);
        if (Pieces.Count == 0 || !(length > 0))
        {
            return GroundFactors.Even(length > 0 ? Elsewhere : At(source));
        }

        Span<double> room = _edges <= FewEdges ? stackalloc double[FewEdges] : new double[_edges];
        ReadOnlySpan<double> changes = Changes(source, receiver, room);
        double first = Math.Min(1, GroundEffect.RegionHeights * sourceHeightMetres / length);
        double last = 1 - Math.Min(1, GroundEffect.RegionHeights * receiverHeightMetres / length);
        return new(
            Mean(source, receiver, changes, 0, first),
            Mean(source, receiver, changes, first, last),
            Mean(source, receiver, changes, last, 1)
        );
    }

    /// <summary>G at a place.</summary>
    public double At(PlanPoint place)
    {
        double? factor = null;
        foreach (GroundPiece piece in Pieces)
        {
            if (Holds(piece.Outline, place))
            {
                factor = Math.Min(factor ?? 1, piece.Factor);
            }
        }

        return factor ?? Elsewhere;
    }

    private double Mean(PlanPoint source, PlanPoint receiver, ReadOnlySpan<double> changes, double from, double to)
    {
        if (!(to - from > 1e-12))
        {
            // A region without length: the ground at its foot.
            return At(PlanLines.Between(source, receiver, Math.Clamp(from, 0, 1)));
        }

        double sum = 0;
        double at = from;
        foreach (double change in changes)
        {
            if (change > at && change < to)
            {
                sum += (change - at) * At(PlanLines.Between(source, receiver, (at + change) / 2));
                at = change;
            }
        }

        sum += (to - at) * At(PlanLines.Between(source, receiver, (at + to) / 2));
        return sum / (to - from);
    }

    // Where on the way the ground may change, in order.
    private ReadOnlySpan<double> Changes(PlanPoint source, PlanPoint receiver, Span<double> room)
    {
        int count = 0;
        foreach (GroundPiece piece in Pieces)
        {
            ValueList<PlanPoint> ring = piece.Outline;
            for (int i = 0; i < ring.Count; i++)
            {
                if (PlanLines.Crossing(source, receiver, ring[i], ring[(i + 1) % ring.Count]) is { } share)
                {
                    room[count++] = share;
                }
            }
        }

        room[..count].Sort();
        return room[..count];
    }

    /// <summary>Whether a place lies inside a ring.</summary>
    internal static bool Holds(ValueList<PlanPoint> ring, PlanPoint place)
    {
        bool inside = false;
        for (int i = 0; i < ring.Count; i++)
        {
            PlanPoint a = ring[i];
            PlanPoint b = ring[(i + 1) % ring.Count];
            if (
                a.YMetres > place.YMetres != b.YMetres > place.YMetres
                && place.XMetres
                    < a.XMetres + ((b.XMetres - a.XMetres) * (place.YMetres - a.YMetres) / (b.YMetres - a.YMetres))
            )
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
