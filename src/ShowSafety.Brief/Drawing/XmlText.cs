using System.Xml;

namespace ShowSafety.Brief.Drawing;

/// <summary>Text as XML 1.0 may carry it: characters it forbids become the replacement character.</summary>
internal static class XmlText
{
    public static string Clean(string text)
    {
        char[] clean = text.ToCharArray();
        for (int i = 0; i < clean.Length; i++)
        {
            if (i + 1 < clean.Length && XmlConvert.IsXmlSurrogatePair(clean[i + 1], clean[i]))
            {
                i++;
            }
            else if (!XmlConvert.IsXmlChar(clean[i]))
            {
                clean[i] = '\uFFFD';
            }
        }

        return new string(clean);
    }
}
