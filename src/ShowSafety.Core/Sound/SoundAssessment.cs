using ShowSafety.Core.Measures;
using ShowSafety.Core.Sound.Sources;

namespace ShowSafety.Core.Sound;

/// <summary>What the sound room says of a plan. Zones of sound belong to exposure and are none of its own.</summary>
public sealed record SoundAssessment : RoomAssessment
{
    /// <summary>Each engine in each throttle state, in the order of the plan.</summary>
    public ValueList<SourceSummary> Sources { get; init; } = [];

    /// <summary>The hall or tent, or null.</summary>
    public EnclosureSummary? Enclosure { get; init; }
}

/// <summary>An engine in a throttle state as a source of sound.</summary>
/// <param name="EngineId">Id of the engine.</param>
/// <param name="StateId">Id of the throttle state.</param>
/// <param name="Origin">How it came to be known.</param>
public sealed record SourceSummary(string EngineId, string StateId, StateOrigin Origin)
{
    /// <summary>Power levels of the whole source in dB, or null when it can't be told.</summary>
    public BandValues? PowerBandsDb { get; init; }

    /// <summary>A-weighted power level in dB(A) with its planning value, or null.</summary>
    public Quantity? PowerDbA { get; init; }

    /// <summary>Where the spectrum comes from, or null.</summary>
    public SpectrumOrigin? Spectrum { get; init; }

    /// <summary>What the published directivity table adds in the mean over all directions, in dB.</summary>
    public double TableAddsDb { get; init; }

    /// <summary>Parts of the uncertainty, the model of propagation last.</summary>
    public ValueList<UncertaintyPart> Uncertainty { get; init; } = [];

    /// <summary>Ids of the readings used.</summary>
    public ValueList<string> MeasurementIds { get; init; } = [];

    /// <summary>Whether a peak was measured in this state.</summary>
    public bool HasPeak { get; init; }
}

/// <summary>The diffuse field of the hall or tent.</summary>
/// <param name="Id">Id of the enclosure.</param>
/// <param name="AbsorptionSquareMetres">Equivalent absorption area by octave band in m².</param>
/// <param name="MeanAbsorption">Mean absorption coefficient by octave band.</param>
/// <param name="RoomConstantSquareMetres">Room constant the field is calculated with, by octave band in m².</param>
/// <param name="HasHardFloor">Whether the floor is counted as a mirror.</param>
/// <param name="IsOutsideRange">Whether the theory is outside its range and the diffuse field is doubled.</param>
public sealed record EnclosureSummary(
    string Id,
    BandValues AbsorptionSquareMetres,
    BandValues MeanAbsorption,
    BandValues RoomConstantSquareMetres,
    bool HasHardFloor,
    bool IsOutsideRange
);
