using System.Security.Cryptography;

namespace ShowSafety.Core.Plans;

/// <summary>Writes plan files in their one canonical form, so that equal plans have equal bytes.</summary>
public static class PlanWriter
{
    /// <summary>The canonical UTF-8 bytes of a plan, which <see cref="PlanReader"/> reads back as an equal plan.</summary>
    public static byte[] Write(Plan plan) => CatalogueWriter.Write(plan);
}

/// <summary>The fingerprint of a plan: it names the version an output belongs to.</summary>
public static class PlanHash
{
    /// <summary>SHA-256 of the canonical bytes, 64 lower-case hexadecimal digits.</summary>
    public static string Of(Plan plan) => Convert.ToHexStringLower(SHA256.HashData(PlanWriter.Write(plan)));
}
