using System.Globalization;
using PatternGen.Tests.Compass;

namespace PatternGen.Tests.Output.Keys;

public class DrawingKeySpecs
{
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(12)]
    public void Each_part_has_its_orbit_number_inside(int n)
    {
        var drawing = Figures.Of(Figures.Petals(n));
        var key = drawing.Key();

        foreach (var part in drawing.Parts.Where(part => part.Clearance > 2.5))
        {
            var label = key.Labels.Single(label =>
                Centre(label).DistanceTo(part.InsidePoint) < 1e-9
            );
            label.Text.ShouldBe($"{part.Orbit}");
            foreach (var stroke in label.Strokes())
            foreach (var vertex in stroke.Vertices)
                part.Outline.Locate(vertex.Point).ShouldBe(Containment.Inside);
        }
        foreach (var orbit in Enumerable.Range(1, drawing.OrbitCount))
            key.Labels.ShouldContain(label => label.Text == $"{orbit}");
        key.Labels.ShouldAllBe(label => label.Height >= 1.6 && label.Height <= 4);
        key.ChipCount.ShouldBe(0);
    }

    [Fact]
    public void Small_parts_are_numbered_beside_the_figure()
    {
        var drawing = Figures.Of(Figures.Petals(24, radius: 20));
        var key = drawing.Key();

        var small = Enumerable
            .Range(1, drawing.OrbitCount)
            .Where(orbit => drawing.OrbitParts(orbit)[0].Clearance < 0.8)
            .ToList();
        small.ShouldNotBeEmpty();
        var beside = key.Labels.Where(label => label.At.X > drawing.Extents.Max.X).ToList();
        small.ShouldBeSubsetOf(
            beside.Select(label => int.Parse(label.Text, CultureInfo.InvariantCulture))
        );
        foreach (var one in beside)
            beside.ShouldAllBe(other =>
                other == one || Math.Abs(other.At.Y - one.At.Y) > 1.5 * one.Height
            );
        // The lines of the figure, and for each number beside it a way with a ring at its end.
        key.LayoutLines.Count.ShouldBe(25 + 2 * beside.Count);
        foreach (var orbit in small)
            key.LayoutLines.Any(line => drawing.OrbitParts(orbit).Any(part => RoundIn(line, part)))
                .ShouldBeTrue();

        static bool RoundIn(Chain line, DrawingPart part) =>
            line.Start.DistanceTo(line.End) < 1e-9
            && line.Vertices.All(v => part.Outline.Locate(v.Point) == Containment.Inside);
    }

    [Fact]
    public void Parts_that_stay_ground_have_no_number()
    {
        var key = Figures.RingOfCells(6).Key();

        key.Labels.Count.ShouldBe(6);
        key.Labels.ShouldAllBe(label => label.Text == "2");
        key.Caption()[0].ShouldBe("Compass drawing 80 × 80 mm, orbits numbered");
    }

    private static Point Centre(Label label) =>
        label.At + new Vector(Lettering.Width(label.Text, label.Height) / 2, label.Height / 2);

    [Fact]
    public void The_key_of_designs_has_the_numbers_of_their_ids()
    {
        var designs = Rosette.Overlaid(2, 6, 40).AllDesigns(Symmetry.TurnsOf(6));
        var numbers = designs.Key().Labels.Select(label => label.Text).Distinct().ToHashSet();

        // All that may be carved, and nothing else: the first is the plain disc.
        numbers.ShouldBe(["2", "3", "4", "5", "6", "7"], ignoreOrder: true);
        designs.First().Id.ShouldBe("t6-2");
    }
}
