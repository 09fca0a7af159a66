using PatternGen.Geometry;

namespace PatternGen.Gallery.Topics;

/// <summary>Leaves, flowers and stems on one board.</summary>
internal static class FreeFormPieces
{
    /// <summary>Uncarved wood in mm round what is carved.</summary>
    private const double Border = 10;

    internal static Pattern Sheet =>
        OnBoard(
            ContactSheet.Of(
                "Free forms",
                [
                    (Leaf.Of(46, 14).WithWidestAt(0.4).Bent(25), "Leaf"),
                    (Leaf.Of(46, 16).WithWidestAt(0.4).Bent(25).WithVein(1), "Leaf with a vein"),
                    (Stroke.Along(Swing, 4), "Stroke"),
                    (Heart.Of(30, 28).Halved(), "Heart in halves"),
                    (Flower.Of(7, 20).WithCarvedCentre(), "Flower"),
                    (
                        Flower.Of(8, 20).Overlapping().WithCarvedCentre(2.5),
                        "Petals over each other"
                    ),
                    (Scroll.Of(23, 1.75), "Scroll"),
                    (Stem.Spray(50).Varied(seed: 11), "Spray"),
                    (Stem.Fern(50), "Fern"),
                ],
                columns: 3
            )
        );

    internal static Pattern Vine =>
        OnBoard(Stem.Vine(280, 30, waves: 3)).Named("Vine for a shelf edge");

    private static Chain Swing =>
        FreeCurve.Through(new(0, 0), new(14, 9), new(32, 1), new(46, 10)).ToChain();

    private static Pattern OnBoard(Pattern carved)
    {
        var wood = carved.Extents!.Value.Grown(Border);
        return Pattern.OfStock(Contour.Rectangle(wood.Min, wood.Max)).With(carved);
    }
}
