using System.Globalization;
using System.Text.RegularExpressions;
using PatternGen.Tests.Geometry;

namespace PatternGen.Tests.Layout.Fields;

public partial class FieldTroubleSpecs
{
    private static readonly Field Disc = Field.Within(FieldOutlines.Disc);

    [Fact]
    public void Outlines_that_bound_nothing_are_refused()
    {
        Should.Throw<ArgumentException>(() => Field.Within(Region.Empty));
        Should.Throw<ArgumentNullException>(() => Field.Within((Contour)null!));
        Should.Throw<ArgumentNullException>(() => Field.Within((Region)null!));
        Should
            .Throw<PatternException>(() =>
                Field.Within(Contour.Polygon(new(0, 0), new(20, 20), new(20, 0), new(0, 20)))
            )
            .Place!.Value.DistanceTo(new(10, 10))
            .ShouldBeLessThan(1e-9);
        Should.Throw<PatternException>(() =>
            Field.Within(new Region(Shapes.Circle(10), Shapes.Circle(10, 5)))
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Sizes_that_are_none_are_refused(double size)
    {
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Triangles(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Squares(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Diamonds(size, 5));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Diamonds(5, size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Hexagons(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Circles(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Scales(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Scales(5, size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.BasketWeave(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Hourglasses(size));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Hourglasses(5, size));
    }

    [Fact]
    public void Settings_that_are_none_are_refused()
    {
        var field = Disc.Squares(10);

        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Scales(10, 5.1));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.BasketWeave(4, 0));
        Should.Throw<ArgumentOutOfRangeException>(() => Disc.Circles(4, (CircleGrid)7));
        Should.Throw<ArgumentOutOfRangeException>(() => field.BorderGap(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => field.RidgeGap(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => field.ClippedCells(-1));
        Should.Throw<ArgumentOutOfRangeException>(() => field.ShrunkCells(0));
        Should.Throw<ArgumentOutOfRangeException>(() => field.ShrunkCells(1.01));
        Should.Throw<ArgumentOutOfRangeException>(() => field.LatticeTurned(double.NaN));
        Should.Throw<ArgumentOutOfRangeException>(() => field.From(new(double.NaN, 0)));
        Should.Throw<ArgumentOutOfRangeException>(() => field.AlongSide(9));
        Should.Throw<ArgumentOutOfRangeException>(() => field.AlongSide(0, 1));
        Should.Throw<ArgumentOutOfRangeException>(() => field.Carve(CellScheme.Rows, 2));
        Should.Throw<ArgumentException>(() => field.Carve(CellScheme.Rows));
        Should.Throw<ArgumentOutOfRangeException>(() => field.Mirroring((CellScheme)9, 0));
        Should.Throw<ArgumentException>(() => field.Turning(CellScheme.Alike, 0, 90));
        Should.Throw<ArgumentException>(() => field.Turning(CellScheme.Rows));
        Should.Throw<ArgumentException>(() => field.Cells(Pattern.Empty));
        Should.Throw<ArgumentNullException>(() => field.Cells((Pattern)null!));
        Should.Throw<ArgumentNullException>(() => field.On(null!));
        Should.Throw<ArgumentOutOfRangeException>(() => field.Divided((CellDivision)5));
    }

    /// <summary>The size that the message names does work, and one a hundredth larger does not.</summary>
    [Fact]
    public void A_cell_larger_than_the_outline_is_refused_with_the_largest_that_would_fit()
    {
        foreach (
            var fill in (Func<Field, double, CarvedField>[])
                [
                    (field, size) => field.Triangles(size),
                    (field, size) => field.Squares(size),
                    (field, size) => field.Hexagons(size),
                    (field, size) => field.Circles(size),
                    (field, size) => field.Scales(size),
                ]
        )
        {
            var refused = Should.Throw<PatternException>(() => fill(Disc, 300).Fit);
            var largest = Number().Match(refused.Remedies[0]).Groups[1].Value;
            var size = double.Parse(largest, CultureInfo.InvariantCulture);
            fill(Disc, size).Fit.WholeCells.ShouldBeGreaterThan(0);
            Should.Throw<PatternException>(() => fill(Disc, size * 1.01).Fit);
        }
    }

    /// <summary>A square about the middle of a circle of radius 50 has sides of 50 √2 = 70.71068 mm at most.</summary>
    [Fact]
    public void The_largest_square_in_a_disc_is_the_one_in_its_circle() =>
        Should
            .Throw<PatternException>(() => Disc.Squares(71).Fit)
            .Remedies[0]
            .ShouldBe("squares of at most 70.7106 mm");

    [Fact]
    public void Absurd_numbers_of_cells_are_refused_before_any_is_made()
    {
        // 10,000 mm² of squares of 0.01 mm would be 100 million.
        var refused = Should.Throw<PatternException>(() => Disc.Squares(0.01).Fit);

        refused.Message.ShouldContain("100000000 cells");
        refused.Remedies[0].ShouldBe("cells of at least 0.1 mm");
        Should
            .Throw<PatternException>(() =>
                Field
                    .Within(Contour.Rectangle(new(0, 0), new(0.1, 0.1)))
                    .Squares(0.01)
                    .From(new(2e6, 0))
                    .Fit
            )
            .Place!.Value.X.ShouldBe(2e6, 1);
    }

    [Fact]
    public void Gaps_that_leave_nothing_are_refused_with_the_widest_that_would_do()
    {
        Should
            .Throw<PatternException>(() => Disc.Squares(10).BorderGap(50).Fit)
            .Remedies[0]
            .ShouldBe("a border gap of less than 50 mm");
        // The circle in a square of 10 mm.
        Should
            .Throw<PatternException>(() => Disc.Squares(10).RidgeGap(10).Fit)
            .Remedies[0]
            .ShouldBe("ridges narrower than 10 mm");
    }

    [Fact]
    public void A_motif_larger_than_its_cell_is_refused_with_the_scale_that_would_do()
    {
        var rosette = Rosette.Petals(6, 12).Carve(part => part.IsPetal);

        var refused = Should.Throw<PatternException>(() => Disc.Squares(20).Cells(rosette).Fit);

        var scale = double.Parse(
            Number().Match(refused.Remedies[0]).Groups[1].Value,
            CultureInfo.InvariantCulture
        );
        // Petals point right and left, where the cell leaves 10 mm of 12.
        scale.ShouldBe(10 / 12.0, 2e-3);
        Disc.Squares(20).Cells(rosette.Scaled(scale)).Fit.WholeCells.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Cells_are_divided_and_turned_only_as_they_allow()
    {
        Should.Throw<PatternException>(() =>
            Disc.Hourglasses(10).Divided(CellDivision.FromCentre).Fit
        );
        Should.Throw<PatternException>(() =>
            Disc.Triangles(10).Divided(CellDivision.EverySecondFromCentre).Fit
        );
        Should.Throw<PatternException>(() =>
            Disc.Squares(10)
                .Divided(CellDivision.EverySecondFromCentre)
                .Turning(CellScheme.Rows, 0, 45)
                .Fit
        );
    }

    [GeneratedRegex(@"([0-9.]+)(?: mm)?$")]
    private static partial Regex Number();
}
