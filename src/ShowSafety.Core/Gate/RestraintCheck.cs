using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Gate;

/// <summary>Whether the bench of one engine neither tips nor slides under twice the highest thrust.</summary>
/// <param name="Figures">Loads and what holds them.</param>
/// <param name="Findings">What does not hold, or cannot be told.</param>
internal sealed record RestraintCheck(ValueList<Figure> Figures, ValueList<Finding> Findings)
{
    /// <summary>Judges one engine.</summary>
    public static RestraintCheck Of(Engine engine)
    {
        Stated? thrust = HighestThrust.Of(engine.Sheet);
        (ValueList<Figure> tipping, ValueList<Finding> tips) = Tipping(engine, thrust);
        (ValueList<Figure> sliding, ValueList<Finding> slides) = Sliding(engine, thrust);
        return new([.. tipping, .. sliding], [.. Unknowns(engine, thrust), .. tips, .. slides, .. Unrated(engine)]);
    }

    private static IEnumerable<Finding> Unknowns(Engine engine, Stated? thrust)
    {
        if (thrust is null)
        {
            yield return Unknown(typeof(ThrottleState), engine, "thrust", nameof(ThrottleState.ThrustNewtons));
        }

        if (engine.Bench?.MassKilograms.Positive() is null)
        {
            yield return Unknown(typeof(Bench), engine, "mass", nameof(Bench.MassKilograms));
        }

        if (engine.Bench?.TippingArmMetres.Positive() is null)
        {
            yield return Unknown(typeof(Bench), engine, "arm", nameof(Bench.TippingArmMetres));
        }

        if (engine.ShaftHeightMetres.Positive() is null)
        {
            yield return Unknown(typeof(Engine), engine, "height", nameof(Engine.ShaftHeightMetres));
        }
    }

    private static (ValueList<Figure> Figures, ValueList<Finding> Findings) Tipping(Engine engine, Stated? thrust)
    {
        Bench? bench = engine.Bench;
        if (
            thrust is null
            || bench?.MassKilograms.Positive() is not { } mass
            || bench.TippingArmMetres.Positive() is not { } arm
            || engine.ShaftHeightMetres.Positive() is not { } height
        )
        {
            return ([], []);
        }

        double anchoring = IsAnchored(bench) ? bench.AnchoringRatedNewtonMetres.NotNegative() ?? 0 : 0;
        double load = Restraint.TippingMomentNewtonMetres(thrust.Value, height);
        double hold = Restraint.HoldingMomentNewtonMetres(mass, arm, anchoring);
        Pedigree pedigree = StatedNumbers.Weakest(
            thrust,
            bench.MassKilograms,
            bench.TippingArmMetres,
            engine.ShaftHeightMetres
        );
        return Verdict(engine, "tips", "bench-tipping", Unit.NewtonMetre, pedigree, load, hold);
    }

    private static (ValueList<Figure> Figures, ValueList<Finding> Findings) Sliding(Engine engine, Stated? thrust)
    {
        Bench? bench = engine.Bench;
        if (thrust is null || bench?.MassKilograms.Positive() is not { } mass)
        {
            return ([], []);
        }

        Stated friction = bench.Friction.Or<Bench>(nameof(Bench.Friction));
        double anchoring = IsAnchored(bench) ? bench.AnchoringRatedNewtons.NotNegative() ?? 0 : 0;
        double hold = Restraint.HoldingForceNewtons(friction.NotNegative() ?? 0, mass, anchoring);
        Pedigree pedigree = StatedNumbers.Weakest(thrust, bench.MassKilograms, friction);
        return Verdict(engine, "slides", "bench-sliding", Unit.Newton, pedigree, thrust.Value, hold);
    }

    private static (ValueList<Figure> Figures, ValueList<Finding> Findings) Verdict(
        Engine engine,
        string what,
        string sum,
        Unit unit,
        Pedigree pedigree,
        double load,
        double hold
    )
    {
        Quantity pushes = Sourced(Quantity.CautiousHigh(load, Restraint.ThrustFactor * load, unit), sum, pedigree);
        Quantity holds = Sourced(Quantity.CautiousLow(hold, hold, unit), sum, pedigree);
        ValueList<Figure> figures =
        [
            new($"gate.bench-{what}-load", engine.Id, pushes),
            new($"gate.bench-{what}-hold", engine.Id, holds),
        ];
        return Restraint.Holds(load, hold)
            ? (figures, [])
            : (
                figures,
                [
                    new($"gate.bench-{what}", Severity.Stop)
                    {
                        ElementId = engine.Id,
                        Place = engine.Place,
                        Arguments = [FindingArgument.Of("load", pushes), FindingArgument.Of("hold", holds)],
                        Citations = [SiteSources.GateRestraint],
                    },
                ]
            );
    }

    private static Quantity Sourced(Quantity quantity, string sum, Pedigree pedigree) =>
        quantity with
        {
            Sum = sum,
            Pedigree = pedigree,
            Citations = [SiteSources.GateRestraint],
        };

    private static IEnumerable<Finding> Unrated(Engine engine)
    {
        if (
            engine.Bench is { } bench
            && IsAnchored(bench)
            && (bench.AnchoringRatedNewtons ?? bench.AnchoringRatedNewtonMetres) is null
        )
        {
            yield return new("gate.anchoring-unrated", Severity.Note)
            {
                ElementId = engine.Id,
                Field = $"{nameof(Bench)}.{nameof(Bench.AnchoringRatedNewtons)}",
            };
        }
    }

    private static bool IsAnchored(Bench bench) =>
        bench.Anchoring is Anchoring.Bolted or Anchoring.Staked or Anchoring.Strapped;

    private static Finding Unknown(Type owner, Engine engine, string what, string member) =>
        CannotTell.Without(owner, $"gate.restraint-unknown-{what}", Severity.Stop, member, engine.Id) with
        {
            Place = engine.Place,
            Citations = [SiteSources.GateRestraint],
        };
}
