using ShowSafety.Core.Citations;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using static ShowSafety.Core.Sums.DebrisSums;

namespace ShowSafety.Core.Sums;

/// <summary>Worked sums of areas and drag coefficients.</summary>
internal static class DebrisShapeSums
{
    public static ValueList<WorkedSum> All { get; } =
    [
        new(
            "tumbling-area-sector",
            "area a sector of a disc shows to the air, tumbling and edge on",
            [
                Positive("radiusMetres", "radius of the disc", Unit.Metre, 1e-5, 10),
                Standard("boreRadiusMetres", "radius of the bore", Unit.Metre, 0, 10, 0),
                Positive("thicknessMetres", "thickness of the disc", Unit.Metre, 1e-6, 10),
                Pieces with
                {
                    Min = 2,
                },
            ],
            [DebrisSources.MeanShadow, DebrisSources.ChoiceDragLow],
            Sector
        ),
        new(
            "tumbling-area-box",
            "mean area a tumbling box shows to the air",
            [
                Positive("lengthMetres", "length", Unit.Metre, 1e-6, 100),
                Positive("widthMetres", "width", Unit.Metre, 1e-6, 100),
                Positive("heightMetres", "height", Unit.Metre, 1e-6, 100),
            ],
            [DebrisSources.MeanShadow],
            Box
        ),
        new(
            "compact-piece",
            "a small piece taken as a cube of its mass",
            [Mass, Standard("densityKilogramsPerCubicMetre", "density", Unit.KilogramPerCubicMetre, 100, 30000, 8190)],
            [DebrisSources.MeanShadow, DebrisSources.ChoiceDragLow],
            Cube
        ),
        new(
            "edge-diameter",
            "diameter of the circle as large as a rectangular striking face",
            [
                Positive("widthMetres", "width of the face", Unit.Metre, 1e-6, 10),
                Positive("heightMetres", "height of the face", Unit.Metre, 1e-6, 10),
            ],
            [DebrisSources.ChoiceScreen],
            Edge
        ),
        new(
            "drag-coefficient-at-mach",
            "drag coefficient of a tumbling piece near the speed of sound, for information",
            [Positive("mach", "Mach number", Unit.One, 0, 20)],
            [DebrisSources.DragValues],
            AtMach
        ),
        new(
            "drag-per-metre",
            "share of its speed a piece loses per metre",
            [
                Mass,
                Positive("areaSquareMetres", "area shown to the air", Unit.SquareMetre, 1e-9, 100),
                Standard("dragCoefficient", "drag coefficient", Unit.One, 0.01, 10, Drag.Tumbling),
                Standard("temperatureCelsius", "air temperature", Unit.Celsius, -60, 80, 15),
                Standard("pressureKilopascals", "air pressure", Unit.Kilopascal, 30, 120, 101.325),
            ],
            [DebrisSources.QuadraticDrag, DebrisSources.StandardAir],
            PerMetre
        ),
        new(
            "wind-at-height",
            "wind at a height above open ground",
            [
                Positive("windMetresPerSecond", "wind at head height", Unit.MetrePerSecond, 0, 100),
                Positive("heightMetres", "height", Unit.Metre, 0, 5000),
            ],
            [DebrisSources.WindProfile],
            Wind
        ),
    ];

    private static SumAnswer Sector(SumInput i)
    {
        int n = (int)Math.Round(i.Number("pieces"));
        PieceShape shape = PieceShape.Sector(
            i.Number("radiusMetres"),
            i.Number("boreRadiusMetres"),
            i.Number("thicknessMetres"),
            n
        );
        return Shape(
            shape,
            Line($"A = S/4 of a sector of {360.0 / n:0.##}° = {shape.TumblingAreaSquareMetres * 1e4:0.####} cm²")
        );
    }

    private static SumAnswer Cube(SumInput i)
    {
        PieceShape shape = PieceShape.Cube(i.Number("massKilograms"), i.Number("densityKilogramsPerCubicMetre"));
        double side = Math.Sqrt(shape.LeastAreaSquareMetres);
        return Shape(shape, Line($"a = (m/ρ)^(1/3) = {side * 1000:0.###} mm; A = 1.5 a²"));
    }

    private static SumAnswer Shape(PieceShape shape, string step) =>
        new(
            [
                new(
                    "tumblingSquareCentimetres",
                    shape.TumblingAreaSquareMetres * 1e4,
                    Unit.SquareCentimetre,
                    "mean area, tumbling"
                ),
                new(
                    "leastSquareCentimetres",
                    shape.LeastAreaSquareMetres * 1e4,
                    Unit.SquareCentimetre,
                    "mean area in the attitude with the least drag"
                ),
                new(
                    "edgeDiameterMillimetres",
                    shape.EdgeDiameterMetres * 1000,
                    Unit.Millimetre,
                    "diameter of the smallest striking face"
                ),
            ],
            [
                step,
                Line($"least drag: {shape.LeastAreaSquareMetres * 1e4:0.####} cm²"),
                Line($"smallest face as a circle: {shape.EdgeDiameterMetres * 1000:0.##} mm"),
            ]
        );

    private static SumAnswer Box(SumInput i)
    {
        double area = PieceShape.TumblingAreaOfBox(
            i.Number("lengthMetres"),
            i.Number("widthMetres"),
            i.Number("heightMetres")
        );
        return new(
            [new("tumblingSquareMetres", area, Unit.SquareMetre, "mean area, tumbling")],
            [Line($"A = S/4 = (ab + bc + ca)/2 = {area:0.######} m²")]
        );
    }

    private static SumAnswer Edge(SumInput i)
    {
        double area = i.Number("widthMetres") * i.Number("heightMetres");
        double diameter = PieceShape.DiameterOfArea(area);
        return new(
            [new("diameterMetres", diameter, Unit.Metre, "diameter")],
            [Line($"D = √(4 × {area} m²/π) = {diameter * 1000:0.##} mm")]
        );
    }

    private static SumAnswer AtMach(SumInput i)
    {
        double coefficient = Drag.CoefficientAtMach(i.Number("mach"));
        return new(
            [new("dragCoefficient", coefficient, Unit.One, "drag coefficient")],
            [Line($"C_d({i.Number("mach")}) = {coefficient:0.####}, straight lines between table values from memory")]
        );
    }

    private static SumAnswer PerMetre(SumInput i)
    {
        double density = Drag.AirDensity(i.Number("temperatureCelsius"), i.Number("pressureKilopascals"));
        double area = i.Number("dragCoefficient") * i.Number("areaSquareMetres");
        double k = Drag.PerMetre(density, area, i.Number("massKilograms"));
        return new(
            [
                new("dragPerMetre", k, Unit.PerMetre, "k"),
                new("airDensityKilogramsPerCubicMetre", density, Unit.KilogramPerCubicMetre, "density of the air"),
            ],
            [Line($"ρ = p/(R T) = {density:0.####} kg/m³"), Line($"k = ρ C_d A/(2 m) = {k:0.#######} 1/m")]
        );
    }

    private static SumAnswer Wind(SumInput i)
    {
        double wind = WindProfile.At(i.Number("windMetresPerSecond"), i.Number("heightMetres"));
        return new(
            [new("windMetresPerSecond", wind, Unit.MetrePerSecond, "wind at the height")],
            [
                Line(
                    $"w = {i.Number("windMetresPerSecond")} m/s × ({i.Number("heightMetres")}/2)^(1/7) = {wind:0.##} m/s above 2 m"
                ),
            ]
        );
    }
}
