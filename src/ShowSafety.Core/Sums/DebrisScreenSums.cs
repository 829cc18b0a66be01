using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Sums.DebrisSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of screens: where a test may start, never an acceptance.</summary>
internal static class DebrisScreenSums
{
    private static readonly ValueList<(string Word, ScreenMaterial Material)> Sheets =
    [
        ("steel", ScreenMaterial.Steel),
        ("aluminium", ScreenMaterial.Aluminium),
        ("polycarbonate", ScreenMaterial.Polycarbonate),
    ];

    public static ValueList<WorkedSum> All { get; } =
    [
        new("piece-energy", "energy of a piece at a speed", [Mass, Speed], [DebrisSources.GuardTest], PieceEnergy),
        new(
            "guard-class",
            "energy of the test of a class of machine guards",
            [new("guardClass", "class", Unit.One) { Words = [.. GuardClass.All.Select(c => c.Name)] }],
            [DebrisSources.GuardClasses],
            Class
        ),
        new(
            "screen-starting-thickness",
            "starting thickness of a screen for a test, not an acceptance",
            [Energy, Diameter, new("material", "sheet material", Unit.One) { Words = [.. Sheets.Select(s => s.Word)] }],
            [DebrisSources.GuardTest, DebrisSources.GuardMaterials, DebrisSources.ChoiceScreen],
            Starting
        ),
        new(
            "steel-plate",
            "steel plate just perforated by a piece, and the usual design thickness: for a test, not an acceptance",
            [Energy, Diameter],
            [DebrisSources.SteelPlate],
            Plate
        ),
        new(
            "steel-plate-energy",
            "energy that just perforates a steel plate",
            [Positive("thicknessMetres", "thickness of the plate", Unit.Metre, 1e-6, 1), Diameter],
            [DebrisSources.SteelPlate],
            PlateEnergy
        ),
        new(
            "residual-speed",
            "speed of a piece behind a sheet it perforates",
            [
                Mass,
                Standard("plugKilograms", "mass of the plug pushed out, 0 for a sharp piece", Unit.Kilogram, 0, 100, 0),
                Speed,
                Positive("limitMetresPerSecond", "speed the sheet just holds", Unit.MetrePerSecond, 0, 1e4),
            ],
            [DebrisSources.RechtIpson],
            Left
        ),
        new(
            "residual-speed-general",
            "speed behind a perforated sheet, general form",
            [
                Standard("factor", "factor a", Unit.One, 0.001, 1, 1),
                Standard("exponent", "exponent p", Unit.One, 0.5, 20, 2),
                Speed,
                Positive("limitMetresPerSecond", "speed the sheet just holds", Unit.MetrePerSecond, 0, 1e4),
            ],
            [DebrisSources.RechtIpson],
            LeftGeneral
        ),
        new(
            "plug-mass",
            "mass of the plug a blunt piece pushes out of a sheet",
            [
                Standard(
                    "densityKilogramsPerCubicMetre",
                    "density of the sheet",
                    Unit.KilogramPerCubicMetre,
                    100,
                    30000,
                    7850
                ),
                Diameter,
                Positive("thicknessMetres", "thickness of the sheet", Unit.Metre, 1e-6, 1),
            ],
            [DebrisSources.RechtIpson],
            Plug
        ),
    ];

    private static SumAnswer PieceEnergy(SumInput i)
    {
        double energy = FlatFire.Energy(i.Number("massKilograms"), i.Number("speedMetresPerSecond"));
        return new(
            [new("energyJoules", energy, Unit.Joule, "energy")],
            [
                Line(
                    $"E = ½ × {i.Number("massKilograms")} kg × ({i.Number("speedMetresPerSecond")} m/s)² = {energy:0.###} J"
                ),
            ]
        );
    }

    private static SumAnswer Class(SumInput i)
    {
        GuardClass found = GuardClass.All.First(c => c.Name == i.Word("guardClass"));
        return new(
            [
                new("energyJoules", found.EnergyJoules, Unit.Joule, "energy of the test"),
                new("projectileKilograms", found.ProjectileKilograms, Unit.Kilogram, "mass of the projectile"),
                new("speedMetresPerSecond", found.SpeedMetresPerSecond, Unit.MetrePerSecond, "impact speed"),
            ],
            [
                Line(
                    $"E = ½ × {found.ProjectileKilograms} kg × ({found.SpeedMetresPerSecond} m/s)² = {found.EnergyJoules:0} J"
                ),
            ]
        );
    }

    private static SumAnswer Starting(SumInput i)
    {
        ScreenMaterial material = Sheets.First(s => s.Word == i.Word("material")).Material;
        double energy = i.Number("energyJoules");
        double diameter = i.Number("diameterMetres");
        double tested = GuardTests.TestedThicknessMetres(material) ?? 0;
        double thickness = GuardTests.StartingThickness(material, energy, diameter) ?? 0;
        double ratio = energy / GuardTests.EnergyJoules;
        return new(
            [
                new("thicknessMillimetres", thickness * 1000, Unit.Millimetre, "thickness to start a test with"),
                new("linearMillimetres", tested * ratio * 1000, Unit.Millimetre, "by energy alone, in proportion"),
                new(
                    "twoThirdsMillimetres",
                    tested * Math.Pow(ratio, 2.0 / 3) * 1000,
                    Unit.Millimetre,
                    "by energy alone, two-thirds power"
                ),
            ],
            [
                Line($"tested: {tested * 1000} mm held {GuardTests.EnergyJoules:0.##} J, face 20 mm"),
                Line($"E/E₀ = {ratio:0.####}; (E/E₀)^(2/3) D₀/D = {Math.Pow(ratio, 2.0 / 3) * 0.02 / diameter:0.####}"),
                Line(
                    $"t = {tested * 1000} mm × the larger = {thickness * 1000:0.##} mm: a start for a test, not an acceptance"
                ),
            ]
        );
    }

    private static SumAnswer Plate(SumInput i)
    {
        double thickness = SteelPlate.PerforationThickness(i.Number("energyJoules"), i.Number("diameterMetres"));
        return new(
            [
                new("thicknessMillimetres", thickness * 1000, Unit.Millimetre, "thickness just perforated"),
                new(
                    "designMillimetres",
                    thickness * SteelPlate.DesignFactor * 1000,
                    Unit.Millimetre,
                    "1.25 times that"
                ),
                new("thicknessInches", thickness / 0.0254, Unit.One, "thickness just perforated in inches"),
            ],
            [
                "T = E^(2/3)/(672 D), E in ft·lb, T and D in inches",
                Line($"T = {thickness * 1000:0.###} mm; × 1.25 = {thickness * 1250:0.###} mm"),
            ]
        );
    }

    private static SumAnswer PlateEnergy(SumInput i)
    {
        double energy = SteelPlate.PerforationEnergy(i.Number("thicknessMetres"), i.Number("diameterMetres"));
        return new(
            [new("energyJoules", energy, Unit.Joule, "energy that just perforates")],
            [Line($"E = (672 D T)^1.5 ft·lb, D and T in inches = {energy:0.##} J")]
        );
    }

    private static SumAnswer Left(SumInput i)
    {
        double mass = i.Number("massKilograms");
        double plug = i.Number("plugKilograms");
        double speed = i.Number("speedMetresPerSecond");
        double left = Residual.Speed(mass, plug, speed, i.Number("limitMetresPerSecond"));
        double absorbed = FlatFire.Energy(mass, speed) - (left > 0 ? FlatFire.Energy(mass, left) : 0);
        return new(
            [
                new("residualMetresPerSecond", left, Unit.MetrePerSecond, "speed left"),
                new("absorbedJoules", absorbed, Unit.Joule, "energy the piece loses"),
            ],
            [Line($"v_r = m/(m + m_p) √(v² − v50²) = {left:0.###} m/s; the piece loses {absorbed:0.#} J")]
        );
    }

    private static SumAnswer LeftGeneral(SumInput i)
    {
        double left = Residual.General(
            i.Number("factor"),
            i.Number("exponent"),
            i.Number("speedMetresPerSecond"),
            i.Number("limitMetresPerSecond")
        );
        return new(
            [new("residualMetresPerSecond", left, Unit.MetrePerSecond, "speed left")],
            [Line($"v_r = a (v^p − v50^p)^(1/p) = {left:0.###} m/s")]
        );
    }

    private static SumAnswer Plug(SumInput i)
    {
        double mass = Residual.Plug(
            i.Number("densityKilogramsPerCubicMetre"),
            i.Number("diameterMetres"),
            i.Number("thicknessMetres")
        );
        return new(
            [new("plugKilograms", mass, Unit.Kilogram, "mass of the plug")],
            [Line($"m_p = ρ π D² t/4 = {mass * 1000:0.###} g")]
        );
    }
}
