using System.Text;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>The lint finds every seeded fault, and nothing in the file before the fault was sown.</summary>
public partial class DxfLintTests
{
    [Theory]
    [MemberData(nameof(R2000Faults))]
    public void A_fault_is_found(string fault, string find, string replace, string finding)
    {
        var clean = Clean(DxfVersion.R2000);

        var broken = Replace(clean, find, replace);

        DxfLint
            .Check(broken)
            .ShouldContain(text => text.StartsWith(finding, StringComparison.Ordinal), fault);
    }

    [Theory]
    [InlineData("8 CHIPS|66 1|", "66 1|8 CHIPS|", "order")]
    [InlineData("0 SEQEND|8 CHIPS|0 ENDSEC|", "0 SEQEND|8 CUTS|0 ENDSEC|", "layer")]
    [InlineData("2 BLOCKS|", "2 OBJECTS|", "section")]
    [InlineData("42 0.1|", "42 2|", "bulge")]
    public void A_fault_of_release_12_is_found(string find, string replace, string finding)
    {
        var broken = Replace(Clean(DxfVersion.R12), find, replace);

        DxfLint
            .Check(broken)
            .ShouldContain(text => text.StartsWith(finding, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(DxfVersion.R2000)]
    [InlineData(DxfVersion.R12)]
    public void Nothing_is_found_in_a_clean_file(DxfVersion version) =>
        DxfLint.Check(Clean(version)).ShouldBeEmpty();

    [Fact]
    public void A_bare_line_feed_is_found()
    {
        var text = Encoding.ASCII.GetString(Clean(DxfVersion.R2000));

        DxfLint
            .Check(Encoding.ASCII.GetBytes(text.Replace("HEADER\r\n", "HEADER\n")))
            .ShouldContain("text: a line does not end in CR LF");
    }

    [Fact]
    public void Sides_that_chips_share_are_found_unless_they_are_wanted()
    {
        var squares = Pattern.OfChips(Contour.Rectangle(new(0, 0), new(2, 2))).Repeated(2, 2);
        var file = DxfSamples.Write(squares);

        DxfLint.Check(file).ShouldHaveSingleItem().ShouldStartWith("overlap: 2 mm on CHIPS");
        DxfLint.Check(file, mayShareSides: true).ShouldBeEmpty();
    }

    [Fact]
    public void The_common_part_of_two_arcs_is_found()
    {
        // Quarter circles of radius 2 about the origin, the second one turned by 45°: π/2 mm in common.
        var quarter = new Contour([new(2, 0, Math.Tan(Math.PI / 8)), new(0, 2), new(0, 0)]);
        var turned = quarter.Transformed(Transform.Rotate(45));

        var findings = DxfLint.Check(DxfSamples.Write(Pattern.OfChips(quarter, turned)));

        findings.ShouldHaveSingleItem().ShouldStartWith("overlap: 1.57079");
    }

    private static byte[] Clean(DxfVersion version) =>
        DxfSamples.Write(
            Pattern
                .OfChips(DxfSamples.Triangle)
                .With(Pattern.OfChips(DxfSamples.Triangle).Moved(20, 0))
                .With(
                    Pattern.OfLayoutLines(
                        Chain.Line(new(0, 10), new(50, 10)),
                        Chain.Line(new(0, 12), new(50, 12)),
                        Chain.Line(new(0, 14), new(60, 14))
                    )
                ),
            SaveOptions.Default.WithDxfVersion(version)
        );

    private static byte[] Replace(byte[] file, string find, string replace)
    {
        var text = Encoding.Latin1.GetString(file);
        text.ShouldContain(AsLines(find));
        var at = text.IndexOf(AsLines(find), StringComparison.Ordinal);
        var rest = text[(at + AsLines(find).Length)..];
        return Encoding.Latin1.GetBytes(text[..at] + AsLines(replace) + rest);
    }

    /// <summary>Turns "10 0|20 10|" into the lines of a file; the first space of a group parts code from value.</summary>
    private static string AsLines(string groups) =>
        string.Concat(
            groups
                .Split('|', StringSplitOptions.RemoveEmptyEntries)
                .Select(group => string.Join("\r\n", group.Split(' ', 2)) + "\r\n")
        );
}
