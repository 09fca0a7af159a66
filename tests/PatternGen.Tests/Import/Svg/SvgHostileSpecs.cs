using System.IO.Compression;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>Files that were made to hurt: each ends soon, in one clear error.</summary>
public sealed class SvgHostileSpecs
{
    private static string Repeat(string text, int count) =>
        new StringBuilder(text.Length * count).Insert(0, text, count).ToString();

    public static TheoryData<string> Doctypes =>
        [
            """<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]><svg><path d="&x;"/></svg>""",
            """<!DOCTYPE svg [<!ENTITY % x SYSTEM "http://127.0.0.1:9/x.dtd">%x;]><svg/>""",
            """<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;">]><svg><title>&c;</title></svg>""",
            """<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd"><svg/>""",
        ];

    [Theory]
    [MemberData(nameof(Doctypes))]
    public void A_document_type_is_refused(string svg)
    {
        var error = Refused(svg);
        error.Message.ShouldContain("document type");
        error.Remedies[0].ShouldContain("<!DOCTYPE");
    }

    [Fact]
    public void Of_a_file_without_a_document_type_none_is_told() =>
        Refused("<svg><g></svg>").Message.ShouldNotContain("DOCTYPE");

    [Fact]
    public void Nothing_outside_is_opened()
    {
        using var server = new TcpListener(IPAddress.Loopback, 0);
        server.Start();
        var url = $"http://127.0.0.1:{((IPEndPoint)server.LocalEndpoint).Port}/x";
        var drawing = Svgs.Read(
            $"""
            <?xml-stylesheet type="text/css" href="{url}.css"?>
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="9mm" height="9mm" viewBox="0 0 9 9" xml:base="{url}">
            <style>@import url({url}.css); @font-face {"{"}src: url({url}.woff){"}"}</style>
            <image href="{url}.png" width="9" height="9"/><image xlink:href="{url}.svg"/><use href="{url}.svg#a"/>
            <linearGradient id="g" xlink:href="{url}.svg#g"/><text><tref xlink:href="{url}.svg#t"/></text>
            <rect width="9" height="9" fill="url({url}#f)" filter="url({url}#f)" mask="url({url}#m)" style="marker:url({url}#m)"/>
            <script href="{url}.js"/><a href="{url}"><circle r="1"/></a></svg>
            """
        );
        drawing.Contours.Count.ShouldBe(2);
        server.Pending().ShouldBeFalse();
    }

    [Fact]
    public void References_that_would_draw_a_thousand_million_elements_are_refused()
    {
        var svg = new StringBuilder(
            """<svg width="9mm" height="9mm"><rect id="r0" width="1" height="1"/>"""
        );
        for (var level = 1; level <= 9; level++)
            svg.Append($"<g id=\"r{level}\">")
                .Insert(svg.Length, $"<use href=\"#r{level - 1}\"/>", 10)
                .Append("</g>");
        Refused(svg.Append("</svg>").ToString()).Message.ShouldContain("1000000 elements");
    }

    [Theory]
    [InlineData("""<use id="a" href="#a"/>""")]
    [InlineData("""<g id="a"><g><use href="#a"/></g></g>""")]
    [InlineData("""<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>""")]
    [InlineData("""<defs><symbol id="a"><use href="#a"/></symbol></defs>""")]
    public void A_circle_of_references_is_refused(string content) =>
        Refused($"<svg>{content}</svg>").Message.ShouldContain("refers to itself");

    [Fact]
    public void A_long_chain_of_references_is_refused()
    {
        var svg = new StringBuilder("<svg><g id=\"r0\"/>");
        for (var i = 1; i < 100_000; i++)
            svg.Append($"<use id=\"r{i}\" href=\"#r{i - 1}\"/>");
        Refused(svg.Append("</svg>").ToString()).Message.ShouldContain("64 levels");
    }

    [Theory]
    [InlineData("g")]
    [InlineData("x:y")]
    [InlineData("text")]
    [InlineData("title")]
    [InlineData("svg")]
    public void A_hundred_thousand_levels_are_refused(string element) =>
        Refused(
            """<svg xmlns:x="urn:x">"""
                + Repeat($"<{element}>", 100_000)
                + Repeat($"</{element}>", 100_000)
                + "</svg>"
        )
            .Message.ShouldContain("64 levels");

    [Fact]
    public void Too_many_elements_are_refused()
    {
        var settings = ImportSettings.Default.WithLimits(ImportLimits.Default.WithElements(1000));
        Refused($"<svg>{Repeat("<g/>", 1000)}</svg>", settings)
            .Message.ShouldContain("1000 elements");
        Refused($"<svg><text>{Repeat("<tspan/>", 1000)}</text></svg>", settings)
            .Message.ShouldContain("1000 elements");
        Svgs.Read($"<svg>{Repeat("<g/>", 999)}</svg>", settings).Contours.ShouldBeEmpty();
    }

    [Fact]
    public void A_file_too_large_is_refused()
    {
        var settings = ImportSettings.Default.WithLimits(ImportLimits.Default.WithBytes(10_000));
        Refused($"<svg><!--{new string('x', 20_000)}--></svg>", settings)
            .Message.ShouldContain("10000 bytes");
        Refused($"<svg id=\"{new string('x', 20_000)}\"/>", settings)
            .Message.ShouldContain("10000 bytes");
    }

    [Fact]
    public void A_path_of_millions_of_commands_is_refused() =>
        Refused(Svgs.Sheet($"<path d=\"M0 0{Repeat("L1 1", 4_000_000)}\"/>"))
            .Message.ShouldContain("4000000 segments");

    [Theory]
    [InlineData("path", "d", "M0 0", "L1 1")]
    [InlineData("polyline", "points", "0 0 ", "1 1 ")]
    public void Paths_share_the_limit_of_segments_even_where_nothing_shows_them(
        string element,
        string attribute,
        string start,
        string again
    )
    {
        var settings = ImportSettings.Default.WithLimits(ImportLimits.Default.WithSegments(1000));
        var shape = $"<{element} {attribute}=\"{start}{Repeat(again, 499)}\"/>";
        Svgs.Read($"<svg>{shape}<defs>{shape}</defs></svg>", settings).ShouldNotBeNull();
        Refused($"<svg>{shape}<defs>{shape}{shape}</defs></svg>", settings)
            .Message.ShouldContain("1000 segments");
    }

    [Fact]
    public void A_tag_with_thousands_of_attributes_is_refused() =>
        Refused(
            $"<svg><g {string.Concat(Enumerable.Range(0, 2000).Select(i => $"a{i}='' "))}/></svg>"
        )
            .Message.ShouldContain("1000 attributes");

    [Fact]
    public void A_tag_of_a_hundred_million_bytes_is_refused()
    {
        using var endless = new Dxf.EndlessStream("<svg><path d='", "          ");
        Should
            .Throw<ImportException>(() => Import.Drawing(endless, FileFormat.Svg))
            .Message.ShouldContain("67108864 bytes");
    }

    [Fact]
    public void Quotes_that_are_no_attributes_are_not_counted() =>
        Svgs.Read(
                Svgs.Sheet(
                    $"<!-- it's \" --><desc>{Repeat("don't \"", 2000)}</desc>{Repeat("<circle r='5'/>", 2000)}"
                )
            )
            .Contours.ShouldHaveSingleItem();

    [Theory]
    [InlineData("path", "d", "M0 0")]
    [InlineData("g", "transform", "scale(1)")]
    [InlineData("svg", "viewBox", "1 ")]
    [InlineData("polyline", "points", "0 ")]
    [InlineData("rect", "width", "0")]
    [InlineData("g", "style", "display:inline;")]
    [InlineData("g", "class", "a ")]
    [InlineData("g", "aria-label", "xx")]
    [InlineData("use", "href", "##")]
    public void A_huge_attribute_ends_well(string element, string attribute, string value) =>
        EndsWell(
            Encoding.UTF8.GetBytes(
                $"<svg><{element} {attribute}=\"{Repeat(value, 1_000_000)}\"/></svg>"
            )
        );

    [Fact]
    public void A_file_cut_off_anywhere_is_an_error_with_its_line()
    {
        var whole = Encoding.UTF8.GetBytes(
            Svgs.Sheet(
                """
                <style>.a{display:none}</style><g id="a" transform="rotate(30)"><title>A</title>
                <path d="M1 1a1 1 0 001 1z"/><use href="#b"/></g><circle id="b" r="3"/>
                """
            )
        );
        for (var length = 0; length < whole.Length; length++)
            Should.Throw<ImportException>(() => Svgs.Read(whole[..length]));
        Should.Throw<ImportException>(() => Svgs.Read(whole[..^10])).Where.ShouldBe("line 2");
        Svgs.Read(whole).Contours.Count.ShouldBe(3);
    }

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("<html><svg/></html>")]
    [InlineData("""<svg xmlns="urn:other"/>""")]
    [InlineData("<svg>")]
    [InlineData("<svg/><svg/>")]
    [InlineData("<svg>&nbsp;</svg>")]
    [InlineData("<svg a='1' a='2'/>")]
    [InlineData("""<?xml version="1.0" encoding="no-such"?><svg/>""")]
    [InlineData("""<?xml version="1.0" encoding="utf-16"?><svg/>""")]
    public void What_is_no_SVG_is_refused(string text) => Refused(text).Remedies.ShouldNotBeEmpty();

    [Fact]
    public void Every_encoding_of_XML_can_be_read()
    {
        const string Text =
            """<?xml version="1.0"?><svg><circle id="ø" r="3"/><use href="#ø"/></svg>""";
        foreach (
            var encoding in new[] { Encoding.UTF8, Encoding.Unicode, Encoding.BigEndianUnicode }
        )
            Svgs.Read([.. encoding.GetPreamble(), .. encoding.GetBytes(Text)])
                .Contours.ShouldNotBeEmpty();
        var latin = Text.Replace(
            "1.0\"?",
            "1.0\" encoding=\"iso-8859-1\"?",
            StringComparison.Ordinal
        );
        Svgs.Read(Encoding.Latin1.GetBytes(latin)).Contours.ShouldNotBeEmpty();
        // Not UTF-8, as a file is that says nothing.
        Should.Throw<ImportException>(() => Svgs.Read(Encoding.Latin1.GetBytes(Text)));
    }

    [Fact]
    public void A_compressed_file_is_refused_with_what_to_do()
    {
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            zip.Write("<svg/>"u8);
        Should
            .Throw<ImportException>(() => Svgs.Read(packed.ToArray()))
            .Remedies[0]
            .ShouldContain("unpacked");
    }

    [Theory]
    [InlineData(
        """<svg width="1e30mm" height="1e30mm" viewBox="0 0 1 1"><rect width="1" height="1"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm" viewBox="0 0 1e-30 1e-30"><rect width="1" height="1"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm" viewBox="0 0 1e30 1e30"><circle r="1e29"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm"><g transform="scale(1e30)"><g transform="scale(1e30)"><path d="M1 1L2 2"/></g></g></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm"><path d="M0 0A1e-30 1e30 1e30 1 1 5 5A1e30 1e30 0 1 1 5 6C1e6 1e6 0 0 1 1"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm"><path transform="scale(0 1)" d="M0 0A1 2 3 1 1 5 5C1 6 0 0 1 1z"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm"><path transform="skewX(90)" d="M0 0A1 2 3 1 1 5 5C1 6 0 0 1 1z"/></svg>"""
    )]
    [InlineData(
        """<svg width="9mm" height="9mm"><ellipse rx="1e-9" ry="3000"/><circle r="1e-20"/></svg>"""
    )]
    public void Absurd_numbers_end_well(string svg) => EndsWell(Encoding.UTF8.GetBytes(svg));

    [Fact]
    public void A_stream_of_mine_stays_open()
    {
        using var file = new MemoryStream("<svg/>"u8.ToArray());
        PatternGen.Import.Drawing(file, FileFormat.Svg);
        file.CanRead.ShouldBeTrue();
    }

    /// <summary>Reads it, or refuses it in the one way.</summary>
    internal static void EndsWell(byte[] svg)
    {
        try
        {
            Svgs.Read(svg).ShouldNotBeNull();
        }
        catch (ImportException refusal)
        {
            refusal.Message.ShouldNotBeNullOrWhiteSpace();
        }
    }

    private static ImportException Refused(string svg, ImportSettings? settings = null) =>
        Should.Throw<ImportException>(() => Svgs.Read(svg, settings));
}
