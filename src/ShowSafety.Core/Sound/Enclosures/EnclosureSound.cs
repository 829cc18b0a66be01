using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>
/// A hall or tent as the sound field sees it. Inside: the diffuse field of engines inside. Outside: no wall or fabric
/// takes anything off the direct sound; what leaves from the diffuse field is added as if all of it came from the
/// nearest point of the edge, spreading over a quarter of a sphere, and never more than the field inside.
/// </summary>
/// <param name="Id">Id of the enclosure.</param>
/// <param name="Footprint">Its footprint.</param>
/// <param name="Room">Its diffuse field.</param>
public sealed record EnclosureSound(string Id, Footprint Footprint, DiffuseRoom Room)
{
    private readonly double[] _field = [.. Room.FieldFactor];
    private readonly double[] _escape = [.. Room.EscapeFactor];

    /// <summary>Ids of the sources of the absorption coefficients used.</summary>
    public ValueList<string> MaterialCitations { get; init; } = [];

    /// <summary>Adds the diffuse part at a place, from an engine inside of whole power levels as energies.</summary>
    public void AddTo(Span<double> energies, PlanPoint place, ReadOnlySpan<double> power)
    {
        Span<double> factors = stackalloc double[OctaveBand.Count];
        Factors(place, factors);
        for (int band = 0; band < energies.Length; band++)
        {
            energies[band] += power[band] * factors[band];
        }
    }

    /// <summary>Writes the diffuse mean square pressure at a place per sound power of an engine inside, in 1/m².</summary>
    public void Factors(PlanPoint place, Span<double> factors)
    {
        bool inside = Footprint.Contains(place);
        Write(inside, inside ? 0 : Footprint.EdgeDistanceMetres(place), factors);
    }

    /// <summary>Writes the least or the most of it over a patch.</summary>
    public void Factors(in Patch patch, Bound bound, Span<double> factors)
    {
        if (bound == Bound.Highest)
        {
            double nearest = Footprint.NearestMetres(patch);
            Write(nearest <= 0, nearest, factors);
        }
        else
        {
            double edge = Footprint.EdgeDistanceMetres(patch.Middle);
            Write(Footprint.Contains(patch.Middle) && edge > patch.RadiusMetres, edge + patch.RadiusMetres, factors);
        }
    }

    private void Write(bool inside, double edge, Span<double> factors)
    {
        for (int band = 0; band < factors.Length; band++)
        {
            double field = _field[band];
            factors[band] = inside ? field : Math.Min(field, _escape[band] / (Math.PI * edge * edge));
        }
    }
}
