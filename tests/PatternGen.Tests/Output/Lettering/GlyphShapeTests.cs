namespace PatternGen.Tests.Output;

/// <summary>What holds for the shape of every character.</summary>
public sealed class GlyphShapeTests
{
    [Fact]
    public void Every_promised_character_has_a_shape_of_its_own()
    {
        var unknown = Signature("\u0001");

        ShapesWhere(shape => Signature(shape) == unknown).ShouldBeEmpty();
    }

    [Fact]
    public void Characters_that_look_different_are_drawn_differently()
    {
        // The same shapes under two names.
        string[] alike = ["Ð Đ", ", ‚"];

        var twins = Characters
            .All.GroupBy(character => Signature(character.ToString()))
            .Where(group => group.Count() > 1)
            .Select(group => string.Join(' ', group))
            .Except(alike);

        twins.ShouldBeEmpty();
    }

    [Fact]
    public void Every_stroke_lies_within_the_box() =>
        ShapesWhere(shape =>
                Lettering
                    .Strokes(shape, 1)
                    .Any(stroke => !Lettering.Box(shape, 1).Contains(stroke.Extents))
            )
            .ShouldBeEmpty();

    [Fact]
    public void Every_character_keeps_clear_of_its_neighbours_places() =>
        ShapesWhere(shape =>
            {
                var ink = Ink(shape);
                return ink.Min.X < 0.02 || ink.Max.X > Lettering.Width(shape, 1) - 0.02;
            })
            .ShouldBeEmpty();

    [Fact]
    public void No_segment_is_empty() =>
        ShapesWhere(shape => Segments(shape).Any(segment => !(segment.Length > 1e-3)))
            .ShouldBeEmpty();

    [Fact]
    public void No_segment_runs_along_another() =>
        ShapesWhere(shape =>
            {
                var segments = Segments(shape);
                return segments
                    .SelectMany((segment, i) => segments.Skip(i + 1), (a, b) => a.Intersect(b))
                    .Any(meeting => meeting.Kind == IntersectionKind.Overlapping);
            })
            .ShouldBeEmpty();

    [Fact]
    public void Accented_letters_keep_the_strokes_of_their_letter() =>
        AccentMarks
            .All.SelectMany(mark => mark.Letters.Split(' '))
            .Where(pair => !Keeps(pair[0].ToString(), pair[1].ToString()))
            .ShouldBeEmpty();

    [Theory]
    [InlineData("Ø", "O")]
    [InlineData("ø", "o")]
    [InlineData("đ", "d")]
    [InlineData("Ħ", "H")]
    [InlineData("ŧ", "t")]
    [InlineData("ł", "l")]
    public void Stroked_letters_keep_the_strokes_of_their_letter(string stroked, string letter) =>
        Keeps(stroked, letter).ShouldBeTrue();

    [Fact]
    public void All_digits_are_equally_wide() =>
        Characters
            .Digits.Select(digit => Lettering.Width(digit.ToString(), 1))
            .Distinct()
            .Count()
            .ShouldBe(1);

    private static IEnumerable<string> ShapesWhere(Func<string, bool> isWrong) =>
        Characters.All.Select(character => character.ToString()).Where(isWrong);

    private static Segment[] Segments(string text) =>
        [.. Lettering.Strokes(text, 1).SelectMany(stroke => stroke.Segments)];

    private static Extents Ink(string text) =>
        Lettering
            .Strokes(text, 1)
            .Select(stroke => stroke.Extents)
            .Aggregate((all, stroke) => all.Including(stroke));

    private static string Signature(string text) => string.Join(';', Segments(text));

    /// <summary>Whether the accented letter begins with the strokes of the plain one, perhaps moved to the right.</summary>
    private static bool Keeps(string accented, string plain)
    {
        var (whole, part) = (Segments(accented), Segments(plain));
        var move = whole[0].Start - part[0].Start;
        return move.Y == 0
            && whole.Length > part.Length
            && part.Zip(whole)
                .All(pair => Same(pair.First.Transformed(Transform.Move(move)), pair.Second));
    }

    private static bool Same(Segment a, Segment b) =>
        a.Start.DistanceTo(b.Start) < 1e-12
        && a.End.DistanceTo(b.End) < 1e-12
        && Math.Abs(a.Bulge - b.Bulge) < 1e-12;
}
