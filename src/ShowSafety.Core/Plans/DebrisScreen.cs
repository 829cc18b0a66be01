using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>A screen meant to hold pieces of a rotor. Without evidence it holds nothing.</summary>
public sealed record DebrisScreen
{
    /// <summary>Stable id.</summary>
    [Field("stable id", Required = true, MaxLength = 40)]
    public string Id { get; init; } = "";

    /// <summary>Line on the plan.</summary>
    [Field(
        "line on the plan",
        Required = true,
        Points = PointsShape.Line,
        Unit = Unit.Metre,
        Min = -5000,
        Max = 5000,
        MinCount = 2,
        MaxCount = 40
    )]
    public ValueList<PlanPoint> Line { get; init; } = [];

    /// <summary>Height above ground.</summary>
    [Field("height above ground", Unit = Unit.Metre, Min = 0.1, Max = 20, FindOut = FindOut.Tape)]
    public Stated? HeightMetres { get; init; }

    /// <summary>Sheet material.</summary>
    [Field("sheet material")]
    public ScreenMaterial? Material { get; init; }

    /// <summary>Sheet thickness.</summary>
    [Field("sheet thickness", Unit = Unit.Metre, Min = 0.0002, Max = 1, FindOut = FindOut.Tape)]
    public Stated? ThicknessMetres { get; init; }

    /// <summary>Evidence that it holds a piece.</summary>
    [Field("evidence that it holds a piece")]
    public ScreenEvidence? Evidence { get; init; }
}

/// <summary>Materials of debris screens.</summary>
public enum ScreenMaterial
{
    /// <summary>Steel.</summary>
    Steel,

    /// <summary>Aluminium.</summary>
    Aluminium,

    /// <summary>Polycarbonate.</summary>
    Polycarbonate,

    /// <summary>Acrylic.</summary>
    Acrylic,

    /// <summary>Wood.</summary>
    Wood,
}

/// <summary>Evidence that a screen holds a piece: a test, its projectile, its report.</summary>
public sealed record ScreenEvidence
{
    /// <summary>Energy of the projectile that was held.</summary>
    [Field(
        "energy of the projectile that was held",
        Unit = Unit.Joule,
        Min = 0,
        Max = 1000000,
        FindOut = FindOut.Maker
    )]
    public Stated? TestedEnergyJoules { get; init; }

    /// <summary>Mass of the projectile.</summary>
    [Field("mass of the projectile", Unit = Unit.Kilogram, Min = 0.0001, Max = 20, FindOut = FindOut.Maker)]
    public Stated? ProjectileKilograms { get; init; }

    /// <summary>Diameter of the projectile's face.</summary>
    [Field("diameter of the projectile's face", Unit = Unit.Metre, Min = 0.0005, Max = 1, FindOut = FindOut.Maker)]
    public Stated? ProjectileDiameterMetres { get; init; }

    /// <summary>Report.</summary>
    [Field("report: number, laboratory, date", Required = true)]
    public string Reference { get; init; } = "";
}
