using ShowSafety.Core.Plans;

namespace ShowSafety.Core.Debris;

/// <summary>The rotor sheet against itself: does the wheel weigh what its size and material say, does it fit the casing.</summary>
internal static class RotorSheetCheck
{
    public static void Check(EngineSheet sheet, Rotor rotor, RotorCase? read, RotorFindings say)
    {
        if (read is null)
        {
            return;
        }

        if (rotor.Material is not null && RotorReader.Metres(rotor.DiscThicknessMetres) is { } thickness)
        {
            CheckDensity(read, thickness.Value, say);
        }

        if (RotorReader.Metres(sheet.CasingDiameterMetres) is { } casing && 2 * read.TipRadiusMetres > casing.Value)
        {
            say.LargerThanCasing(read.TipRadiusMetres, casing.Value);
        }

        if (read.BladeKilograms is null)
        {
            say.BladesUnknown();
        }
    }

    // A bladed wheel weighs more than its disc to the rim and less than a disc to the tips: the material's density
    // must lie between what the two imply, give or take the tolerance.
    private static void CheckDensity(RotorCase read, double thickness, RotorFindings say)
    {
        double low = RotorMaterials.ImpliedDensity(
            read.MassKilograms,
            read.TipRadiusMetres,
            read.BoreRadiusMetres,
            thickness
        );
        double high = RotorMaterials.ImpliedDensity(
            read.MassKilograms,
            read.RimRadiusMetres,
            read.BoreRadiusMetres,
            thickness
        );
        double material = read.DensityKilogramsPerCubicMetre;
        if (material > high * (1 + RotorMaterials.SheetTolerance))
        {
            say.SheetDensity(high, material);
        }
        else if (material < low * (1 - RotorMaterials.SheetTolerance))
        {
            say.SheetDensity(low, material);
        }
    }
}
