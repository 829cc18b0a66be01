namespace ShowSafety.Core.Plans;

/// <summary>One reason why a file was refused.</summary>
/// <param name="Pointer">Where, as a JSON Pointer (RFC 6901); empty for the whole file.</param>
/// <param name="Code">What kind of problem, one of <see cref="PlanProblemCodes"/>.</param>
/// <param name="Value">What stands there, shortened; null when nothing does.</param>
/// <param name="Allowed">What may stand there; null when nothing may.</param>
/// <param name="Text">The problem in one or two sentences.</param>
public sealed record PlanProblem(string Pointer, string Code, string? Value, string? Allowed, string Text);
