using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sound.Sources;

/// <summary>How the sound of a throttle state came to be known.</summary>
public enum StateOrigin
{
    /// <summary>Measured in this state.</summary>
    Measured,

    /// <summary>Interpolated between two measured states.</summary>
    Interpolated,

    /// <summary>Slower than the slowest measured state and taken as loud as that one.</summary>
    LowestMeasured,

    /// <summary>Not known.</summary>
    CannotTell,
}

/// <summary>The sound of an engine in one throttle state.</summary>
/// <param name="StateId">Id of the throttle state.</param>
/// <param name="Origin">How it came to be known.</param>
public sealed record StateSound(string StateId, StateOrigin Origin)
{
    /// <summary>Power by direction, or null when it can't be told.</summary>
    public DirectionalPower? Power { get; init; }

    /// <summary>Power levels of the whole source in dB (sphere mean of the envelope), or null.</summary>
    public BandValues? SphereMeanDb { get; init; }

    /// <summary>What the published table adds to the plain readings in the sphere mean, in dB(A), 0 or more.</summary>
    public double TableAddsDb { get; init; }

    /// <summary>The fit of the directions, used or tried, or null.</summary>
    public StateFit? Fit { get; init; }

    /// <summary>Whether it was found between other states by shaft speed, since exhaust speeds are missing.</summary>
    public bool IsByShaftSpeed { get; init; }

    /// <summary>Parts of the uncertainty of the source, without the model of propagation.</summary>
    public ValueList<UncertaintyPart> Uncertainty { get; init; } = [];

    /// <summary>The weakest origin of a spectrum among the readings used, or null.</summary>
    public SpectrumOrigin? Spectrum { get; init; }

    /// <summary>Ids of the readings used.</summary>
    public ValueList<string> MeasurementIds { get; init; } = [];

    /// <summary>Weakest pedigree of the readings used.</summary>
    public Pedigree Pedigree { get; init; } = Pedigree.Calculated;

    /// <summary>Measured C-weighted peak as the level of a source that would give it, in dB, or null.</summary>
    public double? PeakSourceDbC { get; init; }

    /// <summary>Parts of the uncertainty of the peak, without the model of propagation.</summary>
    public ValueList<UncertaintyPart> PeakUncertainty { get; init; } = [];
}

/// <summary>A fit of the directions of a state.</summary>
/// <param name="Holds">Whether every reading lies near enough to it for it to be used.</param>
/// <param name="StandardDb">Standard deviation of what the readings have over it in dB, A-weighted.</param>
/// <param name="Residuals">What each reading has over it.</param>
public sealed record StateFit(bool Holds, double StandardDb, ValueList<ReadingResidual> Residuals);

/// <summary>What a reading has over the fit, below 0 where it has less.</summary>
/// <param name="MeasurementId">Id of the reading.</param>
/// <param name="AngleDegrees">Its angle from the exhaust axis, seen from the nozzle.</param>
/// <param name="LevelDb">Reading minus fit of the A-weighted power levels in dB.</param>
public sealed record ReadingResidual(string MeasurementId, double AngleDegrees, double LevelDb);

/// <summary>An engine as a source of sound.</summary>
/// <param name="Id">Id of the engine.</param>
/// <param name="Place">Middle of the nozzle's exit.</param>
/// <param name="ExhaustHeadingDegrees">Heading the exhaust blows to.</param>
/// <param name="HeightMetres">Height of the source above ground.</param>
/// <param name="States">Throttle states in the order of the sheet, states only measured after them.</param>
public sealed record EngineSound(
    string Id,
    PlanPoint Place,
    double ExhaustHeadingDegrees,
    double HeightMetres,
    ValueList<StateSound> States
)
{
    /// <summary>The sound of a state, or null when the sheet has no such state.</summary>
    public StateSound? State(string stateId) => States.FirstOrDefault(s => s.StateId == stateId);
}
