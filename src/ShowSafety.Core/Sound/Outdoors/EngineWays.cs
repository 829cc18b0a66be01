using System.Collections.Concurrent;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors.Bounds;
using ShowSafety.Core.Sound.Outdoors.Screens;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound.Outdoors;

/// <summary>
/// The ways of sound from one engine, the same for all its throttle states. Where nothing screens or reflects, the only
/// way is worked out on the spot; otherwise ways to places asked before are remembered, because people are asked about
/// in many states.
/// </summary>
internal sealed class EngineWays
{
    // Enough for all places of all people of a plan; a grid asks each place once.
    private const int MostRemembered = 20_000;

    private readonly ConcurrentDictionary<(PlanPoint, double), Way[]> _remembered = new();
    private readonly OpenAirSite _site;
    private readonly Emitter _source;
    private readonly double _heightMetres;
    private readonly double[] _air;

    /// <summary>Prepares the ways from an engine.</summary>
    public EngineWays(OpenAirSite site, Emitter source, double sourceHeightMetres)
    {
        _site = site;
        _source = source;
        _heightMetres = sourceHeightMetres;
        _air = [.. site.AirPerMetre];
        Bound = new(site, source, sourceHeightMetres);
    }

    /// <summary>What the ways can bring over a patch.</summary>
    public OpenAirBound Bound { get; }

    /// <summary>The ways to an ear, with all their terms.</summary>
    public ValueList<OpenAirPath> To(PlanPoint place, double earHeightMetres) =>
        _site.Paths(_source, _heightMetres, new(place, earHeightMetres));

    /// <summary>Adds mean square pressures at an ear.</summary>
    /// <param name="energies">What is added to, in each band.</param>
    /// <param name="place">Place on the plan.</param>
    /// <param name="earHeightMetres">Height of the ear, 0 or more.</param>
    /// <param name="power">Power by direction.</param>
    public void AddTo(Span<double> energies, PlanPoint place, double earHeightMetres, DirectionalPower power)
    {
        if (_site.Obstacles.Count == 0 && _site.Walls.Count == 0)
        {
            Span<double> factors = stackalloc double[OctaveBand.Count];
            double flat = _source.Place.DistanceMetres(place);
            GroundFactors ground = _site.Ground.Along(_source.Place, place, _heightMetres, earHeightMetres);
            FlatWay.To(flat, _heightMetres, earHeightMetres).Write(ground, _air, factors);
            Add(energies, DirectPath.AngleDegrees(_source, _heightMetres, place, earHeightMetres), factors, power);
            return;
        }

        foreach (Way way in Remembered(place, earHeightMetres))
        {
            Add(energies, way.AngleDegrees, way.Factors, power);
        }
    }

    private Way[] Remembered(PlanPoint place, double ear)
    {
        if (_remembered.TryGetValue((place, ear), out Way[]? known))
        {
            return known;
        }

        Way[] ways = [.. To(place, ear).Select(path => new Way(path.AngleDegrees, [.. path.Factors]))];
        if (_remembered.Count < MostRemembered)
        {
            _remembered[(place, ear)] = ways;
        }

        return ways;
    }

    private static void Add(
        Span<double> energies,
        double angleDegrees,
        ReadOnlySpan<double> factors,
        DirectionalPower power
    )
    {
        Span<double> powers = stackalloc double[OctaveBand.Count];
        power.Energies(angleDegrees, powers);
        for (int band = 0; band < energies.Length; band++)
        {
            energies[band] += powers[band] * factors[band];
        }
    }

    private readonly record struct Way(double AngleDegrees, double[] Factors);
}
