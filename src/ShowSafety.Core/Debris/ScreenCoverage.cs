using ShowSafety.Core.Measures;
using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>What the evidence for a debris screen shows.</summary>
public enum ScreenVerdict
{
    /// <summary>The test covers every piece.</summary>
    Holds,

    /// <summary>There is no evidence, or something of the test is not stated.</summary>
    NoEvidence,

    /// <summary>The test asked less of the sheet than a piece would.</summary>
    TestTooWeak,

    /// <summary>The test projectile was lighter than a piece: the fixing was not tried.</summary>
    ProjectileTooLight,

    /// <summary>Acrylic is refused above 25 m/s, whatever the evidence says.</summary>
    Acrylic,
}

/// <summary>
/// Whether a test of a sheet covers a set of pieces: at least their energy, no blunter than they are edge on by the
/// rule for machine guards (<see cref="GuardTests.Demand"/>), and no lighter. This project's choice.
/// </summary>
public static class ScreenCoverage
{
    /// <summary>The verdict on a screen for pieces, each with its planning values.</summary>
    /// <param name="screen">The screen.</param>
    /// <param name="pieces">Every piece that can strike it; none of them may be missing.</param>
    /// <returns>The verdict and the piece that decides it, null where none does.</returns>
    public static (ScreenVerdict Verdict, DebrisPiece? Piece) Judge(
        DebrisScreen screen,
        IReadOnlyList<DebrisPiece> pieces
    )
    {
        if (screen.Material == ScreenMaterial.Acrylic)
        {
            return (ScreenVerdict.Acrylic, null);
        }

        if (
            screen.Evidence is not { } evidence
            || string.IsNullOrWhiteSpace(evidence.Reference)
            || Tested(evidence.TestedEnergyJoules) is not { } energy
            || Tested(evidence.ProjectileKilograms) is not { } mass
            || Tested(evidence.ProjectileDiameterMetres) is not { } diameter
        )
        {
            return (ScreenVerdict.NoEvidence, null);
        }

        DebrisPiece? hardest = pieces.MaxBy(p => DemandOf(p, energy, diameter));
        if (hardest is not null && DemandOf(hardest, energy, diameter) > 1)
        {
            return (ScreenVerdict.TestTooWeak, hardest);
        }

        DebrisPiece? heaviest = pieces.MaxBy(p => p.Mass.Planning);
        return heaviest is not null && heaviest.Mass.Planning > mass * 1000
            ? (ScreenVerdict.ProjectileTooLight, heaviest)
            : (ScreenVerdict.Holds, null);
    }

    /// <summary>How much more than the test a piece asks of the sheet; 1 or less is covered.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="testedJoules">Energy held in the test in J, above 0.</param>
    /// <param name="testedDiameterMetres">Diameter of the test projectile in m, above 0.</param>
    public static double DemandOf(DebrisPiece piece, double testedJoules, double testedDiameterMetres) =>
        GuardTests.Demand(
            piece.Translation.Planning,
            piece.EdgeDiameter.Planning / 1000,
            testedJoules,
            testedDiameterMetres
        );

    // An estimate or an assumption is no test.
    private static double? Tested(Stated? stated) =>
        Readable.Within(stated, 1e-6, 1e9) is { Pedigree: Pedigree.Measured or Pedigree.Maker or Pedigree.Example } test
            ? test.Value
            : null;
}
