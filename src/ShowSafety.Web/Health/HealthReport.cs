namespace ShowSafety.Web.Health;

/// <summary>What the service says about itself.</summary>
/// <param name="Status"><c>healthy</c> while the service answers.</param>
/// <param name="Version">Version of the running program, without build metadata.</param>
internal sealed record HealthReport(string Status, string Version);
