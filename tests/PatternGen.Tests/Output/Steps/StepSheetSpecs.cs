using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace PatternGen.Tests.Output.Steps;

public partial class StepSheetSpecs
{
    private static readonly Rosette Twelve = Rosette.Petals(12, radius: 40);

    [Fact]
    public void Every_step_has_a_picture_that_readers_are_told_the_sentence_of()
    {
        var titles = Groups(Written(Twelve.Steps()))
            .Where(group => StepName().IsMatch(IdOf(group)))
            .Select(group => (string?)group.Element(group.Name.Namespace + "title"));

        titles.ShouldBe(Twelve.Instructions.Select(step => $"{step.Number}. {step.Sentence()}"));
    }

    [Fact]
    public void New_lines_are_drawn_stronger_than_those_before()
    {
        var groups = Groups(Written(Twelve.Steps())).ToDictionary(IdOf);
        var last = Twelve.Instructions[^1];
        last.Drawn.ShouldContain(drawn => drawn.Line == PencilLine.Drawn);

        Width($"step-{last.Number}-new-lines")
            .ShouldBeGreaterThan(Width($"step-{last.Number}-lines"));
        groups[$"step-{last.Number}-new-lines"]
            .Elements()
            .Count()
            .ShouldBe(last.Drawn.Count(drawn => drawn.Line == PencilLine.Drawn));

        double Width(string id) =>
            double.Parse(
                (string)groups[id].Attribute("stroke-width")!,
                CultureInfo.InvariantCulture
            );
    }

    [Theory]
    [InlineData(36)] // compass points at nearly six times the radius
    [InlineData(7)]
    public void Nothing_reaches_out_of_the_sheet(int petals)
    {
        var svg = Written(Rosette.Petals(petals, 40).Steps());
        var size = ((string)svg.Attribute("viewBox")!).Split(' ').Select(Number).ToArray();

        // Moves and lines: pairs of numbers.
        foreach (var path in svg.Descendants().Attributes("d"))
        foreach (Match place in Place().Matches(path.Value))
        {
            Number(place.Groups[1].Value).ShouldBeInRange(0, size[2]);
            Number(place.Groups[2].Value).ShouldBeInRange(0, size[3]);
        }
    }

    [Fact]
    public void A_guide_far_larger_than_the_figure_is_cut_off_at_the_picture()
    {
        var drawing = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(100_000);
            pencil.Circle(centre, PencilLine.Guide);
            pencil.SetRadius(1);
            pencil.Circle(centre);
        });

        Written(drawing.Steps()).ShouldNotBeNull();
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var texts = ((string[])["", "de-DE", "ar-SA"]).Select(culture =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                return Written(Rosette.Petals(9, 37.5).Steps()).ToString();
            });
            texts.Distinct().Count().ShouldBe(1);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Fewer_pictures_side_by_side_make_a_longer_sheet() =>
        Height(Twelve.Steps().WithColumns(2)).ShouldBeGreaterThan(Height(Twelve.Steps()));

    [Fact]
    public void It_is_saved_as_a_picture_only()
    {
        using var folder = new TemporaryFolder();
        var error = Should.Throw<ArgumentException>(() =>
            Twelve.Steps().Save(folder.File("s.dxf"))
        );

        error.Message.ShouldContain(".svg");
        folder.Names.ShouldBeEmpty();
        Should.Throw<ArgumentOutOfRangeException>(() => Twelve.Steps().WithColumns(0));
    }

    private static XElement Written(StepSheet sheet)
    {
        using var stream = new MemoryStream();
        sheet.Save(stream);
        stream.Position = 0;
        return XDocument.Load(stream).Root!;
    }

    private static IEnumerable<XElement> Groups(XElement svg) =>
        svg.Elements(svg.Name.Namespace + "g");

    private static string IdOf(XElement group) => (string)group.Attribute("id")!;

    private static double Height(StepSheet sheet) =>
        Number(((string)Written(sheet).Attribute("viewBox")!).Split(' ')[3]);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex("^step-[0-9]+$")]
    private static partial Regex StepName();

    [GeneratedRegex("[ML](-?[0-9.]+)[ ,](-?[0-9.]+)")]
    private static partial Regex Place();
}
