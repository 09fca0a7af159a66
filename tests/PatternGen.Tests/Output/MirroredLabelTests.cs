namespace PatternGen.Tests.Output;

public class MirroredLabelTests
{
    private static readonly Label Level = new("mirr", new(3, -15), 2.5);

    public static TheoryData<double, double> Mirrors =>
        new MatrixTheoryData<double, double>([0, 20, 90, 135, 180, 270, 300], [0, 30, 45, 90, 150]);

    [Fact]
    public void Left_and_right_swapped_a_label_reads_to_the_right_and_ends_where_it_began()
    {
        var mirrored = Pattern.OfLabels(Level).MirroredLeftRight(0).Labels.Single();

        Degrees(mirrored).ShouldBe(0, 1e-9);
        var (before, after) = (Level.Box(), mirrored.Box());
        after.Min.X.ShouldBe(-before.Max.X, 1e-9);
        after.Max.X.ShouldBe(-before.Min.X, 1e-9);
        after.Min.Y.ShouldBe(before.Min.Y, 1e-9);
        after.Max.Y.ShouldBe(before.Max.Y, 1e-9);
    }

    [Fact]
    public void Top_and_bottom_swapped_a_label_reads_to_the_right_and_hangs()
    {
        var mirrored = Pattern.OfLabels(Level).MirroredTopBottom(0).Labels.Single();

        Degrees(mirrored).ShouldBe(0, 1e-9);
        var (before, after) = (Level.Box(), mirrored.Box());
        after.Min.X.ShouldBe(before.Min.X, 1e-9);
        after.Max.X.ShouldBe(before.Max.X, 1e-9);
        after.Min.Y.ShouldBe(-before.Max.Y, 1e-9);
        after.Max.Y.ShouldBe(-before.Min.Y, 1e-9);
    }

    /// <summary>A mirrored room is the room's four corners mirrored, which needs no lettering.</summary>
    [Theory]
    [MemberData(nameof(Mirrors))]
    public void However_it_lies_a_mirrored_label_fills_the_mirrored_room(double turn, double mirror)
    {
        var label = new Label("Agy", new(3, -15), 2.5, Angle.FromDegrees(turn));
        var way = Transform
            .Mirror(new(1, 2), Angle.FromDegrees(mirror))
            .Then(Transform.Resize(1.5));

        var mirrored = label.Transformed(way);

        var corners = Corners(mirrored).ToArray();
        foreach (var expected in Corners(label).Select(way.Apply))
            corners.Min(corner => corner.DistanceTo(expected)).ShouldBe(0, 1e-9);
        IsUpright(mirrored).ShouldBe(IsUpright(label));
    }

    [Theory]
    [MemberData(nameof(Mirrors))]
    public void Mirrored_back_a_label_lies_as_before(double turn, double mirror)
    {
        var label = new Label("Agy", new(3, -15), 2.5, Angle.FromDegrees(turn));
        var way = Transform.Mirror(new(1, 2), Angle.FromDegrees(mirror));

        var back = label.Transformed(way).Transformed(way);

        foreach (var (after, before) in back.Strokes().Zip(label.Strokes()))
            after.Start.DistanceTo(before.Start).ShouldBe(0, 1e-9);
    }

    [Fact]
    public void Letters_are_never_mirrored()
    {
        // The stem of an L is left of its foot's end, and the foot is below.
        var stroke = new Label("L", new(5, 5), 10)
            .Transformed(Transform.MirrorLeftRight())
            .Transformed(Transform.Move(100, 0))
            .Strokes()
            .Single();

        stroke.Start.Y.ShouldBeGreaterThan(stroke.End.Y);
        stroke.Start.X.ShouldBeLessThan(stroke.End.X);
    }

    /// <summary>Corners of the room that the text takes up, turned with it.</summary>
    private static IEnumerable<Point> Corners(Label label)
    {
        // Turned level about the origin, the label's box is its room exactly.
        var level = Transform.Rotate(-label.Turn);
        var box = label.Transformed(level).Box();
        Point[] corners = [box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y)];
        return corners.Select(level.Inverse().Apply);
    }

    private static bool IsUpright(Label label)
    {
        var degrees = Degrees(label);
        return degrees is > -90 + 1e-6 and < 90 + 1e-6;
    }

    private static double Degrees(Label label) =>
        Math.IEEERemainder(label.Turn.Degrees - 1e-7, 360) + 1e-7;
}
