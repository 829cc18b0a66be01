using System.Reflection;
using System.Runtime.CompilerServices;

namespace ShowSafety.Core.Tests.House;

/// <summary>Rules on the shape of types: what can change, what can be inherited from.</summary>
internal static class Shapes
{
    private const BindingFlags Members =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Type[] Growing = [typeof(List<>), typeof(Dictionary<,>), typeof(HashSet<>)];

    /// <summary>Types written by hand: what the compiler makes for lambdas and iterators follows other rules.</summary>
    public static IEnumerable<Type> Written(Assembly assembly) =>
        assembly.GetTypes().Where(type => !IsMadeByCompiler(type));

    /// <summary>Public members whose value can change after the object was made.</summary>
    public static IEnumerable<string> Changeable(IEnumerable<Type> types) =>
        types.Where(type => type.IsVisible && !type.IsEnum).SelectMany(ChangeableMembers);

    /// <summary>Structs that are not readonly.</summary>
    public static IEnumerable<string> LooseStructs(IEnumerable<Type> types) =>
        types
            .Where(type => type.IsValueType && !type.IsEnum && !type.IsDefined(typeof(IsReadOnlyAttribute), false))
            .Select(type => type.FullName!);

    /// <summary>Classes that are neither sealed, abstract nor static.</summary>
    public static IEnumerable<string> OpenClasses(IEnumerable<Type> types) =>
        types.Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract).Select(type => type.FullName!);

    private static bool IsMadeByCompiler(Type type) =>
        type.IsDefined(typeof(CompilerGeneratedAttribute), false)
        || type.Name.StartsWith('<')
        || (type.DeclaringType is { } outer && IsMadeByCompiler(outer));

    private static IEnumerable<string> ChangeableMembers(Type type)
    {
        var settable = type.GetProperties(Members).Where(p => p.SetMethod is { IsPublic: true } && !IsInit(p));
        var assignable = type.GetFields(Members).Where(f => f is { IsInitOnly: false, IsLiteral: false });
        var open = type.GetProperties(Members).Where(p => CanChangeInside(p.PropertyType));
        var openFields = type.GetFields(Members).Where(f => CanChangeInside(f.FieldType));
        return settable
            .Concat<MemberInfo>(assignable)
            .Concat(open)
            .Concat(openFields)
            .Select(member => $"{type.FullName}.{member.Name}");
    }

    private static bool IsInit(PropertyInfo property) =>
        property.SetMethod!.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static bool CanChangeInside(Type type) =>
        type.IsArray || (type.IsGenericType && Growing.Contains(type.GetGenericTypeDefinition()));
}
