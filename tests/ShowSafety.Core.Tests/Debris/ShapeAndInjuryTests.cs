using CsCheck;
using ShowSafety.Core.Debris;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Tests.Debris;

/// <summary>Areas, drag, injury criteria and screens where no worked sum can express the check.</summary>
public sealed class ShapeAndInjuryTests
{
    [Fact]
    public void Sector_AnyDisc_LeastAreaIsBelowTheTumblingOne() =>
        Gen.Select(Gen.Double[0.01, 0.2], Gen.Double[0, 0.8], Gen.Double[0.02, 0.5], Gen.Int[2, 12])
            .Sample(
                (radius, bore, thin, pieces) =>
                {
                    PieceShape shape = PieceShape.Sector(radius, bore * radius, thin * radius, pieces);
                    return shape.LeastAreaSquareMetres * Drag.PlanningLow < shape.TumblingAreaSquareMetres
                        && shape.LeastAreaSquareMetres > 0;
                }
            );

    [Fact]
    public void Cube_MeanShadow_IsThatOfTheBox() =>
        Gen.Select(Gen.Double[0.0001, 1], Gen.Double[1000, 9000])
            .Sample(
                (mass, density) =>
                {
                    double side = Math.Cbrt(mass / density);
                    double box = PieceShape.TumblingAreaOfBox(side, side, side);
                    return Math.Abs(PieceShape.Cube(mass, density).TumblingAreaSquareMetres - box) <= 1e-12;
                }
            );

    [Fact]
    public void Sector_TooFewPieces_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceShape.Sector(0.038, 0, 0.01, 1));

    [Fact]
    public void CoefficientAtMach_Negative_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Drag.CoefficientAtMach(-0.1));

    [Fact]
    public void FlatFireDistance_PlainDisc_IsLongestForTwoToFourPieces()
    {
        // Why halves, thirds and quarters are looked at and no smaller sectors.
        double Reach(int n)
        {
            SectorPiece piece = Burst.IntoEqualSectors(Wheel.Disc(0.19, 0.038), 102_000, n);
            double area = PieceShape.Sector(0.038, 0, 0.0051, n).LeastAreaSquareMetres;
            double k = Drag.PerMetre(1.225, area, piece.MassKilograms);
            return FlatFire.DistanceTo(piece.TranslationJoules, k, InjuryEnergy.AbleToInjureJoules);
        }

        Assert.InRange(Enumerable.Range(2, 20).MaxBy(Reach), 2, 4);
    }

    [Fact]
    public void FallingMass_BothForms_AgreeAtTerminalSpeed() =>
        Gen.Select(Gen.Double[500, 8000], Gen.Double[0.5, 2], Gen.Double[5, 500])
            .Sample(
                (shape, drag, energy) =>
                {
                    double length = FragmentLength.PerCubeRootKilogram(shape, drag, 1.2);
                    double mass = FragmentLength.FallingMass(energy, length);
                    double area = Math.Pow(mass / shape, 2.0 / 3);
                    double k = Drag.PerMetre(1.2, drag * area, mass);
                    double falling = FlatFire.Energy(mass, Math.Sqrt(VerticalShot.StandardGravity / k));
                    return Math.Abs(falling - energy) <= 1e-9 * energy;
                }
            );

    [Fact]
    public void EnergyAt_ByMassAlone_IsFlatFireWithTheSameDrag()
    {
        double length = FragmentLength.PerCubeRootKilogram(2610, 1.28, 1.2);
        double k = Drag.PerMetre(1.2, 1.28 * Math.Pow(0.1 / 2610, 2.0 / 3), 0.1);

        Assert.Equal(
            FlatFire.Energy(0.1, FlatFire.SpeedAt(200, k, 40)),
            FragmentLength.EnergyAt(0.1, 200, 40, length),
            6
        );
    }

    [Theory]
    [InlineData(ScreenMaterial.Steel, 115, true)]
    [InlineData(ScreenMaterial.Aluminium, 115, true)]
    [InlineData(ScreenMaterial.Polycarbonate, 115, true)]
    [InlineData(ScreenMaterial.Steel, 115.1, false)]
    [InlineData(ScreenMaterial.Acrylic, 25, true)]
    [InlineData(ScreenMaterial.Acrylic, 25.1, false)]
    [InlineData(ScreenMaterial.Wood, 1, false)]
    public void Holds_HundredGramProjectile_FollowsIfaProject6054(ScreenMaterial sheet, double speed, bool holds) =>
        Assert.Equal(holds, GuardTests.Holds(sheet, speed));

    [Theory]
    [InlineData(ScreenMaterial.Acrylic)]
    [InlineData(ScreenMaterial.Wood)]
    public void StartingThickness_UntestedMaterial_IsNotGiven(ScreenMaterial sheet) =>
        Assert.Null(GuardTests.StartingThickness(sheet, 100, 0.02));

    [Fact]
    public void StartingThickness_PolycarbonateOverSteel_IsTheTradesRuleOf2Point7()
    {
        // Eight millimetres polycarbonate like three millimetres steel (Mewes and Trapp 2000): 2.667.
        double steel = GuardTests.StartingThickness(ScreenMaterial.Steel, 500, 0.01)!.Value;
        double polycarbonate = GuardTests.StartingThickness(ScreenMaterial.Polycarbonate, 500, 0.01)!.Value;

        Assert.Equal(2.7, polycarbonate / steel, 0.05);
    }

    [Fact]
    public void Demand_MoreEnergyOrSharper_NeverAsksLess() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[0.002, 0.05], Gen.Double[1, 3])
            .Sample(
                (energy, diameter, factor) =>
                    GuardTests.Demand(energy * factor, diameter, 661.25, 0.02)
                        >= GuardTests.Demand(energy, diameter, 661.25, 0.02)
                    && GuardTests.Demand(energy, diameter / factor, 661.25, 0.02)
                        >= GuardTests.Demand(energy, diameter, 661.25, 0.02)
            );

    [Fact]
    public void PerforationEnergy_OfThePerforationThickness_IsTheEnergy() =>
        Gen.Select(Gen.Double[1, 10_000], Gen.Double[0.002, 0.1])
            .Sample(
                (energy, diameter) =>
                {
                    double thickness = SteelPlate.PerforationThickness(energy, diameter);
                    return Math.Abs(SteelPlate.PerforationEnergy(thickness, diameter) - energy) <= 1e-9 * energy;
                }
            );

    [Fact]
    public void ResidualSpeed_Blunt_AbsorbsMoreThanTheLimitEnergy()
    {
        // Recht and Ipson 1963: sheet and plug together take 693.2 J where the limit speed stands for 661.25 J.
        double left = Residual.Speed(0.1, 0.007398, 150, 115);
        double taken = FlatFire.Energy(0.1, 150) - FlatFire.Energy(0.107398, left);

        Assert.Equal(693.2, taken, 0.1);
        Assert.True(taken > FlatFire.Energy(0.1, 115));
    }

    [Fact]
    public void SperrazzaAndLewis_SteelBall_AgreeWithinFifteenPercentAndLieBelowMeasuredSpeeds()
    {
        double area = Math.PI * 0.006 * 0.006 / 4;
        double sperrazza = SkinCriteria.SperrazzaSpeed(area / 0.0008878);
        double lewis = Math.Sqrt(2 * SkinCriteria.LewisHalfEnergyPerArea() * area / 0.0008878);

        Assert.InRange(lewis / sperrazza, 1.0, 1.15);
        // DiMaio and others 1982: the slowest measured lead pellet of 4.5 mm went through at 101 m/s.
        Assert.True(lewis < 101);
    }

    [Fact]
    public void LewisChance_Faster_NeverFalls() =>
        Gen.Select(Gen.Double[0.0001, 0.02], Gen.Double[1, 300], Gen.Double[1e-6, 1e-3])
            .Sample(
                (mass, speed, area) =>
                    SkinCriteria.LewisChance(mass, speed * 1.1, area) >= SkinCriteria.LewisChance(mass, speed, area)
                    && SkinCriteria.LewisChance(mass, speed, area) is >= 0 and <= 1
            );

    [Fact]
    public void HalfRiskEnergyPerArea_UnknownInjury_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EyeCriteria.HalfRiskEnergyPerArea((EyeInjury)99));

    [Fact]
    public void GuardClass_ImpactSpeeds_AreAQuarterAboveTheSpeedLimitsRoundedUp()
    {
        // EN ISO 23125 Annex A, from memory: limits 25, 40, 63 m/s for A and 40, 50, 63 m/s for B and C.
        double[] limits = [25, 40, 63, 40, 50, 63, 40, 50, 63];

        Assert.All(
            GuardClass.All.Zip(limits),
            pair => Assert.InRange(pair.First.SpeedMetresPerSecond / pair.Second, 1.25, 1.29)
        );
    }
}
