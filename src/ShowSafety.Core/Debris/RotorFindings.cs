using ShowSafety.Core.Citations;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>Findings about one rotor of one engine.</summary>
internal sealed class RotorFindings(Engine engine, Rotor rotor, List<Finding> findings)
{
    public void MissingUnless(object? value, string code, string member, EngineSheet? ofSheet = null)
    {
        if (value is null)
        {
            string type = ofSheet is null ? nameof(Rotor) : nameof(EngineSheet);
            Add(new(code, Severity.Stop) { CannotTell = true, Field = $"{type}.{member}" });
        }
    }

    public void Odd(string code, string member, Severity severity) =>
        Add(new(code, severity) { CannotTell = severity == Severity.Stop, Field = $"{nameof(Rotor)}.{member}" });

    public void TripAssumed(Stated trip) =>
        Add(
            new("debris.trip-speed-assumed", Severity.Act)
            {
                Field = $"{nameof(Rotor)}.{nameof(Rotor.TripSpeedRevolutionsPerMinute)}",
                Citations = [DebrisSources.ChoiceTrip],
            },
            FindingArgument.Of("speed", Speed(trip))
        );

    public void TripBelowRunning(Stated trip, Stated running) =>
        Add(
            new("debris.trip-below-running-speed", Severity.Act)
            {
                Field = $"{nameof(Rotor)}.{nameof(Rotor.TripSpeedRevolutionsPerMinute)}",
            },
            FindingArgument.Of("trip", Speed(trip)),
            FindingArgument.Of("running", Speed(running))
        );

    public void SheetDensity(double implied, double material) =>
        Add(
            new("debris.sheet-density", Severity.Act)
            {
                Field = $"{nameof(Rotor)}.{nameof(Rotor.BladedMassKilograms)}",
                Citations = [DebrisSources.Densities],
            },
            FindingArgument.Of("implied", Density(implied)),
            FindingArgument.Of("material", Density(material))
        );

    public void LargerThanCasing(double radius, double casing) =>
        Add(
            new("debris.wheel-larger-than-casing", Severity.Act)
            {
                Field = $"{nameof(Rotor)}.{nameof(Rotor.TipRadiusMetres)}",
            },
            FindingArgument.Of("wheel", Quantity.Plain(2000 * radius, Unit.Millimetre)),
            FindingArgument.Of("casing", Quantity.Plain(1000 * casing, Unit.Millimetre))
        );

    public void BladesUnknown() =>
        Add(
            new("debris.blades-unknown", Severity.Act)
            {
                CannotTell = true,
                Field = rotor.BladeCount is null
                    ? $"{nameof(Rotor)}.{nameof(Rotor.BladeCount)}"
                    : $"{nameof(Rotor)}.{nameof(Rotor.RimRadiusMetres)}",
                Citations = [DebrisSources.AirworthinessModel],
            }
        );

    public void Bounding(RotorCase bounding) =>
        Add(
            new("debris.bounding-rotor", Severity.Note) { Citations = [DebrisSources.ChoiceBounding] },
            FindingArgument.Of("diameter", Quantity.Plain(2000 * bounding.TipRadiusMetres, Unit.Millimetre)),
            FindingArgument.Of("mass", Quantity.Plain(1000 * bounding.MassKilograms, Unit.Gram)),
            FindingArgument.Of(
                "speed",
                Quantity.Plain(
                    Burst.SpeedAtRadius(bounding.SpeedRevolutionsPerMinute, bounding.TipRadiusMetres),
                    Unit.MetrePerSecond
                )
            )
        );

    private void Add(Finding finding, params IReadOnlyList<FindingArgument> arguments) =>
        findings.Add(
            finding with
            {
                ElementId = engine.Id,
                Place = engine.Place,
                Row = ZoneRow.DirectFlight,
                Arguments = [FindingArgument.Of("rotor", rotor.Id), .. arguments],
            }
        );

    private static Quantity Speed(Stated stated) =>
        Quantity.Plain(stated.Value, Unit.RevolutionPerMinute) with
        {
            Pedigree = stated.Pedigree,
        };

    private static Quantity Density(double value) => Quantity.Plain(value, Unit.KilogramPerCubicMetre);
}
