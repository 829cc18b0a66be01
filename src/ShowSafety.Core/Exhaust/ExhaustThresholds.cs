using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Exhaust;

/// <summary>The values at the boundaries of the exhaust zones, each with the source named beside it.</summary>
public static class ExhaustThresholds
{
    /// <summary>Speed for the public, m/s: 20 mph, FAA AC 150/5300-13 ch. 8, gusts hazardous.</summary>
    public const double PublicSpeedMetresPerSecond = 8.9;

    /// <summary>Speed for crew and loose things, m/s: 30 mph, same source, loose objects become missiles.</summary>
    public const double CrewSpeedMetresPerSecond = 13.4;

    /// <summary>Air for the public, °C: 100 °F, UFC 3-260-01 A8.5.1 (memory).</summary>
    public const double PublicAirCelsius = 38;

    /// <summary>Air for crew, °C: choice, after the annex of NFPA 130 (memory: ten minutes).</summary>
    public const double CrewAirCelsius = 60;

    /// <summary>Coated tent fabric, °C: service limit on makers' sheets (memory).</summary>
    public const double FabricCelsius = 70;

    /// <summary>Wood near a hot body for a long time, °C: Babrauskas, Gray and Janssens 2007.</summary>
    public const double WoodCelsius = 77;

    /// <summary>Glow of thin dry plant matter, °C: wood glows from 200 °C, USDA Wood Handbook.</summary>
    public const double VegetationIgnitionCelsius = 200;

    /// <summary>Ignition of paper, °C, low end (handbooks, memory).</summary>
    public const double PaperIgnitionCelsius = 218;

    /// <summary>Margin under an ignition temperature, K: choice, because peaks in a jet are over its mean.</summary>
    public const double IgnitionMarginKelvin = 100;

    /// <summary>Air round a vehicle with fuel, °C: lowest flash point of jet kerosene, fuel specification (memory).</summary>
    public const double VehicleCelsius = 38;

    /// <summary>Smallest temperature rise a zone is drawn for, K: choice, where the day is about as hot as the limit.</summary>
    public const double SmallestRiseKelvin = 1;

    /// <summary>Reach of an arm round the intake, m: ISO 13857 (memory).</summary>
    public const double IntakeArmMetres = 0.85;

    /// <summary>Speed that lifts loose cloth, m/s: choice, Beaufort 3, wind extends a light flag (memory).</summary>
    public const double ClothSpeedMetresPerSecond = 3.4;

    /// <summary>Allowance for flame behind the nozzle at a start, m: choice.</summary>
    public const double StartFlameMetres = 3;

    /// <summary>Half angle of the start flame's allowance, degrees: choice.</summary>
    public const double StartFlameHalfAngleDegrees = 30;

    /// <summary>Reach of fuel spilt and lit under the engine at a start, m: choice.</summary>
    public const double StartSpillMetres = 1;

    /// <summary>Fuel over air from which a sheet is asked about, low end of what is usual (common practice).</summary>
    public const double UsualFuelAirLow = 0.015;

    /// <summary>Fuel over air up to which a sheet is not asked about (common practice).</summary>
    public const double UsualFuelAirHigh = 0.025;

    /// <summary>Fuel over air at which all oxygen is used.</summary>
    public const double StoichiometricFuelAir = 0.068;

    /// <summary>Specific consumption from which a sheet is asked about, kg/(N h), low end (common practice).</summary>
    public const double UsualConsumptionLow = 0.14;

    /// <summary>Specific consumption up to which a sheet is not asked about, kg/(N h) (common practice).</summary>
    public const double UsualConsumptionHigh = 0.25;

    /// <summary>Share by which values of a sheet may differ from each other without a question: choice.</summary>
    public const double SheetTolerance = 0.1;

    /// <summary>Limit in °C for a thing that burns or softens; null for loose items, which the speed decides.</summary>
    public static double? LimitCelsius(BurnableKind kind) =>
        kind switch
        {
            BurnableKind.TentFabric => FabricCelsius,
            BurnableKind.Wood => WoodCelsius,
            BurnableKind.DryVegetation => VegetationIgnitionCelsius - IgnitionMarginKelvin,
            BurnableKind.Paper => PaperIgnitionCelsius - IgnitionMarginKelvin,
            BurnableKind.Vehicle => VehicleCelsius,
            _ => null,
        };
}
