using System.Text;
using CsCheck;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>Files with bytes, numbers and tags out of place: each is read or refused in the one way.</summary>
public sealed class SvgFuzzSpecs
{
    private static readonly string[] Words =
    [
        "NaN",
        "1e400",
        "-1e30",
        "1e-30",
        "0",
        "100%",
        "#a",
        "<g>",
        "</g>",
        "<use href='#a'/>",
        "\"",
        "&amp;",
        "&#0;",
        "none",
        "matrix(",
        ")",
        "A",
        "a1 1 0 00",
        "C1 1",
        "z",
        "M",
        "<!--",
        "<![CDATA[",
        "]]>",
        "<!DOCTYPE",
        "mm",
        "T9 9",
        "<title>",
        "<svg viewBox='0 0 1 1'>",
        "<style>",
        "{",
        "}",
        "scale(0)",
        "url(http://127.0.0.1:9)",
        "\uFFFF",
        "2147483648",
    ];

    private static readonly string[] Good =
    [
        Svgs.Sheet(
            """<g id="a" transform="translate(3 4) rotate(30)"><path d="M1 1a1 2 30 0 1 5 5c1 2 3 4 5 6s7-8 9 0q1 2 3 4t5 6h3v-2z"/></g><use href="#a" x="5" width="10%"/>"""
        ),
        Svgs.Sheet(
            """<style>.h{display:none}</style><symbol id="s" viewBox="0 0 10 10" preserveAspectRatio="xMinYMax slice"><circle cx="5" cy="5" r="4" class="h"/><ellipse rx="3" ry="2"/></symbol><use href="#s" width="40" height="20"/><text>T</text>"""
        ),
        """<svg width="4in" height="72pt" viewBox="-5 -5 90 60"><title>x</title><svg x="1mm" y="2%" width="9pt" height="3"><rect x="1" y="2" width="30" height="20" rx="4"/></svg><polygon points="1,2 3,4 5-6"/><polyline style="visibility:hidden" points="1 2 3 4"/><line x2="5"/></svg>""",
        """<svg><defs><g id="p"><path d="M0 0A5 5 0 11 3 3z"/></g></defs><switch><foreignObject/><use href="#p" transform="matrix(1 2 3 4 5 6),skewX(9)scale(2)"/></switch><image href="x.png"/></svg>""",
    ];

    private static readonly Gen<Func<byte[], byte[]>> Change = Gen.OneOf<Func<byte[], byte[]>>(
        Gen.Select(
            Gen.Double.Unit,
            Gen.Byte,
            (at, value) => (Func<byte[], byte[]>)(file => Replaced(file, at, 1, [value]))
        ),
        Gen.Select(
            Gen.Double.Unit,
            Gen.Int[0, 40],
            (at, count) => (Func<byte[], byte[]>)(file => Replaced(file, at, count, []))
        ),
        Gen.Select(
            Gen.Double.Unit,
            Gen.Int[0, 8],
            OneOf(Words),
            (at, count, word) =>
                (Func<byte[], byte[]>)(
                    file => Replaced(file, at, count, Encoding.UTF8.GetBytes(word))
                )
        ),
        Gen.Select(
            Gen.Double.Unit,
            Gen.Double.Unit,
            Gen.Int[1, 60],
            (at, from, count) =>
                (Func<byte[], byte[]>)(file => Replaced(file, at, 0, Part(file, from, count)))
        ),
        Gen.Select(
            Gen.Double.Unit,
            Gen.Double,
            (at, number) =>
                (Func<byte[], byte[]>)(
                    file =>
                        NumberReplaced(
                            file,
                            at,
                            number.ToString("R", System.Globalization.CultureInfo.InvariantCulture)
                        )
                )
        )
    );

    [Fact]
    public void A_damaged_file_is_read_or_refused() =>
        Gen.Select(OneOf(Good), Change.Array[1, 6])
            .Select(
                (file, changes) =>
                    changes.Aggregate(
                        Encoding.UTF8.GetBytes(file),
                        (bytes, change) => change(bytes)
                    )
            )
            .Sample(SvgHostileSpecs.EndsWell, iter: Cases(0.8), print: Encoding.UTF8.GetString);

    [Fact]
    public void Random_bytes_are_read_or_refused() =>
        Gen.Byte.Array[0, 200].Sample(SvgHostileSpecs.EndsWell, iter: Cases(0.1));

    /// <summary>Path data of the right letters and numbers in any order.</summary>
    [Fact]
    public void Any_path_data_is_read_or_refused() =>
        Gen.Select(
                OneOf(
                    "M",
                    "m",
                    "L",
                    "h",
                    "V",
                    "C",
                    "c",
                    "S",
                    "Q",
                    "t",
                    "A",
                    "a",
                    "z",
                    "0",
                    "1",
                    "1 ",
                    ".5",
                    "-3",
                    "1e2",
                    "7.25",
                    ",",
                    " ",
                    "e"
                ).Array[0, 60],
                words => Svgs.Sheet($"<path d=\"M5 5 {string.Concat(words)}\"/>")
            )
            .Sample(svg => SvgHostileSpecs.EndsWell(Encoding.UTF8.GetBytes(svg)), iter: Cases(0.1));

    private static long Cases(double share) => (long)(share * Fuzz.Cases);

    private static Gen<string> OneOf(params string[] texts) =>
        Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static byte[] Part(byte[] file, double from, int count)
    {
        var start = (int)(from * file.Length);
        return file[start..Math.Min(file.Length, start + count)];
    }

    private static byte[] Replaced(byte[] file, double at, int count, byte[] by)
    {
        var start = (int)(at * file.Length);
        return [.. file[..start], .. by, .. file[Math.Min(file.Length, start + count)..]];
    }

    private static byte[] NumberReplaced(byte[] file, double at, string by)
    {
        var start = (int)(at * file.Length);
        while (start < file.Length && !char.IsAsciiDigit((char)file[start]))
            start++;
        var end = start;
        while (end < file.Length && (char.IsAsciiDigit((char)file[end]) || file[end] == '.'))
            end++;
        return [.. file[..start], .. Encoding.ASCII.GetBytes(by), .. file[end..]];
    }
}
