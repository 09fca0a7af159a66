using System.Text;

namespace PatternGen;

/// <summary>Names of values in files for programs: <c>LargestFirst</c> is <c>largest-first</c>.</summary>
internal static class CodeNames
{
    internal static string Of<T>(T value)
        where T : struct, Enum
    {
        var code = new StringBuilder();
        foreach (var letter in value.ToString())
        {
            if (char.IsAsciiLetterUpper(letter) && code.Length > 0)
                code.Append('-');
            code.Append(char.ToLowerInvariant(letter));
        }
        return code.ToString();
    }
}
