using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Gate;

/// <summary>Invented plans for the gate.</summary>
internal static class GatePlans
{
    public static Stated Measured(double value) => new() { Value = value, Pedigree = Pedigree.Measured };

    public static Permission Given(PermissionGiver giver) =>
        new()
        {
            Id = giver.ToString(),
            Giver = giver,
            Who = "A. N. Other",
            On = new(2031, 5, 1),
            Reference = "letter 7",
        };

    public static Engine HeldEngine { get; } =
        new()
        {
            Id = "one",
            ShaftHeightMetres = Measured(0.9),
            Bench = new()
            {
                MassKilograms = Measured(120),
                TippingArmMetres = Measured(0.4),
                Friction = Measured(0.5),
            },
            Sheet = new() { Fuel = FuelKind.Kerosene, States = [new() { Id = "full", ThrustNewtons = Measured(100) }] },
        };

    /// <summary>Outdoors, everything there: nothing stops it at the gate.</summary>
    public static Plan Complete { get; } =
        new()
        {
            Event = new() { Days = [new(2031, 6, 7), new(2031, 6, 8)] },
            Engines = [HeldEngine],
            Gate = new()
            {
                Permissions = [Given(PermissionGiver.Organiser), Given(PermissionGiver.Insurer)],
                EngineEvidence =
                [
                    new()
                    {
                        EngineId = "one",
                        RunningHours = Measured(6),
                        CrackCheckOn = new(2031, 4, 1),
                        TripProvenOn = new(2031, 4, 2),
                        RatedRuns = 3,
                    },
                ],
                Stopping = new()
                {
                    FuelCutSeconds = Measured(1.5),
                    Independent = true,
                    StopPosts = [new() { Id = "a" }, new() { Id = "b" }],
                    Triggers = "over 700 °C, over 120,000 rpm, anybody over the line",
                },
            },
        };

    public static Plan WithPermissions(Plan plan, params Permission[] permissions) =>
        plan with
        {
            Gate = (plan.Gate ?? new()) with { Permissions = [.. permissions] },
        };

    public static Plan WithEvidence(Func<EngineEvidence, EngineEvidence> change) =>
        Complete with
        {
            Gate = Complete.Gate! with { EngineEvidence = [change(Complete.Gate.EngineEvidence[0])] },
        };

    public static Plan WithStopping(Func<Stopping, Stopping> change) =>
        Complete with
        {
            Gate = Complete.Gate! with { Stopping = change(Complete.Gate.Stopping!) },
        };

    public static Plan Under(EnclosureKind kind) =>
        Complete with
        {
            Site = new()
            {
                Enclosure = new() { Id = "roof", Kind = kind },
            },
        };
}
