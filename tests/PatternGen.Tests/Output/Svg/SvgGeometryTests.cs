using CsCheck;

namespace PatternGen.Tests.Output.Svg;

public class SvgGeometryTests
{
    private static readonly Gen<Vertex> Corners = Gen.Select(
        Gen.Double[-500, 500],
        Gen.Double[-500, 500],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[-1, 1], Gen.Double[-1e-5, 1e-5], Gen.Const(1.0)),
        (x, y, bulge) => new Vertex(x, y, bulge)
    );

    private static readonly Gen<Contour> Outlines = Corners
        .Array[3, 8]
        .Select(corners => new Contour(corners))
        .Where(outline => outline.Area > 1 && !outline.CrossesItself());

    [Fact]
    public void What_is_written_lies_within_two_thousandths_of_what_was_meant() =>
        Outlines
            .Select(Gen.Int[3, 9])
            .Sample(
                (outline, decimals) =>
                {
                    var file = Machine(outline, decimals);
                    var written = file.Runs("chips").Single();
                    var meant = outline.CounterClockwise();
                    var shift = Shift(file, meant);
                    foreach (var point in written.SelectMany(piece => piece.Sample(16)))
                        meant.DistanceTo(shift(point)).ShouldBeLessThan(0.002);
                },
                iter: 300
            );

    [Fact]
    public void Every_arc_turns_at_most_a_quarter_the_right_way() =>
        Outlines.Sample(
            outline =>
            {
                foreach (
                    var arc in Machine(outline, 6).Runs("chips").Single().Where(p => !p.IsLine)
                )
                {
                    arc.IsLarge.ShouldBeFalse();
                    // Ends and radius are rounded to the sixth decimal, which turns a small arc by more.
                    var rounding = 1e-4 + 1e-5 / arc.Radius;
                    Math.Abs(arc.Turn).ShouldBeLessThan(Math.PI / 2 + rounding);
                }
            },
            iter: 300
        );

    [Fact]
    public void Pieces_follow_on_and_none_is_without_length() =>
        Outlines
            .Select(Gen.Int[3, 9])
            .Sample(
                (outline, decimals) =>
                {
                    var run = Machine(outline, decimals).Runs("chips").Single();
                    for (var i = 0; i < run.Count; i++)
                    {
                        run[i].Start.ShouldNotBe(run[i].End);
                        run[i].End.ShouldBe(run[(i + 1) % run.Count].Start);
                    }
                },
                iter: 300
            );

    private static WrittenSvg Machine(Contour outline, int decimals) =>
        WrittenSvg.Of(
            Pattern.OfChips(outline),
            For.Machine,
            SaveOptions.Default.WithDecimals(decimals)
        );

    /// <summary>The sheet is centred on what it shows; this takes its points back to the pattern.</summary>
    private static Func<Point, Point> Shift(WrittenSvg file, Contour outline)
    {
        var centre = outline.Extents.Centre;
        return at => new(centre.X + at.X - file.Width / 2, centre.Y - at.Y + file.Height / 2);
    }
}
