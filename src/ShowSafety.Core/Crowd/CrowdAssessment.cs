namespace ShowSafety.Core.Crowd;

/// <summary>The crowd: how many people have room, how they get out, what they can reach, how far they stand.</summary>
public sealed record CrowdAssessment : RoomAssessment;
