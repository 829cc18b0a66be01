using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Debris;

/// <summary>Values of a piece as quantities, with pedigree, sources and the sum that shows each.</summary>
internal readonly record struct PieceQuantities(PieceKind Kind, Pedigree Flight, Pedigree Wheel)
{
    private static readonly ValueList<string> BurstSources =
    [
        DebrisSources.BurstMechanics,
        DebrisSources.AirworthinessModel,
        DebrisSources.ThreePieces,
    ];

    private static readonly ValueList<string> ShapeSources = [DebrisSources.MeanShadow, DebrisSources.ChoiceDragLow];

    public Quantity Rotor(double best, double planning, Unit unit) =>
        Quantity.CautiousHigh(best, Math.Max(best, planning), unit) with
        {
            Pedigree = Wheel,
            Citations = BurstSources,
            Sum = Kind switch
            {
                PieceKind.Intermediate => "ac-20-128a-pieces",
                PieceKind.Blade => "speed-at-radius",
                _ => "disc-burst",
            },
        };

    public Quantity Low(double best, double planning, Unit unit) =>
        Quantity.CautiousLow(best, Math.Min(best, planning), unit) with
        {
            Pedigree = Wheel,
            Citations = ShapeSources,
            Sum = Kind is PieceKind.Intermediate or PieceKind.Blade ? "compact-piece" : "tumbling-area-sector",
        };

    public Quantity PerArea(double bestJoules, double planningJoules, double edgeDiameterMetres)
    {
        double area = Math.PI * edgeDiameterMetres * edgeDiameterMetres / 4;
        return Quantity.CautiousHigh(
            bestJoules / area,
            Math.Max(bestJoules, planningJoules) / area,
            Unit.JoulePerSquareMetre
        ) with
        {
            Pedigree = Wheel,
            Citations = [DebrisSources.BurstMechanics, DebrisSources.Eye],
            Sum = "energy-per-area",
        };
    }

    public Quantity Reach(double best, double planning) =>
        Quantity.CautiousHigh(best, Math.Max(best, planning), Unit.Metre) with
        {
            Pedigree = Flight,
            Citations =
            [
                DebrisSources.QuadraticDrag,
                DebrisSources.DragValues,
                DebrisSources.ChoiceDragLow,
                DebrisSources.AbleToInjure,
                DebrisSources.StandardAir,
            ],
            Sum = "flat-fire-distance",
        };

    public Quantity Landing(double best, double planning, Unit unit) =>
        Quantity.CautiousHigh(best, Math.Max(best, planning), unit) with
        {
            Pedigree = Flight,
            Citations =
            [
                DebrisSources.QuadraticDrag,
                DebrisSources.DragValues,
                DebrisSources.ChoiceDragLow,
                DebrisSources.BestRange,
                DebrisSources.WindProfile,
                DebrisSources.StandardAir,
            ],
            Sum = "farthest-landing",
        };
}
