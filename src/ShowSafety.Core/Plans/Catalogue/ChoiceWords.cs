using System.Collections.Concurrent;
using System.Collections.Frozen;
using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Plans;

/// <summary>The words a choice is written with, and the values they stand for.</summary>
internal sealed class ChoiceWords
{
    private static readonly ConcurrentDictionary<Type, ChoiceWords> Known = new();

    private readonly FrozenDictionary<string, object> _values;
    private readonly FrozenDictionary<object, string> _words;

    private ChoiceWords(Type type)
    {
        Name = FieldCatalogue.CamelCase(type.Name);
        object[] values = [.. Enum.GetValues(type).Cast<object>().Where(MayBeWritten)];
        Words = values.Select(WordOf).ToValueList();
        _values = values.ToFrozenDictionary(WordOf, value => value, StringComparer.Ordinal);
        _words = values.ToFrozenDictionary(value => value, WordOf);
    }

    /// <summary>Name of the choice.</summary>
    public string Name { get; }

    /// <summary>The words, in order.</summary>
    public ValueList<string> Words { get; }

    /// <summary>The words of an enumeration.</summary>
    public static ChoiceWords Of(Type type) => Known.GetOrAdd(type, static t => new ChoiceWords(t));

    /// <summary>The value a word stands for, or null.</summary>
    public object? ValueOf(string word) => _values.GetValueOrDefault(word);

    /// <summary>The word for a value.</summary>
    public string WordFor(object value) => _words.GetValueOrDefault(value) ?? WordOf(value);

    private static string WordOf(object value) => FieldCatalogue.CamelCase(value.ToString()!);

    // A calculated value is never an input: a plan that claims one has been made up by hand.
    private static bool MayBeWritten(object value) => value is not Pedigree.Calculated;
}
