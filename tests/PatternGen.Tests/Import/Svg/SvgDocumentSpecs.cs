using System.Drawing;
using Svg;
using Svg.Pathing;
using Svg.Transforms;

namespace PatternGen.Tests.Importing.Svg;

/// <summary>Documents that a program has built or opened itself.</summary>
public sealed class SvgDocumentSpecs
{
    [Fact]
    public void I_can_read_a_document_that_I_built()
    {
        var document = new SvgDocument
        {
            Width = new SvgUnit(SvgUnitType.Millimeter, 100),
            Height = new SvgUnit(SvgUnitType.Millimeter, 50),
            ViewBox = new SvgViewBox(0, 0, 100, 50),
        };
        var circle = new SvgCircle
        {
            CenterX = 0,
            CenterY = 0,
            Radius = 5,
            ID = "hole",
        };
        var group = new SvgGroup { Transforms = [new SvgTranslate(20, 10), new SvgRotate(90)] };
        group.Children.Add(circle);
        group.Children.Add(
            new SvgPath
            {
                PathData =
                [
                    new SvgMoveToSegment(false, new PointF(1, 2)),
                    new SvgLineSegment(true, new PointF(10, float.NaN)),
                    new SvgLineSegment(true, new PointF(float.NaN, 10)),
                    new SvgClosePathSegment(true),
                ],
            }
        );
        document.Children.Add(group);
        document.Children.Add(
            new SvgUse { ReferencedElement = new Uri("#hole", UriKind.Relative), X = 70 }
        );
        document.Children.Add(new SvgText("No. 7"));
        var drawing = PatternGen.Import.Drawing(document);
        drawing.Contours.Count.ShouldBe(3);
        drawing.Contours[0].Centroid.DistanceTo(new(20, 40)).ShouldBeLessThan(1e-4);
        drawing.Contours[1].Area.ShouldBe(50, 1e-3);
        drawing.Contours[2].Centroid.DistanceTo(new(70, 50)).ShouldBeLessThan(1e-4);
        drawing
            .Notes.ShouldHaveSingleItem()
            .ToString()
            .ShouldBe("Skipped: text, at element text 1");
        PatternGen.Import.Outline(document).Parts.Count.ShouldBe(3);
    }

    [Fact]
    public void A_pattern_comes_back_from_its_document()
    {
        var pattern = Rosette.Petals(6, 30).Carve(part => part.IsPetal);
        var drawing = PatternGen.Import.Drawing(
            pattern.ToSvgDocument(For.Machine),
            ImportSettings.Default.WithLayers("chips")
        );
        drawing.Contours.Count.ShouldBe(6);
        drawing
            .Contours.Sum(petal => petal.Area)
            .ShouldBe(pattern.Chips.Sum(chip => chip.Outline.Area), 1e-2);
    }

    [Fact]
    public void A_document_that_refers_to_itself_is_refused()
    {
        var document = new SvgDocument();
        var group = new SvgGroup { ID = "g" };
        document.Children.Add(group);
        group.Children.Add(new SvgUse { ReferencedElement = new Uri("#g", UriKind.Relative) });
        Should
            .Throw<ImportException>(() => PatternGen.Import.Drawing(document))
            .Message.ShouldContain("#g");
    }

    [Fact]
    public void A_document_that_draws_too_much_is_refused()
    {
        var document = new SvgDocument();
        document.Children.Add(
            new SvgRectangle
            {
                ID = "r0",
                Width = 1,
                Height = 1,
            }
        );
        for (var level = 1; level <= 9; level++)
        {
            var group = new SvgGroup { ID = $"r{level}" };
            for (var i = 0; i < 10; i++)
                group.Children.Add(
                    new SvgUse { ReferencedElement = new Uri($"#r{level - 1}", UriKind.Relative) }
                );
            document.Children.Add(group);
        }
        Should
            .Throw<ImportException>(() => PatternGen.Import.Drawing(document))
            .Message.ShouldContain("1000000 elements");
    }

    [Fact]
    public void A_reference_out_of_a_document_is_not_followed()
    {
        var document = new SvgDocument();
        document.Children.Add(
            new SvgUse { ReferencedElement = new Uri("http://127.0.0.1:9/a.svg#a") }
        );
        Import
            .Drawing(document)
            .Notes[^1]
            .What.ShouldBe("use of something that is not in the file");
    }

    [Fact]
    public void A_document_too_deep_is_refused()
    {
        var document = new SvgDocument();
        SvgElement inner = document;
        for (var i = 0; i < 5000; i++)
        {
            var group = new SvgGroup();
            inner.Children.Add(group);
            inner = group;
        }
        Should
            .Throw<ImportException>(() => PatternGen.Import.Drawing(document))
            .Message.ShouldContain("64");
    }
}
