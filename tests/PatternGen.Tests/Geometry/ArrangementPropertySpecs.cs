using CsCheck;
using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

/// <summary>What must hold of the arrangement of any drawing.</summary>
public class ArrangementPropertySpecs
{
    [Fact]
    public void Any_drawing_is_sound() =>
        ArrangementDraw
            .Drawing(200)
            .Sample(
                curves =>
                {
                    Sound(curves);
                },
                iter: 20,
                print: Draw.Print
            );

    [Fact]
    public void A_drawing_in_which_all_coincides_is_sound() =>
        ArrangementDraw.GridDrawing.Sample(
            curves =>
            {
                Sound(curves);
            },
            iter: 300,
            print: Draw.Print
        );

    [Fact]
    public void A_drawing_moved_turned_and_scaled_has_the_same_faces() =>
        Gen.Select(ArrangementDraw.GridDrawing, ArrangementDraw.Turn)
            .Sample(
                (curves, transform) =>
                    ShouldBeTheSame(
                        Sound(curves),
                        Sound(curves.Select(curve => curve.Transformed(transform))),
                        transform.Scale
                    ),
                iter: 200,
                print: Draw.Print
            );

    [Fact]
    public void The_order_of_curves_does_not_matter() =>
        ArrangementDraw.GridDrawing.Sample(
            curves =>
            {
                var ordered = Sound(curves);
                ShouldBeTheSame(ordered, Sound(curves.Reverse()));
                ShouldBeTheSame(ordered, Sound(curves.OrderBy(curve => curve.Length)));
            },
            iter: 100,
            print: Draw.Print
        );

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-2)]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(37)]
    [InlineData(1e4)]
    public void The_size_of_a_figure_does_not_matter(double scale)
    {
        // A figure's extent over the least merge distance must be left far above 1.
        ShouldBeTheSame(Sound(RosetteAndRim(12)), Sound(RosetteAndRim(12, 40 * scale)), scale);
        ShouldBeTheSame(
            Sound(PolygonWithDiagonals(12)),
            Sound(PolygonWithDiagonals(12, 40 * scale)),
            scale
        );
    }

    [Fact]
    public void A_figure_turned_by_its_symmetry_is_the_same()
    {
        foreach (var n in (int[])[3, 5, 6, 7, 12, 24])
        {
            var figure = Sound(RosetteAndRim(n));
            for (var i = 1; i < n; i++)
            {
                var turn = Transform.Rotate(Angle.OfTurn((double)i / n));
                ShouldBeTheSame(figure, Sound(RosetteAndRim(n).Select(c => c.Transformed(turn))));
            }
        }
    }

    [Fact]
    public void A_figure_far_from_the_origin_is_the_same()
    {
        var move = Transform.Move(9e5, -7e5);
        ShouldBeTheSame(
            Sound(RosetteAndRim(12)),
            Sound(RosetteAndRim(12).Select(circle => circle.Transformed(move)))
        );
    }
}
