using System.Text.RegularExpressions;

namespace PatternGen.Tests.Patterns;

/// <summary>What the steps of a compass drawing say. The sentences are written down here before they are printed.</summary>
public partial class CompassSentenceSpecs
{
    [Fact]
    public void Six_petals_are_told_in_six_sentences() =>
        Told(pencil =>
            {
                var tips = pencil.DivideCircle(Rim(pencil), 6);
                pencil.Arcs(tips, [.. tips.Skip(1), tips[0]], [tips[^1], .. tips.SkipLast(1)]);
            })
            .ShouldBe([
                "Mark A, the point to begin from.",
                "Set the compass to 40 mm.",
                "With the point on A, draw a circle.",
                "Mark 1 on the 40 mm circle about A, at its top.",
                "Starting at 1, step six times round the 40 mm circle about A and mark 2 to 6; the sixth step comes back to 1.",
                "With the point on each of 1 to 6 in turn, draw an arc through A, from one of 1 to 6 to another.",
            ]);

    [Fact]
    public void A_division_without_a_construction_tells_setting_and_closing_error() =>
        Told(pencil => pencil.DivideCircle(Rim(pencil), 9))
            .Skip(4)
            .ShouldBe([
                // 80 sin 20° = 27.3616; (18 asin(27.4 / 80) - 2π) × 40 = 0.3677, and with 27.25 it is -1.0687.
                "Set the dividers to 27.36 mm for nine equal parts.",
                "Starting at 1, step nine times round the 40 mm circle about A and mark 2 to 9; the ninth step should come back to 1, and ends 0.37 mm past it at 27.4 mm, 1.07 mm short of it at 27.25 mm; stepped on a circle 2 times as large at 54.75 mm and brought in along the radii, it misses by 0.13 mm.",
            ]);

    [Fact]
    public void Two_readings_that_give_one_setting_are_told_once() =>
        // 60 sin 12° = 12.4747; (30 asin(12.5 / 60) - 2π) × 30 = 0.3880.
        Told(pencil =>
            {
                var centre = pencil.Mark(0, 0);
                pencil.SetRadius(30);
                pencil.DivideCircle(pencil.Circle(centre), 15);
            })
            .Last()
            .ShouldEndWith(
                "should come back to 1, and ends 0.39 mm past it at 12.5 mm; stepped on a circle 7 times as large at 87.25 mm and brought in along the radii, it misses by 0.16 mm."
            );

    [Fact]
    public void A_needle_beside_the_work_asks_for_scrap_wood() =>
        Told(pencil =>
            {
                var rim = Rim(pencil);
                pencil.WorkWithin(rim);
                pencil.SetRadius(50);
                pencil.Circle(pencil.Mark(-60, 0));
                pencil.Circle(pencil.Mark(0, -40));
            })
            .Skip(4)
            .ShouldBe([
                "Mark B, 60 mm to the left from A.",
                "With the point on B, draw a circle; where the point stands outside the 40 mm circle about A, lay scrap wood of the same thickness beside the piece for it.",
                "Mark C, 40 mm down from A.",
                "With the point on C, draw a circle.",
            ]);

    [Fact]
    public void Lines_crossings_and_lengths_are_told_too() =>
        Told(pencil =>
            {
                var rim = Rim(pencil);
                var a = pencil.MarkOn(rim, Angle.FromDegrees(0));
                var b = pencil.Mark(0, 40);
                var line = pencil.Join(a, b);
                pencil.Join([a], [b], PencilLine.Guide);
                pencil.DivideLine(a, b, 4);
                pencil.SetRadius(a, b);
                pencil.Bisect(a, b);
                pencil.Cut(a, line);
                pencil.CrossArcs(a, b, LineSide.Right);
                pencil.Perpendicular(line, a);
            })
            .Skip(3)
            .ShouldBe([
                "Mark 1 on the 40 mm circle about A, at its right.",
                "Mark B, 40 mm up from A.",
                "Draw straight from 1 to B.",
                "Draw faintly from 1 to B.",
                // A quarter of 40 √2, and all of it.
                "Set the dividers to 14.14 mm, step from 1 to B in four steps, and mark C, D and E on the way.",
                "Set the compass from 1 to B, 56.57 mm.",
                "With the compass at 56.57 mm, draw short arcs from 1 and from B that cross on both sides; draw a faint line through both crossings, and mark D halfway from 1 to B.",
                "With the point on 1, cut the line from 1 to B, and mark B there.",
                "With the compass at 56.57 mm, draw short arcs from both ends of the way from 1 to B, and mark F where they cross, on the right of the way.",
                "With the point on 1, cut the line from 1 to B on both sides, open the compass to the distance of the cuts, draw arcs from both that cross on both sides, and draw a line through 1 and the crossings.",
            ]);

    [Fact]
    public void Every_step_of_every_division_is_one_sentence_without_gaps()
    {
        for (var count = 2; count <= 36; count++)
            Told(pencil => pencil.DivideCircle(Rim(pencil), count))
                .ShouldAllBe(sentence => OneSentence().IsMatch(sentence));
    }

    [Fact]
    public void Other_words_can_take_the_place_of_these()
    {
        var drawing = CompassDrawing.Of(pencil => Rim(pencil));

        drawing.Instructions[1].Sentence(new Terse()).ShouldBe("SetRadius 40");
        Should.Throw<ArgumentNullException>(() => CompassSentences.Sentence(null!));
    }

    private static IEnumerable<string> Told(Action<Pencil> draw) =>
        CompassDrawing.Of(draw).Instructions.Select(step => step.Sentence());

    private static DrawnCurve Rim(Pencil pencil)
    {
        var centre = pencil.Mark(0, 0);
        pencil.SetRadius(40);
        return pencil.Circle(centre);
    }

    [GeneratedRegex(@"^[A-Z](?!.*(  | ,|\.\.|, ,| ;|mm mm))[^\r\n]*[^ ]\.$")]
    private static partial Regex OneSentence();

    private sealed class Terse : Wording
    {
        public override string Step(CompassStep step) =>
            $"{step.Kind} {Number(step.Setting!.Value, 0)}";
    }
}
