using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;

namespace ShowSafety.Core.Tests.House;

/// <summary>Compares public types and members with the documentation file of their assembly.</summary>
internal sealed class Documented
{
    private const BindingFlags Members =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private readonly List<string> ids;
    private readonly HashSet<(string Type, string Parameter)> parameters;

    /// <summary>Reads the file beside the assembly.</summary>
    public Documented(Assembly assembly)
    {
        var file = XDocument.Load(Path.ChangeExtension(assembly.Location, ".xml"));
        var members = file.Descendants("member").ToList();
        ids = [.. members.Where(Says).Select(Id)];
        parameters =
        [
            .. members.SelectMany(
                m => m.Elements("param").Where(HasText),
                (m, p) => (Id(m), p.Attribute("name")!.Value)
            ),
        ];
    }

    /// <summary>Public types and members without a description.</summary>
    public IEnumerable<string> Missing(IEnumerable<Type> types) => types.Where(t => t.IsVisible).SelectMany(MissingIn);

    private IEnumerable<string> MissingIn(Type type)
    {
        var name = type.FullName!.Replace('+', '.');
        var self = ids.Contains($"T:{name}") ? [] : new[] { name };
        var members = type.GetMembers(Members)
            .Where(member => IsWritten(member, type))
            .GroupBy(member => member.Name)
            .Where(group => Count(group.First(), name) < group.Count() && !IsPositional(group.First(), name))
            .Select(group => $"{name}.{group.Key}");
        return self.Concat(members);
    }

    // Identifiers of methods carry the types of their parameters. Counting the documented overloads of a name and
    // comparing with the existing ones spares writing that notation a second time.
    private int Count(MemberInfo member, string type)
    {
        var kind = member switch
        {
            PropertyInfo => 'P',
            FieldInfo => 'F',
            EventInfo => 'E',
            _ => 'M',
        };
        var start = $"{kind}:{type}.{member.Name.Replace('.', '#')}";
        return ids.Count(id =>
            id.StartsWith(start, StringComparison.Ordinal)
            && (id.Length == start.Length || id[start.Length] is '(' or '`' or '~')
        );
    }

    private bool IsPositional(MemberInfo member, string type) =>
        member is PropertyInfo && parameters.Contains(($"T:{type}", member.Name));

    private static bool IsWritten(MemberInfo member, Type type) =>
        !member.IsDefined(typeof(CompilerGeneratedAttribute), false)
        && member switch
        {
            Type => false,
            // The parameters of a constructor are described, or missed, with the members they fill.
            ConstructorInfo => false,
            // How a delegate is called is the compiler's; what it means stands with its type.
            MethodInfo method => !typeof(Delegate).IsAssignableFrom(type)
                && !IsAccessor(method, type)
                && method.GetBaseDefinition() == method,
            FieldInfo field => !field.Attributes.HasFlag(FieldAttributes.SpecialName),
            _ => true,
        };

    private static bool IsAccessor(MethodInfo method, Type type) =>
        type.GetProperties(Members).Any(p => p.GetMethod == method || p.SetMethod == method)
        || type.GetEvents(Members).Any(e => e.AddMethod == method || e.RemoveMethod == method);

    private static string Id(XElement member) => member.Attribute("name")!.Value;

    private static bool Says(XElement member) =>
        member.Element("inheritdoc") is not null || (member.Element("summary") is { } summary && HasText(summary));

    private static bool HasText(XElement element) => element.HasElements || !string.IsNullOrWhiteSpace(element.Value);
}
