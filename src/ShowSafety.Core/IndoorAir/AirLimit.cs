using ShowSafety.Core.Measures;

namespace ShowSafety.Core.IndoorAir;

/// <summary>What is in the air.</summary>
public enum AirSubstance
{
    /// <summary>Carbon monoxide, mg/m³.</summary>
    CarbonMonoxide,

    /// <summary>Carbon dioxide, ppm.</summary>
    CarbonDioxide,

    /// <summary>Nitrogen dioxide, mg/m³.</summary>
    NitrogenDioxide,

    /// <summary>Nitric oxide, mg/m³.</summary>
    NitricOxide,

    /// <summary>Air temperature, °C.</summary>
    Temperature,
}

/// <summary>Whom a limit covers.</summary>
public enum AirLimitGroup
{
    /// <summary>Public guidance: visitors, children among them.</summary>
    Visitors,

    /// <summary>Limits for people at work: crew and exhibitors. They do not cover the public.</summary>
    Workers,

    /// <summary>Concentrations immediately dangerous to life or health: everyone.</summary>
    Everyone,
}

/// <summary>A limit of the air as a mean over a sliding window.</summary>
/// <param name="Substance">Substance.</param>
/// <param name="Group">Whom it covers.</param>
/// <param name="WindowMinutes">Length of the window in minutes; 0 for a value never to be exceeded.</param>
/// <param name="Value">Limit in the unit of the substance.</param>
/// <param name="Citation">Id of the source.</param>
public sealed record AirLimit(
    AirSubstance Substance,
    AirLimitGroup Group,
    double WindowMinutes,
    double Value,
    string Citation
)
{
    /// <summary>Unit of the limit.</summary>
    public Unit Unit =>
        Substance switch
        {
            AirSubstance.CarbonDioxide => Unit.PartPerMillion,
            AirSubstance.Temperature => Unit.Celsius,
            _ => Unit.MilligramPerCubicMetre,
        };
}
