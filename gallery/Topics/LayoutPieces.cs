namespace PatternGen.Gallery.Topics;

/// <summary>Pieces of furniture whose patterns turn corners and follow curves.</summary>
internal static class LayoutPieces
{
    private static readonly TriangleBand Diamonds = TriangleBand.Ruled(2, 4, 4, 2);

    internal static Pattern MirrorFrame =>
        Frame
            .Of(320, 240, band: 36)
            .Named("Mirror frame")
            .Border(TriangleBand.Ruled(2, 4, 4, 2).BackToBack(), fromEdge: 6)
            .Mitred()
            .Inside(TriangleBand.Ruled(1, 4, 1), gap: 4);

    internal static Pattern PictureFrame =>
        Frame
            .Of(300, 220, band: 38)
            .Named("Picture frame")
            .Border(TriangleBand.Ruled(2, 5, 5, 2))
            .Corners(Rosette.Wreathed(6, 13));

    internal static Pattern Tray =>
        Frame
            .Of(280, 200, band: 30)
            .Rounded(50)
            .Named("Tray with round corners")
            .Border(Diamonds.BackToBack())
            .Bent();

    internal static Pattern HexagonalBox =>
        Frame
            .AcrossFlats(6, across: 190, band: 26)
            .Named("Lid of a hexagonal box")
            .Border(Diamonds.BackToBack())
            .Mitred();

    internal static Pattern ClockFace =>
        Ring.Outside(64)
            .OnDisc(92)
            .Named("Clock face")
            .Border(TriangleBand.Ruled(2, 5, 5, 2).BackToBack())
            .With(Ring.Of(52).Border(TriangleBand.Ruled(1, 4, 1)).FacingIn())
            .With(Rosette.Wreathed(12, 44).Carve(part => part.IsPetal));

    /// <summary>A vine round a lid whose outline comes from a file.</summary>
    internal static Pattern BreadBoxLid
    {
        get
        {
            var lid = Import.Outline(Drawing("lid.svg"));
            // In and out again rounds the corners, so that the leaves on the inner side keep off the stem.
            var line = lid.Inset(46).Offset(26).Largest();
            var leaf = Leaf.Of(14, 6).WithWidestAt(0.42).Bent(25).WithVein();
            return Pattern
                .OfStock(lid.Contours)
                .With(Pattern.OfLineCuts(new LineCut(line.Part(0, 0), 1.6)))
                .With(
                    line.Repeat(leaf.Moved(2.4, 0), spacing: 11, heading: Heading.Along.Turned(42))
                        .EverySecondMirrored()
                )
                .With(Flower.Of(8, 24).Overlapping().WithCarvedCentre(4).Moved(115, 78))
                .Named("Lid of a bread box");
        }
    }

    internal static Pattern ChestPanel =>
        Panel
            .Of(300, 200)
            .Named("Chest panel")
            .Frame(Diamonds, fromEdge: 8)
            .Field(room => Field.Within(room).Diamonds(9, 9), margin: 5)
            .Centre(Rosette.Wreathed(6, 38), gap: 4);

    /// <summary>What the README shows.</summary>
    internal static Pattern ThreePieces =>
        ContactSheet.Of(
            "Three pieces",
            [
                (PictureFrame.Scaled(0.8), "A picture frame"),
                (ClockFace, "A clock face"),
                (BreadBoxLid, "The lid of a bread box"),
            ],
            columns: 3
        );

    private static string Drawing(string file) =>
        Path.Combine(AppContext.BaseDirectory, "drawings", file);
}
