using SkiaSharp;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>Path data, judged by an independent reader of it.</summary>
public sealed class SvgPathSpecs
{
    /// <summary>The forms that numbers and commands take in files, by the grammar of SVG 1.1, chapter on paths.</summary>
    public static TheoryData<string> Paths =>
        [
            "M10 10 L90 10 L90 60 Z",
            "m10 10 80 0 0 50z",
            "M10,10H90V60H10Z",
            "M 10 10 h 80 v 50 h -80 z m 100 0 h 80 v 50 h -80 z",
            "M10-10.5.5 20-5-5z",
            "M1e1 1E+1L9.0e1 100e-1 90 60z",
            "M10 10C40 -20 60 40 90 10L90 60L10 60Z",
            "M10 10c30-30 50 30 80 0s60 20 80 40v20h-160z",
            "M10 10S60 40 90 10T120 90z",
            "M10 80Q52.5 10 95 80T180 80V120H10Z",
            "M10 80q42.5-70 85 0t85 0v40h-170z",
            "M10 10 L50 10 Q60 10 60 20 C60 40 70 40 70 60 L10 60 Z M20 20 V50 H40 V20 Z",
            "M10 10 L90 10 L90 60 Z L0 30 L0 0 z",
            "M20 20a20 10 30 1 0 40 10a20 10 30 0 1-30 20z",
            "M100 100 A60 30 -45 0 1 160 140 A30 30 0 1 1 100 100Z",
            "M50 50A40 40 0 0 1 90 90L50 90z",
            "\n M10,10\t90 ,10\r\n90 60 , 10 60Z ",
        ];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_path_is_what_another_reader_sees(string data)
    {
        var drawing = Svgs.Path(data, ImportSettings.Default.WithAccuracy(0.001));
        using var path = SKPath.ParseSvgPathData(data).ShouldNotBeNull();
        var (area, length) = Measures(path);
        // y is turned over, and so is the sense. Edges that move by d take their length times d.
        var slack = Math.Max(0.05, length * 0.002);
        drawing.Contours.Sum(contour => contour.SignedArea).ShouldBe(-area, slack);
        (
            drawing.Contours.Sum(contour => contour.Length)
            + drawing.Chains.Sum(chain => chain.Length)
        ).ShouldBe(length, 1e-3 * length);
    }

    /// <summary>SVG 1.1, F.2: what comes before an error is drawn.</summary>
    [Theory]
    [InlineData("M10 10 L20 10 X30 30")]
    [InlineData("M10 10 L20 10 L30")]
    [InlineData("M10 10 L20 10 A5 5 0 2 0 30 30")]
    [InlineData("M10 10 L20 10 L NaN 3")]
    [InlineData("M10 10 L20 10 L1e400 3")]
    [InlineData("M10 10 20 10 z 5 5")]
    public void A_path_is_read_up_to_its_first_error_which_is_told(string data)
    {
        var drawing = Svgs.Path(data);
        drawing
            .Chains.ShouldHaveSingleItem()
            .End.DistanceTo(Svgs.At(20, 10))
            .ShouldBeLessThan(1e-4);
        var note = drawing.Notes.ShouldHaveSingleItem();
        note.Kind.ShouldBe(ImportNoteKind.Skipped);
        note.Where.ShouldBe("line 1");
    }

    [Fact]
    public void A_path_that_does_not_begin_with_a_move_draws_nothing() =>
        Svgs.Path("L10 10 20 20").Chains.ShouldBeEmpty();

    /// <summary>As read by the renderer: on points 0.02 apart, between which a curve rises less than 1e-5.</summary>
    private static (double Area, double Length) Measures(SKPath path)
    {
        using var measure = new SKPathMeasure(path, forceClosed: false, resScale: 1000);
        double area = 0;
        double length = 0;
        do
        {
            var points = new List<SKPoint>();
            var steps = (int)(measure.Length / 0.02) + 1;
            for (var i = 0; i <= steps; i++)
                points.Add(measure.GetPosition(measure.Length * i / steps));
            length += measure.Length;
            if (!measure.IsClosed)
                continue;
            for (var i = 0; i < points.Count; i++)
            {
                var next = points[(i + 1) % points.Count];
                area += ((double)points[i].X * next.Y - (double)next.X * points[i].Y) / 2;
            }
        } while (measure.NextContour());
        return (area, length);
    }
}
