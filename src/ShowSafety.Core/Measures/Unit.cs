namespace ShowSafety.Core.Measures;

/// <summary>Units of values in plans, assessments and worked sums. SI inside; the symbol is what people read.</summary>
public enum Unit
{
    /// <summary>A pure number.</summary>
    One,

    /// <summary>Metre.</summary>
    Metre,

    /// <summary>Millimetre.</summary>
    Millimetre,

    /// <summary>Square metre.</summary>
    SquareMetre,

    /// <summary>Square centimetre.</summary>
    SquareCentimetre,

    /// <summary>Cubic metre.</summary>
    CubicMetre,

    /// <summary>Litre.</summary>
    Litre,

    /// <summary>Second.</summary>
    Second,

    /// <summary>Minute.</summary>
    Minute,

    /// <summary>Hour.</summary>
    Hour,

    /// <summary>Degree of angle.</summary>
    Degree,

    /// <summary>Hertz.</summary>
    Hertz,

    /// <summary>Metre per second.</summary>
    MetrePerSecond,

    /// <summary>Cubic metre per second.</summary>
    CubicMetrePerSecond,

    /// <summary>Revolution per minute.</summary>
    RevolutionPerMinute,

    /// <summary>Kilogram.</summary>
    Kilogram,

    /// <summary>Gram.</summary>
    Gram,

    /// <summary>Kilogram per second.</summary>
    KilogramPerSecond,

    /// <summary>Kilogram per square metre.</summary>
    KilogramPerSquareMetre,

    /// <summary>Kilogram per cubic metre.</summary>
    KilogramPerCubicMetre,

    /// <summary>Gram of product per kilogram of fuel.</summary>
    GramPerKilogram,

    /// <summary>Newton.</summary>
    Newton,

    /// <summary>Newton metre.</summary>
    NewtonMetre,

    /// <summary>Pascal.</summary>
    Pascal,

    /// <summary>Kilopascal.</summary>
    Kilopascal,

    /// <summary>Joule.</summary>
    Joule,

    /// <summary>Joule per square metre.</summary>
    JoulePerSquareMetre,

    /// <summary>Joule per square centimetre.</summary>
    JoulePerSquareCentimetre,

    /// <summary>Watt.</summary>
    Watt,

    /// <summary>Kilowatt.</summary>
    Kilowatt,

    /// <summary>Watt per kelvin.</summary>
    WattPerKelvin,

    /// <summary>Kilowatt per square metre.</summary>
    KilowattPerSquareMetre,

    /// <summary>Megajoule per kilogram.</summary>
    MegajoulePerKilogram,

    /// <summary>Degree Celsius.</summary>
    Celsius,

    /// <summary>Kelvin, as a temperature or a temperature difference.</summary>
    Kelvin,

    /// <summary>Per cent.</summary>
    Percent,

    /// <summary>Decibel, of a level difference, an attenuation or an unweighted level.</summary>
    Decibel,

    /// <summary>A-weighted level in decibels.</summary>
    DecibelA,

    /// <summary>C-weighted level in decibels.</summary>
    DecibelC,

    /// <summary>Attenuation of air in decibels per kilometre.</summary>
    DecibelPerKilometre,

    /// <summary>Sound exposure.</summary>
    PascalSquaredHour,

    /// <summary>Parts per million by volume.</summary>
    PartPerMillion,

    /// <summary>Milligram per cubic metre.</summary>
    MilligramPerCubicMetre,

    /// <summary>Microgram per cubic metre.</summary>
    MicrogramPerCubicMetre,

    /// <summary>People.</summary>
    Person,

    /// <summary>Per metre.</summary>
    PerMetre,

    /// <summary>Persons per metre of exit width and minute.</summary>
    PersonPerMetreMinute,
}
