using NetTopologySuite.Geometries;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.IndoorAir;

/// <summary>The enclosure as one room: volume, fresh air, heat; null where the plan does not tell.</summary>
internal sealed class RoomFacts
{
    private const double AirHeat = 1005;
    private const double GasConstant = 287.05;

    // An engine outside whose exhaust enters the footprint within this many metres is counted as inside: choice.
    private const double BlowsInMetres = 30;

    /// <summary>Reads the enclosure of a site.</summary>
    public RoomFacts(Plan plan, Enclosure enclosure)
    {
        Enclosure = enclosure;
        Outline = OutlineOf(enclosure);
        OutsideCelsius = (plan.Site.Weather?.HighestTemperatureCelsius)
            .Or<WeatherBand>(nameof(WeatherBand.HighestTemperatureCelsius))
            .Value;
        Density =
            1000
            * (plan.Site.Air?.PressureKilopascals).Or<Air>(nameof(Air.PressureKilopascals)).Value
            / (GasConstant * (OutsideCelsius + 273.15));
        Volume = VolumeOf(enclosure, Outline);
        FreshAir = enclosure.FreshAirCubicMetresPerSecond is { } fresh
            ? Quantity.CautiousLow(fresh.Value, fresh.Value / AirLimits.MixingFactor, Unit.CubicMetrePerSecond) with
            {
                Pedigree = fresh.Pedigree,
                Citations = ["choice-mixing-factor"],
            }
            : null;
    }

    /// <summary>The enclosure.</summary>
    public Enclosure Enclosure { get; }

    /// <summary>Footprint; empty when it encloses nothing.</summary>
    public Geometry Outline { get; }

    /// <summary>Volume of air, m³.</summary>
    public Quantity? Volume { get; }

    /// <summary>Fresh air, m³/s.</summary>
    public Quantity? FreshAir { get; }

    /// <summary>Hottest outside air the plan holds for, °C.</summary>
    public double OutsideCelsius { get; }

    /// <summary>Density of the air, kg/m³.</summary>
    public double Density { get; }

    /// <summary>Whether volume and fresh air are known.</summary>
    public bool IsKnown => Volume is not null && FreshAir is not null;

    /// <summary>Whether an engine stands inside.</summary>
    public bool Holds(Engine engine) => Outline.Intersects(SiteGeometry.Point(engine.Place));

    /// <summary>Whether an engine outside blows in.</summary>
    public bool IsBlownInto(Engine engine) =>
        !Holds(engine)
        && Outline.Intersects(
            SiteGeometry.Line([engine.Place, engine.Place.Along(engine.ExhaustHeadingDegrees, BlowsInMetres)])
        );

    /// <summary>Balance of a gas, best estimate or planning, with its level in the outside air.</summary>
    public RoomBalance Gas(bool planning, double outside) =>
        new(Pick(Volume!, planning), Pick(FreshAir!, planning), outside);

    /// <summary>Balance of heat, best estimate or planning, in J/K and W/K.</summary>
    public RoomBalance Heat(bool planning) =>
        new(
            Density * AirHeat * Pick(Volume!, planning),
            (Density * AirHeat * Pick(FreshAir!, planning)) + HeatLoss,
            OutsideCelsius
        );

    private double HeatLoss =>
        Enclosure.HeatLossWattsPerKelvin.Or<Enclosure>(nameof(Enclosure.HeatLossWattsPerKelvin)).Value;

    private static double Pick(Quantity quantity, bool planning) => planning ? quantity.Planning : quantity.Best;

    private static Geometry OutlineOf(Enclosure enclosure)
    {
        if (enclosure.Footprint.Count < 3)
        {
            return SiteGeometry.Empty;
        }

        Polygon ring = SiteGeometry.Polygon(enclosure.Footprint);
        Geometry outline = ring.IsValid ? ring : ring.ConvexHull();
        return outline.Area > 0 ? outline : SiteGeometry.Empty;
    }

    // A ridge roof fills half of the height over the eaves, a pyramid a third: the smaller is the cautious one.
    private static Quantity? VolumeOf(Enclosure enclosure, Geometry outline)
    {
        if (enclosure.EavesHeightMetres is not { } eaves || outline.IsEmpty)
        {
            return null;
        }

        double over = Math.Max(0, (enclosure.RidgeHeightMetres?.Value ?? eaves.Value) - eaves.Value);
        double furniture = enclosure.FurnitureCubicMetres.Or<Enclosure>(nameof(Enclosure.FurnitureCubicMetres)).Value;
        double best = (outline.Area * (eaves.Value + (over / 2))) - furniture;
        double planning = (outline.Area * (eaves.Value + (over / 3))) - furniture;
        return planning > 0
            ? Quantity.CautiousLow(best, planning, Unit.CubicMetre) with
            {
                Pedigree = eaves.Pedigree,
            }
            : null;
    }
}
