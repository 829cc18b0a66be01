using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>A rotor with every number its burst needs, on the cautious side where the sheet is silent.</summary>
internal sealed record RotorCase
{
    public required string Id { get; init; }
    public required double SpeedRevolutionsPerMinute { get; init; }
    public required double TipRadiusMetres { get; init; }

    /// <summary>Radius of the rim; the tip's where nobody states one: an intermediate piece leaves no faster.</summary>
    public required double RimRadiusMetres { get; init; }
    public required bool RimKnown { get; init; }
    public required double BoreRadiusMetres { get; init; }
    public required double MassKilograms { get; init; }
    public required double DensityKilogramsPerCubicMetre { get; init; }

    /// <summary>Thickness as stated, or as mass and density give it.</summary>
    public required double BestThicknessMetres { get; init; }

    /// <summary>The thinner of what is stated and what mass and density give: less drag and a sharper edge.</summary>
    public required double PlanningThicknessMetres { get; init; }

    /// <summary>Disc without blades in kg, where rim, thickness and material tell it.</summary>
    public double? DiscKilograms { get; init; }
    public int? BladeCount { get; init; }

    /// <summary>Whether it stands in for an unknown rotor; then the blades may be all of its mass.</summary>
    public bool Bounding { get; init; }

    /// <summary>Distances from the nozzle's exit towards the intake between which the plane lies, in m.</summary>
    public required double NearestPlaneMetres { get; init; }
    public required double FarthestPlaneMetres { get; init; }
    public required Pedigree Pedigree { get; init; }

    /// <summary>The flat disc out to the blade tips.</summary>
    public Wheel PlainWheel => Wheel.Disc(MassKilograms, TipRadiusMetres, BoreRadiusMetres);

    /// <summary>Disc and blade ring where the sheet tells them apart, else the flat disc.</summary>
    public Wheel BestWheel =>
        DiscKilograms is { } disc && disc < MassKilograms
            ? Wheel.Disc(disc, RimRadiusMetres, BoreRadiusMetres)
                + Wheel.Ring(MassKilograms - disc, (RimRadiusMetres + TipRadiusMetres) / 2)
            : PlainWheel;

    /// <summary>The one whose pieces leave faster.</summary>
    public Wheel PlanningWheel => BestWheel.MeanRadiusMetres > PlainWheel.MeanRadiusMetres ? BestWheel : PlainWheel;

    /// <summary>Heaviest mass of one blade in kg; null where rim or number of blades is not stated.</summary>
    public double? BladeKilograms
    {
        get
        {
            if (Bounding)
            {
                return MassKilograms / BladeCount;
            }

            double tip = TipRadiusMetres * TipRadiusMetres;
            double rim = RimRadiusMetres * RimRadiusMetres;
            double solid = MassKilograms * (tip - rim) / (tip - (BoreRadiusMetres * BoreRadiusMetres));
            double ring = Math.Max(solid, MassKilograms - (DiscKilograms ?? MassKilograms));
            return RimKnown && BladeCount is { } count && rim < tip ? ring / count : null;
        }
    }
}
