using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Enclosures;

/// <summary>One surface of an enclosure.</summary>
/// <param name="AreaSquareMetres">Area, 0 or more.</param>
/// <param name="Absorption">Absorption coefficients, 0 to 1.</param>
/// <param name="Transmission">Share of the energy that passes to the outside, at most the absorption.</param>
public sealed record RoomSurface(double AreaSquareMetres, BandValues Absorption, BandValues Transmission);

/// <summary>
/// The diffuse field of an enclosure with its floor, as factors of the sound power. A hard floor is a mirror: the room
/// is unfolded to twice its height, without the floor, with the source and its image (twice the power). Another floor
/// is a surface like the rest, and the floor image of the direct sound is kept all the same, so that a level inside is
/// never under the level over open hard ground.
/// </summary>
public sealed class DiffuseRoom
{
    /// <summary>Absorption coefficient up to which a floor counts as hard in every band: a choice.</summary>
    public const double HardFloorAbsorption = 0.1;

    /// <summary>
    /// Factor on the diffuse field where the theory is outside its range: real reverberation can be twice the
    /// calculated one (EN 12354-6:2003).
    /// </summary>
    public const double OutsideRangeFactor = 2;

    private readonly RoomSurface[] _shell;
    private readonly RoomSurface? _floor;
    private readonly BandValues _other;

    /// <summary>Takes walls and roof, the floor, and what absorbs without being a surface.</summary>
    /// <param name="shell">Walls and roof.</param>
    /// <param name="floor">The floor.</param>
    /// <param name="otherAbsorption">Absorption area of people and air, in m².</param>
    /// <param name="outsideRange">Whether the room is outside the range of the theory.</param>
    public DiffuseRoom(IEnumerable<RoomSurface> shell, RoomSurface floor, BandValues otherAbsorption, bool outsideRange)
    {
        _shell = [.. shell];
        HasHardFloor = floor.Absorption.All(a => a <= HardFloorAbsorption);
        _floor = HasHardFloor ? null : floor;
        _other = otherAbsorption;
        IsOutsideRange = outsideRange;
        AbsorptionSquareMetres = BandValues.Build(Absorption);
        MeanAbsorption = BandValues.Build(band => Mean(band));
        FieldFactor = BandValues.Build(Field);
        EscapeFactor = BandValues.Build(Escape);
    }

    /// <summary>Whether the floor is a mirror.</summary>
    public bool HasHardFloor { get; }

    /// <summary>Whether the room is outside the range of the theory, so that the diffuse field is doubled.</summary>
    public bool IsOutsideRange { get; }

    /// <summary>Equivalent absorption area in m², without a hard floor.</summary>
    public BandValues AbsorptionSquareMetres { get; }

    /// <summary>Mean absorption coefficient of the surfaces counted.</summary>
    public BandValues MeanAbsorption { get; }

    /// <summary>Mean square pressure of the diffuse field per sound power: 4/R, in 1/m².</summary>
    public BandValues FieldFactor { get; }

    /// <summary>Share of the sound power that leaves through walls, roof and openings, 0 to 1.</summary>
    public BandValues EscapeFactor { get; }

    /// <summary>Room constant R = 4/<see cref="FieldFactor"/> of a band in m², a finite number.</summary>
    public double RoomConstantSquareMetres(int band) => 4 / Math.Max(FieldFactor[band], 1e-9);

    private IEnumerable<RoomSurface> Surfaces => _floor is null ? _shell : _shell.Append(_floor);

    private double Mean(int band) =>
        Math.Min(1, Surfaces.Sum(s => s.AreaSquareMetres * s.Absorption[band]) / Math.Max(Surfaces.Sum(Area), 1e-9));

    private double Absorption(int band) =>
        Math.Max(1e-6, Surfaces.Sum(s => s.AreaSquareMetres * s.Absorption[band]) + _other[band]);

    // In the unfolded room both the power and the absorption are doubled, so 4·2W/(2A/(1-ᾱ)) is 4W(1-ᾱ)/A again: only
    // the mean, taken without the floor, differs.
    private double Field(int band) =>
        4 * (1 - MeanAbsorption[band]) / AbsorptionSquareMetres[band] * (IsOutsideRange ? OutsideRangeFactor : 1);

    // Intensity on a surface in a diffuse field is a quarter of the mean square pressure.
    private double Escape(int band) =>
        Math.Min(1, FieldFactor[band] / 4 * _shell.Sum(s => s.AreaSquareMetres * s.Transmission[band]));

    private static double Area(RoomSurface surface) => surface.AreaSquareMetres;
}
