using ShowSafety.Core.Measures;

namespace ShowSafety.Core.IndoorAir;

/// <summary>
/// The limits used, each with its source. Averages over 24 hours are left out: nobody visits for a day. Values printed
/// in ppm are turned to mg/m³ at 20 °C, the convention of EH40.
/// </summary>
public static class AirLimits
{
    /// <summary>Rise of the room over outside air, K, beyond which one well-mixed room no longer describes it: choice.</summary>
    public const double LargestRiseKelvin = 30;

    /// <summary>Carbon dioxide outdoors, ppm (memory).</summary>
    public const double OutdoorCarbonDioxidePpm = 420;

    /// <summary>Lowest static response of heat detectors of class A1, °C: EN 54-5 (memory).</summary>
    public const double DetectorCelsius = 54;

    /// <summary>Factor by which fresh air is divided because it does not mix evenly: choice.</summary>
    public const double MixingFactor = 2;

    /// <summary>All limits in a fixed order.</summary>
    public static ValueList<AirLimit> All { get; } =
    [
        .. Column(
            AirSubstance.CarbonMonoxide,
            AirLimitGroup.Visitors,
            "who-air-2000",
            (15, 100),
            (30, 60),
            (60, 30),
            (480, 10)
        ),
        .. Ppm(
            AirSubstance.CarbonMonoxide,
            AirLimitGroup.Visitors,
            Gases.CarbonMonoxide,
            "aegl-co",
            (10, 420),
            (30, 150),
            (60, 83),
            (240, 33),
            (480, 27)
        ),
        .. Column(AirSubstance.NitrogenDioxide, AirLimitGroup.Visitors, "who-air-2010", (60, 0.2)),
        .. Ppm(
            AirSubstance.NitrogenDioxide,
            AirLimitGroup.Visitors,
            Gases.NitrogenDioxide,
            "nrc-no2",
            (60, 1),
            (120, 0.5),
            (240, 0.25),
            (480, 0.12)
        ),
        .. Ppm(AirSubstance.NitrogenDioxide, AirLimitGroup.Visitors, Gases.NitrogenDioxide, "aegl-no2", (10, 0.5)),
        .. Column(AirSubstance.CarbonDioxide, AirLimitGroup.Visitors, "choice-public-co2", (15, 5000)),
        .. Column(AirSubstance.Temperature, AirLimitGroup.Visitors, "choice-room-heat", (0, 38)),
        .. Ppm(AirSubstance.CarbonMonoxide, AirLimitGroup.Workers, Gases.CarbonMonoxide, "eh40", (480, 20), (15, 100)),
        .. Ppm(AirSubstance.CarbonMonoxide, AirLimitGroup.Workers, Gases.CarbonMonoxide, "niosh-co", (0, 200)),
        .. Ppm(AirSubstance.NitrogenDioxide, AirLimitGroup.Workers, Gases.NitrogenDioxide, "eh40", (480, 0.5), (15, 1)),
        .. Ppm(AirSubstance.NitricOxide, AirLimitGroup.Workers, Gases.NitricOxide, "eh40", (480, 2)),
        .. Column(AirSubstance.CarbonDioxide, AirLimitGroup.Workers, "eh40", (480, 5000), (15, 15000)),
        .. Column(AirSubstance.Temperature, AirLimitGroup.Workers, "choice-room-heat", (0, 45)),
        .. Ppm(AirSubstance.CarbonMonoxide, AirLimitGroup.Everyone, Gases.CarbonMonoxide, "niosh-idlh", (0, 1200)),
        .. Ppm(AirSubstance.NitrogenDioxide, AirLimitGroup.Everyone, Gases.NitrogenDioxide, "niosh-idlh", (0, 13)),
        .. Ppm(AirSubstance.NitricOxide, AirLimitGroup.Everyone, Gases.NitricOxide, "niosh-idlh", (0, 100)),
        .. Column(AirSubstance.CarbonDioxide, AirLimitGroup.Everyone, "niosh-idlh", (0, 40000)),
    ];

    private static IEnumerable<AirLimit> Column(
        AirSubstance substance,
        AirLimitGroup group,
        string citation,
        params (double Minutes, double Value)[] values
    ) => values.Select(v => new AirLimit(substance, group, v.Minutes, v.Value, citation));

    private static IEnumerable<AirLimit> Ppm(
        AirSubstance substance,
        AirLimitGroup group,
        double gramsPerMole,
        string citation,
        params (double Minutes, double Value)[] values
    ) =>
        values.Select(v => new AirLimit(
            substance,
            group,
            v.Minutes,
            Gases.MilligramsPerCubicMetre(v.Value, gramsPerMole),
            citation
        ));
}
