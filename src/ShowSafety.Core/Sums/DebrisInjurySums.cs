using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.DebrisSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of injury criteria.</summary>
internal static class DebrisInjurySums
{
    private static readonly ValueList<(string Word, EyeInjury Injury)> Eyes =
    [
        ("globe-rupture", EyeInjury.GlobeRupture),
        ("corneal-abrasion", EyeInjury.CornealAbrasion),
        ("lens-dislocation", EyeInjury.LensDislocation),
        ("hyphema", EyeInjury.Hyphema),
        ("retinal-damage", EyeInjury.RetinalDamage),
    ];

    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "energy-lines",
            "published energies above which a piece counts as able to hurt",
            [],
            [DebrisSources.AbleToInjure, DebrisSources.SevereInjury, DebrisSources.ExplosiveSafety],
            _ => Lines()
        ),
        new(
            "hit-chance",
            "chance that a person is struck where pieces fall at a density",
            [
                Positive("piecesPerSquareMetre", "pieces on a square metre", Unit.One, 0, 1e6),
                Standard(
                    "personSquareMetres",
                    "area of a person",
                    Unit.SquareMetre,
                    0.01,
                    10,
                    InjuryEnergy.PersonAreaSquareMetres
                ),
            ],
            [DebrisSources.FragmentLength, DebrisSources.ExplosiveSafety],
            Hit
        ),
        new(
            "skin-sperrazza",
            "speed at which half of small pieces go through skin",
            [Mass, Positive("areaSquareMetres", "area of the piece", Unit.SquareMetre, 1e-9, 1)],
            [DebrisSources.SkinSperrazza],
            Sperrazza
        ),
        new(
            "skin-lewis",
            "chance that a small piece goes through bare skin",
            [Mass, Speed, Positive("areaSquareMetres", "area of the piece", Unit.SquareMetre, 1e-9, 1)],
            [DebrisSources.SkinLewis],
            Lewis
        ),
        new(
            "blunt-criterion",
            "blunt blow to the chest",
            [
                Energy,
                Standard("bodyKilograms", "mass of the person", Unit.Kilogram, 5, 300, 70),
                Standard("wallFactor", "chest wall in cm/kg^(1/3): 0.711 men, 0.593 women", Unit.One, 0.1, 2, 0.593),
                Diameter,
            ],
            [DebrisSources.Blunt],
            Blunt
        ),
        new(
            "eye-half-risk-speed",
            "speed at which a small piece has a 50 % risk of an eye injury",
            [Mass, Diameter, new("injury", "eye injury", Unit.One) { Words = [.. Eyes.Select(e => e.Word)] }],
            [DebrisSources.Eye],
            Eye
        ),
        new(
            "energy-per-area",
            "energy of a piece over the area of its round face",
            [Mass, Speed, Diameter],
            [DebrisSources.SkinMeasured, DebrisSources.Eye],
            PerArea
        ),
    ];

    private static SumAnswer Lines() =>
        new(
            [
                new("ableToInjureJoules", InjuryEnergy.AbleToInjureJoules, Unit.Joule, "11 ft·lb, able to injure"),
                new("severeJoules", InjuryEnergy.SevereJoules, Unit.Joule, "25 ft·lb, severe injury"),
                new(
                    "hazardousFragmentJoules",
                    InjuryEnergy.HazardousFragmentJoules,
                    Unit.Joule,
                    "58 ft·lb, hazardous fragment"
                ),
                new(
                    "areaPerPieceSquareMetres",
                    InjuryEnergy.AreaPerHazardousPieceSquareMetres,
                    Unit.SquareMetre,
                    "600 ft², area for one hazardous piece"
                ),
            ],
            [
                Line($"1 ft·lb = {InjuryEnergy.JoulesPerFootPound:0.#######} J"),
                Line($"1 ft² = {InjuryEnergy.SquareMetresPerSquareFoot} m²"),
            ]
        );

    private static SumAnswer Hit(SumInput i)
    {
        double q = i.Number("piecesPerSquareMetre");
        double area = i.Number("personSquareMetres");
        double chance = InjuryEnergy.HitChance(q, area);
        return new(
            [new("chance", chance, Unit.One, "chance of a hit, given the pieces fall")],
            [Line($"p = 1 − e^(−{q:0.######} × {area}) = {chance:0.######}")]
        );
    }

    private static SumAnswer Sperrazza(SumInput i)
    {
        double mass = i.Number("massKilograms");
        double ratio = i.Number("areaSquareMetres") / mass;
        double speed = SkinCriteria.SperrazzaSpeed(ratio);
        return new(
            [
                new("speedMetresPerSecond", speed, Unit.MetrePerSecond, "V50"),
                new("energyJoules", FlatFire.Energy(mass, speed), Unit.Joule, "energy at V50"),
            ],
            [Line($"V50 = 1247.1 × {ratio:0.######} m²/kg + 22.03 = {speed:0.##} m/s; for pieces to about 15 g")]
        );
    }

    private static SumAnswer Lewis(SumInput i)
    {
        double mass = i.Number("massKilograms");
        double area = i.Number("areaSquareMetres");
        double chance = SkinCriteria.LewisChance(mass, i.Number("speedMetresPerSecond"), area);
        double half = SkinCriteria.LewisHalfEnergyPerArea();
        return new(
            [
                new("chance", chance, Unit.One, "chance of going through"),
                new(
                    "halfJoulesPerSquareCentimetre",
                    half / 1e4,
                    Unit.JoulePerSquareCentimetre,
                    "energy per area for one half"
                ),
                new(
                    "halfMetresPerSecond",
                    Math.Sqrt(2 * half * area / mass),
                    Unit.MetrePerSecond,
                    "speed for one half"
                ),
            ],
            [Line($"P = 1/(1 + e^(28.42 − 2.94 ln(M V²/A))) = {chance:0.####}")]
        );
    }

    private static SumAnswer Blunt(SumInput i)
    {
        double criterion = SkinCriteria.BluntCriterion(
            i.Number("energyJoules"),
            i.Number("bodyKilograms"),
            i.Number("wallFactor"),
            i.Number("diameterMetres")
        );
        return new(
            [new("bluntCriterion", criterion, Unit.One, "blunt criterion")],
            [
                Line(
                    $"BC = ln(E/(W^(1/3) T D)) = {criterion:0.###}; about 0.37 for a 50 % chance of a serious chest injury"
                ),
            ]
        );
    }

    private static SumAnswer Eye(SumInput i)
    {
        EyeInjury injury = Eyes.First(e => e.Word == i.Word("injury")).Injury;
        double mass = i.Number("massKilograms");
        double speed = EyeCriteria.HalfRiskSpeed(injury, mass, i.Number("diameterMetres"));
        double limit = EyeCriteria.HalfRiskEnergyPerArea(injury);
        return new(
            [
                new("speedMetresPerSecond", speed, Unit.MetrePerSecond, "speed with a 50 % risk"),
                new("energyJoules", FlatFire.Energy(mass, speed), Unit.Joule, "energy at that speed"),
                new(
                    "energyPerAreaJoulesPerSquareMetre",
                    limit,
                    Unit.JoulePerSquareMetre,
                    "energy per area with a 50 % risk"
                ),
            ],
            [Line($"v = √(2 × {limit} J/m² × π D²/4/m) = {speed:0.###} m/s")]
        );
    }

    private static SumAnswer PerArea(SumInput i)
    {
        double mass = i.Number("massKilograms");
        double speed = i.Number("speedMetresPerSecond");
        double diameter = i.Number("diameterMetres");
        double value = EyeCriteria.EnergyPerArea(mass, speed, Math.PI * diameter * diameter / 4);
        return new(
            [
                new("joulesPerSquareMetre", value, Unit.JoulePerSquareMetre, "energy per area"),
                new("joulesPerSquareCentimetre", value / 1e4, Unit.JoulePerSquareCentimetre, "energy per area"),
                new(
                    "kilogramForceMetresPerSquareCentimetre",
                    value / 1e4 / VerticalShot.StandardGravity,
                    Unit.One,
                    "energy per area in m·kgf/cm², as older papers print it"
                ),
                new("energyJoules", FlatFire.Energy(mass, speed), Unit.Joule, "energy"),
            ],
            [Line($"E/A = ½ m v²/(π D²/4) = {value:0} J/m² = {value / 1e4:0.###} J/cm²")]
        );
    }
}
