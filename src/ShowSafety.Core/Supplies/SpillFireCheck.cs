using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Supplies;

/// <summary>The fire of the largest spill at one engine: how far it burns people, and what can put it out.</summary>
/// <param name="Figures">Area, heat release, flame height, distance.</param>
/// <param name="Zones">The area that radiation reaches.</param>
/// <param name="Findings">What is missing or too little.</param>
internal sealed record SpillFireCheck(ValueList<Figure> Figures, ValueList<Zone> Zones, ValueList<Finding> Findings)
{
    /// <summary>What is missing for every engine at once.</summary>
    public static IEnumerable<Finding> PlanFindings(Plan plan) =>
        plan.Engines.Count > 0 && plan.Supplies?.SpillLitres.NotNegative() is null
            ?
            [
                CannotTell.Without(
                    typeof(SupplyList),
                    "supplies.spill-amount-missing",
                    Severity.Act,
                    nameof(SupplyList.SpillLitres),
                    row: ZoneRow.SpillFire
                ),
            ]
            : [];

    /// <summary>Judges the spill at one engine.</summary>
    public static SpillFireCheck Of(Plan plan, Engine engine)
    {
        if (engine.Sheet?.Fuel is not { } fuel)
        {
            return new([], [], [Unknown("supplies.spill-fuel-missing", engine)]);
        }

        ValueList<PoolFuel> rows = PoolFuel.RowsFor(fuel);
        if (rows.Count == 0)
        {
            return new([], [], [Unknown("supplies.spill-gas-not-calculated", engine)]);
        }

        return plan.Supplies?.SpillLitres.NotNegative() is { } litres
            ? Burning(plan.Supplies, engine, rows, litres)
            : new([], [], []);
    }

    private static SpillFireCheck Burning(SupplyList supplies, Engine engine, ValueList<PoolFuel> rows, double litres)
    {
        double area = Math.Min(
            Spill.AreaSquareMetres(litres),
            supplies.SpillTraySquareMetres.Positive() ?? double.MaxValue
        );
        Pedigree pedigree = StatedNumbers.Weakest(supplies.SpillLitres, supplies.SpillTraySquareMetres);
        var fire = SpillFire.Of(rows, area, pedigree);
        return new(
            [
                new("supplies.spill-area", engine.Id, fire.Area),
                new("supplies.spill-heat-release", engine.Id, fire.HeatRelease),
                new("supplies.spill-flame-height", engine.Id, fire.FlameHeight),
                new("supplies.spill-radiation-distance", engine.Id, fire.RadiationDistance),
            ],
            [Zone(engine, fire)],
            [.. Rating(supplies, engine, fire)]
        );
    }

    // The pool may run to any side of the engine, so half of it is added to the distance from its middle.
    private static Zone Zone(Engine engine, SpillFire fire)
    {
        Quantity distance = fire.RadiationDistance;
        double half = PoolFire.DiameterMetres(fire.Area.Planning) / 2;
        Quantity boundary = Quantity.CautiousHigh(
            PoolFire.ContinuousExposureKilowattsPerSquareMetre,
            PoolFire.ContinuousExposureKilowattsPerSquareMetre,
            Unit.KilowattPerSquareMetre
        ) with
        {
            Citations = [SiteSources.SuppliesRadiation],
        };
        return new(
            ZoneRow.SpillFire,
            engine.Id,
            ZoneEffect.Informs,
            Audience.Everyone,
            Phases.Fuelling | Phases.Start | Phases.Running,
            ZoneFrame.Engine,
            SiteGeometry.CircleAround(engine.Place, distance.Planning + half)
        )
        {
            Boundary = boundary,
            Reach = distance,
            Citations = [SiteSources.SuppliesRadiation, SiteSources.SuppliesPoolFire, SiteSources.SuppliesPointSource],
        };
    }

    private static IEnumerable<Finding> Rating(SupplyList supplies, Engine engine, SpillFire fire)
    {
        int? best = ExtinguisherCheck.WithinReach(engine, supplies.Extinguishers).Max(e => FireRating.ClassB(e.Rating));
        if (best is null)
        {
            yield return CannotTell.Without(
                typeof(Extinguisher),
                "supplies.spill-rating-missing",
                Severity.Act,
                nameof(Extinguisher.Rating),
                engine.Id,
                ZoneRow.SpillFire
            );
        }
        else if (FireRating.TraySquareMetres(best.Value) < fire.Area.Planning)
        {
            double tray = FireRating.TraySquareMetres(best.Value);
            yield return new("supplies.spill-beyond-rating", Severity.Act)
            {
                ElementId = engine.Id,
                Place = engine.Place,
                Row = ZoneRow.SpillFire,
                Arguments =
                [
                    FindingArgument.Of("area", fire.Area),
                    FindingArgument.Of("rated", Quantity.CautiousLow(tray, tray, Unit.SquareMetre)),
                ],
                Citations = [SiteSources.SuppliesRating],
            };
        }
    }

    private static Finding Unknown(string code, Engine engine) =>
        CannotTell.Without(
            typeof(EngineSheet),
            code,
            Severity.Act,
            nameof(EngineSheet.Fuel),
            engine.Id,
            ZoneRow.SpillFire
        );
}
