using ShowSafety.Core.Debris;
using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;
using static ShowSafety.Core.Tests.Debris.DebrisPlans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>From plan to pieces, figures and findings.</summary>
public sealed class DebrisAssessorTests
{
    [Fact]
    public void Assess_NoEngines_FindsNothing()
    {
        DebrisAssessment nothing = DebrisAssessor.Assess(new Plan());

        Assert.Empty(nothing.Findings);
        Assert.Empty(nothing.Zones);
        Assert.Empty(nothing.Pieces);
    }

    [Fact]
    public void Assess_EngineWithoutSheet_CannotTellAndStops()
    {
        DebrisAssessment found = DebrisAssessor.Assess(new Plan { Engines = [new() { Id = "a" }] });

        Finding stop = Assert.Single(found.Findings);
        Assert.Equal("debris.no-rotors", stop.Code);
        Assert.Equal(Severity.Stop, stop.Severity);
        Assert.True(stop.CannotTell);
        Assert.Equal(ZoneRow.DirectFlight, stop.Row);
        Assert.Equal("EngineSheet.Rotors", stop.Field);
        Assert.Empty(found.Zones);
    }

    [Fact]
    public void Assess_SheetWithoutRotors_CannotTellAndStops() =>
        Assert.Contains(
            DebrisAssessor.Assess(With()).Findings,
            f => f is { Code: "debris.no-rotors", CannotTell: true }
        );

    public static TheoryData<string, string> MissingValues =>
        new()
        {
            { nameof(Rotor.TipRadiusMetres), "debris.rotor-radius-missing" },
            { nameof(Rotor.BladedMassKilograms), "debris.rotor-mass-missing" },
            { nameof(Rotor.AxialPositionMetres), "debris.rotor-position-missing" },
        };

    [Theory]
    [MemberData(nameof(MissingValues))]
    public void Assess_ValueMissing_CannotTellAndStops(string member, string code)
    {
        Rotor rotor = member switch
        {
            nameof(Rotor.TipRadiusMetres) => Turbine with { TipRadiusMetres = null },
            nameof(Rotor.BladedMassKilograms) => Turbine with { BladedMassKilograms = null },
            _ => Turbine with { AxialPositionMetres = null },
        };

        DebrisAssessment found = DebrisAssessor.Assess(With(rotor));

        Finding stop = Assert.Single(found.Findings, f => f.Severity == Severity.Stop);
        Assert.Equal((code, $"Rotor.{member}", true), (stop.Code, stop.Field, stop.CannotTell));
        Assert.Empty(found.Zones);
    }

    [Fact]
    public void Assess_TripMissing_TakesTwentyPercentMoreAndAsksToAct()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine with { TripSpeedRevolutionsPerMinute = null }));

        Finding act = Assert.Single(found.Findings, f => f.Code == "debris.trip-speed-assumed");
        Assert.Equal(Severity.Act, act.Severity);
        Assert.Equal(114_000, Figure(found, "debris.burst-speed").Planning, 6);
        Assert.Equal(Pedigree.Assumed, Figure(found, "debris.burst-speed").Pedigree);
    }

    [Fact]
    public void Assess_TripAndMaximumMissing_CannotTellAndStops()
    {
        Rotor rotor = Turbine with { TripSpeedRevolutionsPerMinute = null, MaximumSpeedRevolutionsPerMinute = null };

        Assert.Contains(
            DebrisAssessor.Assess(With(rotor)).Findings,
            f => f is { Code: "debris.rotor-speed-missing", Severity: Severity.Stop, CannotTell: true }
        );
    }

    [Fact]
    public void Assess_TripBelowMaximum_TakesTheFaster()
    {
        DebrisAssessment found = DebrisAssessor.Assess(
            With(Turbine with { TripSpeedRevolutionsPerMinute = Is(80_000) })
        );

        Assert.Contains(found.Findings, f => f.Code == "debris.trip-below-running-speed");
        Assert.Equal(95_000, Figure(found, "debris.burst-speed").Planning, 6);
    }

    [Fact]
    public void Assess_ThrottleStateAboveTrip_TakesTheState()
    {
        Plan plan = With(Turbine);
        Engine engine = plan.Engines[0];
        EngineSheet sheet = engine.Sheet! with
        {
            States = [new() { Id = "full", ShaftSpeedRevolutionsPerMinute = Is(110_000) }],
        };

        DebrisAssessment found = DebrisAssessor.Assess(plan with { Engines = [engine with { Sheet = sheet }] });

        Assert.Equal(110_000, Figure(found, "debris.burst-speed").Planning, 6);
    }

    [Fact]
    public void Assess_WorkedWheel_GivesThePiecesOfTheWorkedCase()
    {
        // Plain disc of C1 and the AC 20-128A pieces of the worked case, at 102,000 rpm.
        Rotor plain = Turbine with
        {
            RimRadiusMetres = null,
            Material = null,
            DiscThicknessMetres = Is(0.010),
        };

        DebrisAssessment found = DebrisAssessor.Assess(With(plain));

        DebrisPiece third = found.Pieces.Single(p => p.Kind == PieceKind.OneThirdDisc);
        Assert.Equal(223.781, third.Speed.Planning, 0.01);
        Assert.Equal(1585.80, third.Translation.Planning, 0.1);
        Assert.Equal(1022.74, third.Spin.Planning, 0.1);
        Assert.Equal(63.333, third.Mass.Planning, 0.001);
        Assert.Equal(11.4504, third.Area.Best, 0.001);
        Assert.Equal(22.0, third.EdgeDiameter.Planning, 0.05);
        // 210.7 m and 235 m hold for 1.225 kg/m³; the plan's 10 °C are denser, a few metres less.
        Assert.InRange(third.FlatFireDistance.Best, 200, 211);
        Assert.InRange(third.LandingDistance.Best, 222, 236);
        Assert.True(third.FlatFireDistance.Planning > third.FlatFireDistance.Best);
        Assert.True(third.LandingDistance.Planning > third.LandingDistance.Best);
    }

    [Fact]
    public void Assess_RimKnown_IntermediateLeavesAtRimSpeed()
    {
        DebrisPiece piece = DebrisAssessor.Assess(With(Turbine)).Pieces.Single(p => p.Kind == PieceKind.Intermediate);

        // AC 20-128A model on the worked wheel: 6.3333 g, 309.761 m/s, 303.85 J.
        Assert.Equal(6.3333, piece.Mass.Planning, 0.001);
        Assert.Equal(309.761, piece.Speed.Planning, 0.01);
        Assert.Equal(303.85, piece.Translation.Planning, 0.05);
        Assert.Equal(10.4, piece.EdgeDiameter.Planning, 0.05);
    }

    [Fact]
    public void Assess_SheetTooLight_SaysSo()
    {
        // 190 g, 38 mm, 10 mm imply about 4,190 kg/m³; nickel alloys have about 8,190.
        Rotor light = Turbine with
        {
            RimRadiusMetres = null,
            DiscThicknessMetres = Is(0.010),
        };

        Finding odd = Assert.Single(DebrisAssessor.Assess(With(light)).Findings, f => f.Code == "debris.sheet-density");
        Assert.Equal(4188, odd.Arguments.Single(a => a.Name == "implied").Quantity!.Planning, 1.0);
        Assert.Equal(8190, odd.Arguments.Single(a => a.Name == "material").Quantity!.Planning, 1e-9);
    }

    [Fact]
    public void Assess_SheetThatFits_SaysNothingAboutDensity() =>
        Assert.DoesNotContain(DebrisAssessor.Assess(With(Turbine)).Findings, f => f.Code == "debris.sheet-density");

    [Fact]
    public void Assess_SheetTooHeavy_SaysSo() =>
        Assert.Contains(
            DebrisAssessor.Assess(With(Turbine with { BladedMassKilograms = Is(0.8) })).Findings,
            f => f.Code == "debris.sheet-density"
        );

    [Fact]
    public void Assess_BoreAsLargeAsTheWheel_CannotTellAndStops() =>
        Assert.Contains(
            DebrisAssessor.Assess(With(Turbine with { BoreRadiusMetres = Is(0.05) })).Findings,
            f => f is { Code: "debris.rotor-bore-odd", Severity: Severity.Stop, CannotTell: true }
        );

    [Fact]
    public void Assess_RimOutsideTheWheel_TakesTheTipSpeedAndSaysSo()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine with { RimRadiusMetres = Is(0.05) }));

        Assert.Contains(found.Findings, f => f.Code == "debris.rotor-rim-odd");
        Assert.Equal(405.894, found.Pieces.Single(p => p.Kind == PieceKind.Intermediate).Speed.Planning, 0.01);
    }

    [Fact]
    public void Assess_WheelLargerThanCasing_SaysSo() =>
        Assert.Contains(
            DebrisAssessor.Assess(With(Turbine with { TipRadiusMetres = Is(0.076) })).Findings,
            f => f.Code == "debris.wheel-larger-than-casing"
        );

    [Fact]
    public void Assess_BladesNotCounted_CannotTellAboutBlades()
    {
        DebrisAssessment found = DebrisAssessor.Assess(With(Turbine with { BladeCount = null }));

        Assert.Contains(found.Findings, f => f is { Code: "debris.blades-unknown", CannotTell: true });
        Assert.DoesNotContain(found.Pieces, p => p.Kind == PieceKind.Blade);
    }

    [Fact]
    public void Assess_BoundingRotor_IsAsLargeAsTheCasingAtFourHundredFortyMetresPerSecond()
    {
        var unknown = new Rotor
        {
            Id = "unknown",
            Bounding = true,
            DiscThicknessMetres = Is(0.015),
        };

        DebrisAssessment found = DebrisAssessor.Assess(With(unknown));

        Assert.DoesNotContain(found.Findings, f => f.Severity == Severity.Stop);
        Assert.Contains(found.Findings, f => f.Code == "debris.bounding-rotor");
        Assert.Equal(440, Figure(found, "debris.tip-speed").Planning, 1e-6);
        // 110 mm across, 15 mm, 8,190 kg/m³: 1.1675 kg, a third of it 389.2 g.
        Assert.Equal(389.2, found.Pieces.Single(p => p.Kind == PieceKind.OneThirdDisc).Mass.Planning, 0.1);
    }

    [Fact]
    public void Assess_BoundingRotorWithoutPlace_TakesTheWholeEngine()
    {
        var unknown = new Rotor
        {
            Id = "unknown",
            Bounding = true,
            DiscThicknessMetres = Is(0.015),
        };

        var zone = DebrisAssessor.Assess(With(unknown)).Zones[0].Area;

        // The engine blows north from y = 4 and is 0.3 m long: its planes may lie from y = 3.7 to y = 4.
        Assert.True(zone.Contains(SiteGeometry.Line([new(3, 3.7), new(3, 4)])));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Assess_BoundingRotorWithoutCasingOrThickness_CannotTell(bool casing)
    {
        Plan plan = With(
            new Rotor
            {
                Id = "u",
                Bounding = true,
                DiscThicknessMetres = casing ? Is(0.015) : null,
            }
        );
        Engine engine = plan.Engines[0];
        EngineSheet sheet = casing ? engine.Sheet! with { CasingDiameterMetres = null } : engine.Sheet!;

        DebrisAssessment found = DebrisAssessor.Assess(plan with { Engines = [engine with { Sheet = sheet }] });

        Assert.Contains(found.Findings, f => f is { Severity: Severity.Stop, CannotTell: true });
        Assert.Empty(found.Zones);
    }

    [Fact]
    public void Assess_LandingAreaNotAccepted_AsksToAct() =>
        Assert.Contains(
            DebrisAssessor.Assess(With(Turbine)).Findings,
            f => f is { Code: "debris.landing-area", Severity: Severity.Act, Row: ZoneRow.LandingArea }
        );

    [Theory]
    [InlineData("engine", "A. Name", true)]
    [InlineData("engine", " ", false)]
    [InlineData("another", "A. Name", false)]
    [InlineData(null, "A. Name", false)]
    public void Assess_LandingAreaAccepted_OnlyByNameForThisEngine(string? engine, string by, bool accepted)
    {
        Plan plan = With(Turbine) with
        {
            Decisions = new()
            {
                Acceptances =
                [
                    new()
                    {
                        Finding = "debris.landing-area",
                        ElementId = engine,
                        By = by,
                    },
                ],
            },
        };

        ValueList<Finding> findings = DebrisAssessor.Assess(plan).Findings;

        Assert.Equal(accepted, findings.Any(f => f.Code == "debris.landing-area-accepted"));
        Assert.Equal(!accepted, findings.Any(f => f.Code == "debris.landing-area"));
    }

    [Fact]
    public void Assess_SmallPieces_AskForEyeProtection() =>
        Assert.Contains(
            DebrisAssessor.Assess(With(Turbine)).Findings,
            f => f is { Code: "debris.eye-protection", Severity: Severity.Act }
        );

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(1e300)]
    public void Assess_ValuesThatMakeNoSense_NeverCrashAndNeverPass(double value)
    {
        Rotor odd = Turbine with
        {
            TipRadiusMetres = Is(value),
            BladedMassKilograms = Is(value),
            TripSpeedRevolutionsPerMinute = Is(value),
            MaximumSpeedRevolutionsPerMinute = Is(value),
        };

        DebrisAssessment found = DebrisAssessor.Assess(With(odd));

        Assert.Contains(found.Findings, f => f is { Severity: Severity.Stop, CannotTell: true });
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    [InlineData(1e300)]
    public void Assess_OddAirAndHeights_StillGiveFiniteReaches(double value)
    {
        Plan plan = With(Turbine);
        plan = plan with
        {
            Site = plan.Site with
            {
                Air = new() { PressureKilopascals = Is(value), TemperatureCelsius = Is(double.NaN) },
                Weather = new() { HighestWindMetresPerSecond = Is(value) },
            },
            Engines = [plan.Engines[0] with { ShaftHeightMetres = Is(value) }],
        };

        DebrisAssessment found = DebrisAssessor.Assess(plan);

        Assert.All(found.Zones, z => Assert.True(z.Area.IsValid && double.IsFinite(z.Area.Area)));
        Assert.Contains(found.Findings, f => f.Code == "debris.shaft-height-assumed");
    }

    [Fact]
    public void Assess_SamePlanTwice_IsTheSame()
    {
        Plan plan = With(Turbine, Compressor);

        Assert.Equal(DebrisAssessor.Assess(plan).Pieces, DebrisAssessor.Assess(plan).Pieces);
        Assert.Equal(DebrisAssessor.Assess(plan).Findings, DebrisAssessor.Assess(plan).Findings);
    }

    private static Quantity Figure(DebrisAssessment found, string key) => found.Figures.First(f => f.Key == key).Value;
}
