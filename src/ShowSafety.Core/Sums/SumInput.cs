using ShowSafety.Core.Measures;

namespace ShowSafety.Core.Sums;

/// <summary>Checked inputs of a worked sum: every parameter has a value in its range.</summary>
public sealed class SumInput
{
    private readonly Dictionary<string, ValueList<double>> _numbers;
    private readonly Dictionary<string, string> _words;

    internal SumInput(Dictionary<string, ValueList<double>> numbers, Dictionary<string, string> words)
    {
        _numbers = numbers;
        _words = words;
    }

    /// <summary>The number of a parameter, in its unit.</summary>
    public double Number(string key) => _numbers[key][0];

    /// <summary>The numbers of a list parameter, in its unit.</summary>
    public ValueList<double> Numbers(string key) => _numbers[key];

    /// <summary>Eight numbers as octave bands.</summary>
    public BandValues Bands(string key) => BandValues.Of(_numbers[key]);

    /// <summary>The word of a parameter that takes words.</summary>
    public string Word(string key) => _words[key];
}
