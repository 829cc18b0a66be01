namespace ShowSafety.Core.Debris;

/// <summary>
/// The pieces and spread angles of FAA AC 20-128A (1997) and EASA AMC 20-128A, paragraph 9. From memory: confirm. A
/// review for the FAA (DOT/FAA/AR-99/11) found the angles too narrow, so they are the least to plan with.
/// </summary>
public static class AirworthinessModel
{
    /// <summary>Spread of a one-third disc fore and aft of the rotor plane in degrees.</summary>
    public const double OneThirdDiscSpreadDegrees = 3;

    /// <summary>Spread of an intermediate fragment fore and aft of the rotor plane in degrees.</summary>
    public const double IntermediateSpreadDegrees = 5;

    /// <summary>Spread of small fragments fore and aft of the rotor plane in degrees: the widest.</summary>
    public const double SmallFragmentSpreadDegrees = 15;

    /// <summary>Mass of an intermediate fragment in kg: one thirtieth of the bladed disc.</summary>
    public static double IntermediateMass(double bladedMassKilograms) => bladedMassKilograms / 30;

    /// <summary>Largest dimension of an intermediate fragment in m: a third of the bladed disc's radius.</summary>
    public static double IntermediateSize(double tipRadiusMetres) => tipRadiusMetres / 3;

    /// <summary>Mass of a one-third disc in kg.</summary>
    public static double OneThirdMass(double bladedMassKilograms) => bladedMassKilograms / 3;
}
