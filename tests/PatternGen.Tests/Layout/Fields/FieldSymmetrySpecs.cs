namespace PatternGen.Tests.Layout.Fields;

/// <summary>
/// The symmetries that the lattices are said to have, found from the chips alone: the turns about centres of cells and
/// corners, of the wallpaper groups ("Wallpaper group", table of the seventeen groups).
/// </summary>
public class FieldSymmetrySpecs
{
    private static readonly Field Board = Field.Within(
        Contour.Rectangle(new(-70, -70), new(70, 70))
    );

    private static readonly double Root3 = Math.Sqrt(3);

    [Fact]
    public void Triangles_have_sixfold_corners_and_threefold_centres()
    {
        var field = new Chips(Board.Triangles(10).From(default));

        field.OrderAbout(new(0, 0)).ShouldBe(6);
        field.OrderAbout(new(5, 5 / Root3)).ShouldBe(3);
        field.OrderAbout(new(5, 0)).ShouldBe(2);
        field.IsKeptBy(new Vector(10, 0)).ShouldBeTrue();
        field.IsKeptBy(new Vector(5, 5 * Root3)).ShouldBeTrue();
        field.IsKeptBy(new Vector(5, 0)).ShouldBeFalse();
        // Only those that point up: no half turn is left.
        var up = new Chips(Board.Triangles(10).From(default).Carve(CellScheme.Checkerboard, 0));
        up.OrderAbout(new(0, 0)).ShouldBe(3);
        up.OrderAbout(new(5, 5 / Root3)).ShouldBe(3);
        up.OrderAbout(new(5, 0)).ShouldBe(1);
    }

    [Fact]
    public void Squares_have_fourfold_corners_and_centres()
    {
        var field = new Chips(Board.Squares(10).From(default));

        field.OrderAbout(new(0, 0)).ShouldBe(4);
        field.OrderAbout(new(5, 5)).ShouldBe(4);
        field.OrderAbout(new(5, 0)).ShouldBe(2);
        field.IsKeptBy(new Vector(10, 0)).ShouldBeTrue();
        // A chessboard repeats along its slanting rows.
        var chess = new Chips(Board.Squares(10).From(default).Carve(CellScheme.Checkerboard, 0));
        chess.IsKeptBy(new Vector(10, 0)).ShouldBeFalse();
        chess.IsKeptBy(new Vector(10, 10)).ShouldBeTrue();
        chess.OrderAbout(new(0, 0)).ShouldBe(2);
        chess.OrderAbout(new(5, 5)).ShouldBe(4);
    }

    [Fact]
    public void Diamonds_have_half_turns()
    {
        var field = new Chips(Board.Diamonds(10, 16).From(default));

        field.OrderAbout(new(0, 0)).ShouldBe(2);
        field.OrderAbout(new(0, 8)).ShouldBe(2);
        field.OrderAbout(new(2.5, 4)).ShouldBe(2);
        field.IsKeptBy(new Vector(5, 8)).ShouldBeTrue();
        field.IsKeptBy(new Vector(5, 0)).ShouldBeFalse();
    }

    [Fact]
    public void Hexagons_have_sixfold_centres_and_threefold_corners()
    {
        var field = new Chips(Board.Hexagons(6).From(default));

        field.OrderAbout(new(0, 0)).ShouldBe(3);
        field.OrderAbout(new(3, 3 * Root3)).ShouldBe(6);
        field.OrderAbout(new(3, 0)).ShouldBe(2);
        field.IsKeptBy(new Vector(9, 3 * Root3)).ShouldBeTrue();
        field.IsKeptBy(new Vector(0, 6 * Root3)).ShouldBeTrue();
    }

    [Theory]
    [InlineData(CircleParts.Petals)]
    [InlineData(CircleParts.Between)]
    [InlineData(CircleParts.Both)]
    public void Circles_have_sixfold_or_fourfold_points_where_petals_meet(CircleParts parts)
    {
        var field = new Chips(Board.Circles(16, parts: parts).From(default));
        field.OrderAbout(new(0, 0)).ShouldBe(6);
        field.OrderAbout(new(8, 8 / Root3)).ShouldBe(3);
        field.IsKeptBy(new Vector(16, 0)).ShouldBeTrue();

        var square = new Chips(
            Board.Circles(10 / Math.Sqrt(2), CircleGrid.Square, parts).From(default)
        );
        square.OrderAbout(new(0, 0)).ShouldBe(4);
        square.OrderAbout(new(5, 5)).ShouldBe(4);
        square.IsKeptBy(new Vector(10, 0)).ShouldBeTrue();
        square.IsKeptBy(new Vector(5, 5)).ShouldBeFalse();
    }

    [Fact]
    public void Scales_are_only_alike_left_and_right()
    {
        var field = new Chips(Board.Scales(12, 5).From(default));

        field.OrderAbout(new(0, 5)).ShouldBe(1);
        field.IsKeptBy(new Vector(6, 5)).ShouldBeTrue();
        field.IsKeptBy(new Vector(6, 0)).ShouldBeFalse();
        field.IsMirroredAt(0).ShouldBeTrue();
        field.IsMirroredAt(1).ShouldBeFalse();
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void Basket_weave_has_quarter_turns_about_corners(int strips)
    {
        var side = 4 * strips;
        var field = new Chips(Board.BasketWeave(4, strips).From(default));

        field.OrderAbout(new(0, 0)).ShouldBe(4);
        field.OrderAbout(new(side / 2.0, side / 2.0)).ShouldBe(2);
        field.IsKeptBy(new Vector(side, side)).ShouldBeTrue();
        field.IsKeptBy(new Vector(side, 0)).ShouldBeFalse();
    }

    [Fact]
    public void Hourglasses_have_quarter_turns_about_corners_if_they_turn_and_half_turns_if_not()
    {
        var byTurns = new Chips(Board.Hourglasses(10).From(default));
        byTurns.OrderAbout(new(0, 0)).ShouldBe(4);
        byTurns.OrderAbout(new(5, 5)).ShouldBe(2);
        byTurns.IsKeptBy(new Vector(10, 10)).ShouldBeTrue();
        byTurns.IsKeptBy(new Vector(10, 0)).ShouldBeFalse();

        foreach (var turn in (HourglassTurn[])[HourglassTurn.Upright, HourglassTurn.Level])
        {
            var alike = new Chips(Board.Hourglasses(10, 8, turn).From(default));
            alike.OrderAbout(new(5, 4)).ShouldBe(2);
            alike.OrderAbout(new(0, 0)).ShouldBe(2);
            alike.IsKeptBy(new Vector(10, 0)).ShouldBeTrue();
            alike.IsKeptBy(new Vector(0, 8)).ShouldBeTrue();
        }
    }

    [Fact]
    public void Petals_of_three_directions_are_told_apart_by_turns()
    {
        var field = new Chips(Board.Circles(16).From(default).Carve(CellScheme.ThreeByTurns, 0));

        field.OrderAbout(new(0, 0)).ShouldBe(2);
        field.IsKeptBy(new Vector(16, 0)).ShouldBeTrue();
    }

    /// <summary>A field as marks on its chips: corners with the middles of sides and centres of gravity.</summary>
    private sealed class Chips(Pattern field)
    {
        /// <summary>Marks this near to the middle stay on the board, whatever is done to them.</summary>
        private const double Inner = 30;

        private readonly HashSet<(long, long, int)> _marks =
        [
            .. field
                .Chips.SelectMany(chip => Marks(chip.Outline))
                .Select(mark => Key(mark.At, mark.Kind)),
        ];

        private readonly (Point At, int Kind)[] _inner =
        [
            .. field
                .Chips.SelectMany(chip => Marks(chip.Outline))
                .Where(mark => mark.At.DistanceTo(Point.Origin) < Inner),
        ];

        /// <summary>The most-fold turn about a point that keeps all.</summary>
        internal int OrderAbout(Point centre) =>
            ((int[])[6, 4, 3, 2]).FirstOrDefault(
                order => IsKept(Transform.Rotate(Angle.OfTurn(1.0 / order), centre)),
                1
            );

        internal bool IsKeptBy(Vector move) => IsKept(Transform.Move(move));

        internal bool IsMirroredAt(double x) => IsKept(Transform.MirrorLeftRight(x));

        private bool IsKept(Transform transform) =>
            _inner.Length > 20
            && Array.TrueForAll(_inner, mark => Holds(transform.Apply(mark.At), mark.Kind));

        private bool Holds(Point at, int kind)
        {
            for (var dx = -1; dx <= 1; dx++)
            for (var dy = -1; dy <= 1; dy++)
            {
                var (x, y, _) = Key(at, kind);
                if (_marks.Contains((x + dx, y + dy, kind)))
                    return true;
            }
            return false;
        }

        private static (long, long, int) Key(Point at, int kind) =>
            ((long)Math.Round(at.X * 1e6), (long)Math.Round(at.Y * 1e6), kind);

        private static IEnumerable<(Point At, int Kind)> Marks(Contour outline) =>
            outline
                .Segments.SelectMany(side => ((Point, int)[])[(side.Start, 0), (side.Middle, 1)])
                .Append((outline.Centroid, 2));
    }
}
