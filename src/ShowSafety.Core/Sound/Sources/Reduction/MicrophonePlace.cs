using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Outdoors;

namespace ShowSafety.Core.Sound.Sources.Reduction;

/// <summary>Where a reading was taken, seen from the nozzle.</summary>
/// <param name="DistanceMetres">Distance along the ground, above 0.</param>
/// <param name="SourceHeightMetres">Height of the source, 0 or more.</param>
/// <param name="MicrophoneHeightMetres">Height of the microphone, 0 or more.</param>
/// <param name="Ground">Factors of the ground in between, 0 hard to 1 porous.</param>
public readonly record struct MicrophonePlace(
    double DistanceMetres,
    double SourceHeightMetres,
    double MicrophoneHeightMetres,
    GroundFactors Ground
)
{
    /// <summary>The way to it: the very one that predicts levels.</summary>
    /// <param name="airPerMetre">Power attenuation coefficients of the air in 1/m.</param>
    public FlatPath Path(BandValues airPerMetre) =>
        FlatPath.Of(Ground, DistanceMetres, SourceHeightMetres, MicrophoneHeightMetres, airPerMetre);

    /// <summary>
    /// S in m² per octave band, the measurement surface of ISO 3744:2010 that this one place stands for: the area over which
    /// the power would be spread evenly to give the level here. 2π r² far away over hard ground.
    /// </summary>
    public BandValues SurfaceSquareMetres => Path(BandValues.Zero).LossDb.Map(Decibels.ToEnergy);
}
