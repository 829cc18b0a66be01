namespace ShowSafety.Core.Tests.House.Samples;

/// <summary>Breaks no rule.</summary>
/// <param name="DistanceMetres">Documented here, as positional members are.</param>
public sealed record GoodRecord(double DistanceMetres)
{
    /// <summary>May be set while it is made.</summary>
    public string Name { get; init; } = "";

    /// <summary>Constants may be public.</summary>
    public const double One = 1;

    /// <summary>Adds.</summary>
    public double Add(double other) => DistanceMetres + other;

    /// <summary>Adds twice: an overload with a summary of its own.</summary>
    public double Add(double other, double another) => DistanceMetres + other + another;
}

/// <summary>Breaks no rule.</summary>
public readonly record struct GoodStruct
{
    /// <summary>Read only.</summary>
    public double Value { get; init; }
}

/// <summary>May be inherited from, and says so.</summary>
public abstract class GoodAbstract;

public sealed record NoDocs(double Metres)
{
    public double Documentless() => Metres;
}

/// <summary>One overload lacks its summary.</summary>
public static class OneOverloadWithoutDocs
{
    /// <summary>Has one.</summary>
    public static double Add(double a) => a;

    public static double Add(double a, double b) => a + b;
}

/// <summary>Positional member without a description.</summary>
public sealed record NoParamDocs(double Metres);

/// <summary>   </summary>
public static class BlankSummary;

/// <summary>A setter.</summary>
public sealed record SettableRecord
{
    /// <summary>Can change later.</summary>
    public double Metres { get; set; }
}

/// <summary>A field.</summary>
public sealed class FieldClass
{
    /// <summary>Can change later.</summary>
    public double Metres;
}

/// <summary>An array.</summary>
/// <param name="Metres">Elements can change later.</param>
public sealed record ArrayRecord(double[] Metres);

/// <summary>A list.</summary>
/// <param name="Metres">Can grow later.</param>
public sealed record ListRecord(List<double> Metres);

/// <summary>Not readonly.</summary>
public record struct LooseStruct(double Metres);

/// <summary>Neither sealed nor abstract.</summary>
public class OpenClass;
