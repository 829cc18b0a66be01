using System.Collections.Frozen;

namespace ShowSafety.Core.Measures;

/// <summary>The symbol people read for each unit, after the SI brochure (BIPM, 9th edition) and IEC 61672-1.</summary>
public static class UnitSymbols
{
    private static readonly FrozenDictionary<Unit, string> Symbols = new Dictionary<Unit, string>
    {
        [Unit.One] = "",
        [Unit.Metre] = "m",
        [Unit.Millimetre] = "mm",
        [Unit.SquareMetre] = "m²",
        [Unit.SquareCentimetre] = "cm²",
        [Unit.CubicMetre] = "m³",
        [Unit.Litre] = "L",
        [Unit.Second] = "s",
        [Unit.Minute] = "min",
        [Unit.Hour] = "h",
        [Unit.Degree] = "°",
        [Unit.Hertz] = "Hz",
        [Unit.MetrePerSecond] = "m/s",
        [Unit.CubicMetrePerSecond] = "m³/s",
        [Unit.RevolutionPerMinute] = "rpm",
        [Unit.Kilogram] = "kg",
        [Unit.Gram] = "g",
        [Unit.KilogramPerSecond] = "kg/s",
        [Unit.KilogramPerSquareMetre] = "kg/m²",
        [Unit.KilogramPerCubicMetre] = "kg/m³",
        [Unit.GramPerKilogram] = "g/kg",
        [Unit.Newton] = "N",
        [Unit.NewtonMetre] = "N·m",
        [Unit.Pascal] = "Pa",
        [Unit.Kilopascal] = "kPa",
        [Unit.Joule] = "J",
        [Unit.JoulePerSquareMetre] = "J/m²",
        [Unit.JoulePerSquareCentimetre] = "J/cm²",
        [Unit.Watt] = "W",
        [Unit.Kilowatt] = "kW",
        [Unit.WattPerKelvin] = "W/K",
        [Unit.KilowattPerSquareMetre] = "kW/m²",
        [Unit.MegajoulePerKilogram] = "MJ/kg",
        [Unit.Celsius] = "°C",
        [Unit.Kelvin] = "K",
        [Unit.Percent] = "%",
        [Unit.Decibel] = "dB",
        [Unit.DecibelA] = "dB(A)",
        [Unit.DecibelC] = "dB(C)",
        [Unit.DecibelPerKilometre] = "dB/km",
        [Unit.PascalSquaredHour] = "Pa²h",
        [Unit.PartPerMillion] = "ppm",
        [Unit.MilligramPerCubicMetre] = "mg/m³",
        [Unit.MicrogramPerCubicMetre] = "µg/m³",
        [Unit.Person] = "people",
        [Unit.PerMetre] = "1/m",
        [Unit.PersonPerMetreMinute] = "people/(m·min)",
    }.ToFrozenDictionary();

    /// <summary>The symbol of a unit; empty for a pure number.</summary>
    public static string Symbol(this Unit unit) => Symbols[unit];
}
