using System.Globalization;
using System.Xml.Linq;
using PatternGen.Tests.Carving.Plan;
using PatternGen.Tests.Output.Dxf;

namespace PatternGen.Tests.Output.Schedules;

public class NumberedSpecs
{
    [Fact]
    public void Each_chip_has_its_number_within_it()
    {
        foreach (
            var plan in (CarvingPlan[])[Plans.Of(Plans.Combined), Plans.Of(Plans.Rail).ByPasses()]
        )
        {
            var labels = plan.Numbered().Labels;

            labels.Count.ShouldBe(plan.Chips.Count);
            for (var i = 0; i < labels.Count; i++)
            {
                var chip = plan.Chips[i].Chip;
                labels[i].Text.ShouldBe((i + 1).ToString(CultureInfo.InvariantCulture));
                // The room of the digits: they reach neither above capitals nor below the line.
                var (at, height) = (labels[i].At, labels[i].Height);
                var far = at + new Vector(Lettering.Width(labels[i].Text, height), height);
                foreach (var corner in Contour.Rectangle(at, far).Vertices)
                    chip.Outline.Locate(corner.Point).ShouldBe(Containment.Inside);
            }
        }
    }

    [Fact]
    public void A_dxf_has_the_numbers_on_the_layer_of_labels()
    {
        var stream = new MemoryStream();
        Plans.Of(Plans.Petals).Numbered().Save(stream, FileFormat.Dxf, For.Machine);

        var layers = DxfDocument.Parse(stream.ToArray()).Entities.Select(entity => entity.Layer);

        layers.ShouldContain("LABELS");
    }

    [Fact]
    public void The_drawing_tells_each_number_and_draws_each_cut()
    {
        var plan = Plans.Of(Plans.Wreath).With(Technique.StabAndSlice);

        var svg = Drawn(plan);

        var groups = svg.Descendants()
            .Where(element => element.Name.LocalName == "g")
            .ToDictionary(group => group.Attribute("id")!.Value);
        groups["numbers"]
            .Elements()
            .Select(path => path.Attribute("aria-label")!.Value)
            .ShouldBe(
                Enumerable
                    .Range(1, 18)
                    .Select(number => number.ToString(CultureInfo.InvariantCulture))
            );
        string[] tones = ["cuts-1", "cuts-2", "cuts-3"];
        tones.Sum(tone => groups[tone].Elements().Count()).ShouldBe(plan.Strokes.Count);
    }

    /// <summary>The arrows of neighbours stay in their chips: no shaft comes nearer to another chip than to its own middle.</summary>
    [Fact]
    public void Arrows_stay_in_their_chips()
    {
        foreach (var plan in Plans.AllWays(Plans.Combined))
        foreach (var cut in plan.Strokes)
        {
            var (shaft, _) = StrokeArrow.Of(cut);
            for (var i = 0; i <= 8; i++)
            {
                var point = shaft.PointAt(shaft.Length * i / 8);
                var chip = cut.Chip.Chip;
                chip.Outline.Locate(point).ShouldBe(Containment.Inside, $"{cut}");
                chip.Holes.ShouldAllBe(hole => hole.Locate(point) != Containment.Inside);
            }
        }
    }

    [Fact]
    public void A_drawing_of_small_chips_is_enlarged_and_says_so()
    {
        var text = Drawn(Plans.Of(Plans.Rail)).ToString();

        text.ShouldContain("times as large as the piece");
    }

    [Fact]
    public void There_is_nothing_to_draw_of_an_empty_pattern()
    {
        var stream = new MemoryStream();

        Should.Throw<PatternException>(() => Plans.Of(Pattern.Empty).Sheet().Save(stream));
        stream.Length.ShouldBe(0);
        Should.Throw<ArgumentException>(() => Plans.Of(Plans.Petals).Sheet().Save("order.dxf"));
    }

    private static XDocument Drawn(CarvingPlan plan)
    {
        var stream = new MemoryStream();
        plan.Sheet().Save(stream);
        stream.Position = 0;
        return XDocument.Load(stream);
    }
}
