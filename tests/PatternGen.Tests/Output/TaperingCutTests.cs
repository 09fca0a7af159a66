using PatternGen.Tests.Output.Svg;

namespace PatternGen.Tests.Output;

public class TaperingCutTests
{
    private static readonly Chain Line = Chain.Line(new(0, 0), new(20, 0));

    [Theory]
    [InlineData(FileFormat.Svg, For.Machine)]
    [InlineData(FileFormat.Svg, For.Paper)]
    [InlineData(FileFormat.Dxf, For.Machine)]
    public void A_machine_and_a_ruler_follow_the_centre_line_of_any_groove(
        FileFormat format,
        For purpose
    ) =>
        Written(LineCut.Tapering(Line, 2), format, purpose)
            .ShouldBe(Written(new LineCut(Line, 2), format, purpose));

    [Fact]
    public void A_tapering_groove_looks_as_it_is_cut()
    {
        // Between the tangents from both tips, T = 10 off, to the middle circle of radius r = 2: two kites of area r t with
        // t = √(T² - r²), and sectors of 4α in all, α = asin(r / T), of area 2α r².
        var outline = WrittenSvg
            .Of(Pattern.OfLineCuts(LineCut.Tapering(Line, 4)), For.Viewing)
            .Runs("line-cuts")
            .Single();
        Point[] around = [.. outline.SelectMany(piece => piece.Sample(100))];

        var area = 4 * Math.Sqrt(96) + 8 * Math.Asin(0.2);
        Contour.Polygon(around).Area.ShouldBe(area, 0.01);
        // A path of a fill of its own in a group that strokes.
        var path = WrittenSvg
            .Of(Pattern.OfLineCuts(LineCut.Tapering(Line, 4)), For.Viewing)
            .Paths("line-cuts")
            .Single();
        path.Attribute("stroke")!.Value.ShouldBe("none");
        path.Attribute("fill")!.Value.ShouldStartWith("#");
    }

    [Fact]
    public void A_scaled_groove_scales_its_taper()
    {
        var cut = Pattern
            .OfLineCuts(LineCut.Tapering(Line, 2, over: 5))
            .Scaled(3)
            .MirroredLeftRight()
            .LineCuts.Single();

        cut.Width.ShouldBe(6);
        cut.Profile.ShouldBe(GrooveProfile.TaperingOver(15));
        cut.CutWith(Knife.Held(45)).DepthAt(new(-7.5, 0)).ShouldBe(1.5, 1e-9);
        Pattern
            .OfLineCuts(LineCut.Tapering(Line, 2))
            .Repeated(2, 30)
            .LineCuts.ShouldAllBe(each => each.Profile == GrooveProfile.Tapering);
    }

    private static byte[] Written(LineCut cut, FileFormat format, For purpose)
    {
        using var stream = new MemoryStream();
        Pattern.OfLineCuts(cut).Save(stream, format, purpose);
        return stream.ToArray();
    }
}
