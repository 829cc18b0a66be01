namespace ShowSafety.Core.Gate;

/// <summary>What decides whether an engine may run at all: permissions, evidence, restraint, means of stopping.</summary>
public sealed record GateAssessment : RoomAssessment;
