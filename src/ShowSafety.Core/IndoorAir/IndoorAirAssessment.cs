using ShowSafety.Core.Measures;

namespace ShowSafety.Core.IndoorAir;

/// <summary>What the room of indoor air says of a plan; nothing at all where no enclosure stands on the site.</summary>
public sealed record IndoorAirAssessment : RoomAssessment
{
    /// <summary>The worst day of the programme; null where every day is alike or nothing could be calculated.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>First light-up of that day on the event's wall clock; null where nothing could be calculated.</summary>
    public TimeOnly? FirstLightUp { get; init; }

    /// <summary>The air of the worst day minute by minute and at every change of throttle, planning values.</summary>
    public ValueList<RoomAirPoint> Series { get; init; } = [];

    /// <summary>Every limit against the largest mean of the worst day.</summary>
    public ValueList<AirComparison> Comparisons { get; init; } = [];

    /// <summary>Whether everything needed for a verdict on the air is known.</summary>
    public bool CanTell { get; init; }
}

/// <summary>The room's air at a moment, planning values; null where a value cannot be told.</summary>
/// <param name="Minutes">Minutes after the first light-up.</param>
/// <param name="CarbonMonoxideMilligramsPerCubicMetre">Carbon monoxide, mg/m³.</param>
/// <param name="CarbonDioxidePpm">Carbon dioxide, ppm.</param>
/// <param name="NitrogenDioxideMilligramsPerCubicMetre">Nitrogen dioxide, mg/m³.</param>
/// <param name="TemperatureCelsius">Air temperature, °C; null beyond the range of the model.</param>
public sealed record RoomAirPoint(
    double Minutes,
    double? CarbonMonoxideMilligramsPerCubicMetre,
    double? CarbonDioxidePpm,
    double? NitrogenDioxideMilligramsPerCubicMetre,
    double? TemperatureCelsius
);

/// <summary>A limit against the largest mean over its window.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="LargestMean">Largest mean over its window.</param>
/// <param name="OverFromMinutes">
/// Minutes after the first light-up at which the planning mean first passes the limit; null when it never does.
/// </param>
public sealed record AirComparison(AirLimit Limit, Quantity LargestMean, double? OverFromMinutes);
