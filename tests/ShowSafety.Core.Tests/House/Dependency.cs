namespace ShowSafety.Core.Tests.House;

/// <summary>One type of a room uses a type of another.</summary>
internal readonly record struct Dependency(string FromRoom, string FromType, string ToRoom, string ToType)
{
    public override string ToString() => $"{FromRoom} → {ToRoom}: {FromType} uses {ToType}";
}
