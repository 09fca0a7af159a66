using System.Text;
using System.Text.RegularExpressions;

namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    /// <summary>Longest value: 255 characters in release 12, 2049 in release 2000.</summary>
    private int LongestValue => IsR12 ? 255 : 2049;

    private void CheckText()
    {
        var text = Encoding.Latin1.GetString(_file);
        Require(_file.All(value => value is < 0x80), "text: not ASCII");
        Require(!Regex.IsMatch(text, @"(?<!\r)\n|\r(?!\n)"), "text: a line does not end in CR LF");
        Require(
            text.EndsWith("0\r\nEOF\r\n", StringComparison.Ordinal),
            "text: does not end in EOF"
        );
        foreach (var group in _document.Groups)
        {
            Require(group.Value.Length <= LongestValue, $"text: long value at line {group.Line}");
            if (IsReal(group.Code))
                Require(
                    Regex.IsMatch(group.Value, @"^(?!-0(\.0+)?$)-?\d+(\.\d+)?$"),
                    $"number: '{group.Value}' at line {group.Line} is not in fixed point"
                );
        }
    }

    /// <summary>Codes of floating-point values: DXF Reference, group code value types.</summary>
    private static bool IsReal(int code) => code is (>= 10 and <= 59) or (>= 140 and <= 149);
}
