using ShowSafety.Core.Gate;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Gate.GatePlans;

namespace ShowSafety.Core.Tests.Gate;

public sealed class PermissionCheckTests
{
    private static readonly Permission Venue = Given(PermissionGiver.Venue);
    private static readonly Permission Fire = Given(PermissionGiver.FireAuthority);
    private static readonly Permission Insurer = Given(PermissionGiver.Insurer);

    private static IReadOnlyList<string> Codes(Plan plan) =>
        [
            .. GateAssessor
                .Assess(plan)
                .Findings.Where(f => f.Code.Contains("permission", StringComparison.Ordinal))
                .Select(f => f.Code),
        ];

    [Theory]
    [InlineData(EnclosureKind.Hall)]
    [InlineData(EnclosureKind.Tent)]
    public void Assess_UnderARoof_NeedsVenueFireAuthorityAndInsurer(EnclosureKind kind) =>
        Assert.Equal(
            [
                "gate.permission-missing-venue",
                "gate.permission-missing-fire-authority",
                "gate.permission-missing-insurer",
            ],
            Codes(WithPermissions(Under(kind)))
        );

    [Fact]
    public void Assess_UnderARoof_OrganiserDoesNotStandForTheVenue() =>
        Assert.Equal(
            ["gate.permission-missing-venue"],
            Codes(WithPermissions(Under(EnclosureKind.Hall), Given(PermissionGiver.Organiser), Fire, Insurer))
        );

    [Theory]
    [InlineData(FuelKind.Petrol, true)]
    [InlineData(FuelKind.LiquefiedGas, true)]
    [InlineData(FuelKind.Kerosene, false)]
    [InlineData(FuelKind.Diesel, false)]
    public void Assess_Outdoors_FireAuthorityDependsOnTheFuel(FuelKind fuel, bool needed)
    {
        Engine engine = HeldEngine with { Sheet = HeldEngine.Sheet! with { Fuel = fuel } };

        Assert.Equal(
            needed ? ["gate.permission-missing-fire-authority"] : [],
            Codes(Complete with { Engines = [engine] })
        );
    }

    [Fact]
    public void Assess_UnknownFuelOutdoors_CannotTellUnlessTheFireAuthorityAgreed()
    {
        Engine engine = HeldEngine with { Sheet = HeldEngine.Sheet! with { Fuel = null } };
        Plan plan = Complete with { Engines = [engine] };

        Finding finding = Assert.Single(GateAssessor.Assess(plan).Findings);
        Assert.True(finding is { Code: "gate.fuel-unknown", CannotTell: true, Severity: Severity.Stop });
        Assert.Empty(GateAssessor.Assess(WithPermissions(plan, Venue, Insurer, Fire)).Findings);
    }

    public static TheoryData<string, string> Incomplete =>
        new()
        {
            { "who", "incomplete" },
            { "on", "incomplete" },
            { "reference", "incomplete" },
            { "assumed", "assumed" },
            { "estimated", "assumed" },
            { "late", "late" },
            { "second-day", "late" },
            { "expired", "expired" },
            { "backwards", "expired" },
        };

    [Theory]
    [MemberData(nameof(Incomplete))]
    public void Assess_FaultyEntry_StopsAndSaysWhy(string fault, string expected)
    {
        Permission entry = fault switch
        {
            "who" => Venue with { Who = "  " },
            "on" => Venue with { On = null },
            "reference" => Venue with { Reference = null },
            "assumed" => Venue with { Pedigree = Pedigree.Assumed },
            "estimated" => Venue with { Pedigree = Pedigree.Estimated },
            "late" => Venue with { On = new(2031, 6, 20) },
            "second-day" => Venue with { On = new(2031, 6, 8) },
            "expired" => Venue with { ValidUntil = new(2031, 6, 7) },
            _ => Venue with { ValidUntil = new(2031, 4, 30) },
        };

        Finding finding = Assert.Single(GateAssessor.Assess(WithPermissions(Complete, entry, Insurer)).Findings);

        Assert.Equal($"gate.permission-{expected}-venue-or-organiser", finding.Code);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(entry.Id, finding.ElementId);
    }

    [Fact]
    public void Assess_OneGoodEntryAmongFaultyOnes_IsEnough() =>
        Assert.Empty(Codes(WithPermissions(Complete, Venue with { Who = null }, Venue with { Id = "again" }, Insurer)));

    [Fact]
    public void Assess_HoldsOnTheLastDay_IsEnough() =>
        Assert.Empty(Codes(WithPermissions(Complete, Venue with { ValidUntil = new(2031, 6, 8) }, Insurer)));

    [Fact]
    public void Assess_ExampleEntry_CountsAsGiven() =>
        Assert.Empty(Codes(WithPermissions(Complete, Venue with { Pedigree = Pedigree.Example }, Insurer)));

    [Fact]
    public void Assess_RunAfterTheEventDays_StretchesValidity()
    {
        Plan plan = WithPermissions(Complete, Venue with { ValidUntil = new(2031, 6, 8) }, Insurer) with
        {
            Programme = new()
            {
                Runs =
                [
                    new()
                    {
                        Id = "late",
                        EngineId = "one",
                        Day = new(2031, 6, 9),
                    },
                ],
            },
        };

        Assert.Equal(["gate.permission-expired-venue-or-organiser"], Codes(plan));
    }

    [Fact]
    public void Assess_ConditionsAttached_AreNoted()
    {
        Plan plan = WithPermissions(Complete, Venue with { Limits = "idle only" }, Insurer);

        Finding finding = Assert.Single(GateAssessor.Assess(plan).Findings);

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("idle only", finding.Arguments.Single().Text);
    }
}
