using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ShowSafety.Brief.Typesetting;

/// <summary>
/// Makes a written file the same each time. The PDF library draws lots for the prefixes of its font subsets, for the
/// identifiers in the metadata and for the second half of the file identifier. Each is replaced by one of the same
/// length, in order of appearance or from the file's own contents, so that no offset in the file moves.
/// </summary>
internal static partial class PdfPinning
{
    public static byte[] Pin(byte[] pdf)
    {
        // Latin-1 maps every byte to one character and back.
        string text = Encoding.Latin1.GetString(pdf);
        var prefixes = new Dictionary<string, string>(StringComparer.Ordinal);
        text = SubsetPrefix()
            .Replace(
                text,
                match =>
                {
                    string drawn = match.Groups["prefix"].Value;
                    prefixes.TryAdd(drawn, Prefix(prefixes.Count));
                    return $"/{prefixes[drawn]}+";
                }
            );
        text = Uuid().Replace(text, "uuid:" + Guid.Empty);
        text = FileIdentifier().Replace(text, match => Blank(match.Value));
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        text = Uuid().Replace(text, "uuid:" + Guid.ParseExact(hash[..32], "N"));
        text = FileIdentifier().Replace(text, $"/ID [<{hash[..32]}><{hash[..32]}>]");
        return Encoding.Latin1.GetBytes(text);
    }

    private static string Blank(string identifier) => HexDigit().Replace(identifier, "0");

    private static string Prefix(int number)
    {
        char[] letters = new char[6];
        for (int i = letters.Length - 1; i >= 0; i--)
        {
            letters[i] = (char)('A' + (number % 26));
            number /= 26;
        }

        return new string(letters);
    }

    [GeneratedRegex(@"/(?<prefix>[A-Z]{6})\+(?=Source)", RegexOptions.CultureInvariant)]
    private static partial Regex SubsetPrefix();

    [GeneratedRegex(
        "(?<=<xmpMM:(Document|Instance)ID>)uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}"
    )]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID ?\[<[0-9A-Fa-f]{32}><[0-9A-Fa-f]{32}>\]")]
    private static partial Regex FileIdentifier();

    [GeneratedRegex("(?<=<[0-9A-Fa-f]*)[0-9A-Fa-f]")]
    private static partial Regex HexDigit();
}
