namespace PatternGen;

/// <summary>Bands to begin with, all on simple rules: each differs from the others at a glance.</summary>
public static class BandSampler
{
    /// <summary>
    /// The bands by name, in learning order. "Raised diamonds" is the band of the 2, 4, 4, 2 mm rules; its frieze group
    /// is p2mm.
    /// </summary>
    public static IReadOnlyList<NamedBand> All { get; } =
    [
        new("Single row", TriangleBand.Ruled(2, 4, 2)),
        new("Raised diamonds", TriangleBand.Ruled(2, 4, 4, 2)),
        new("Cut diamonds", TriangleBand.Ruled(2, 4, 4, 2).BackToBack()),
        new("Raised zigzag", TriangleBand.Ruled(2, 4, 4, 2).Staggered()),
        new("Counter-change", TriangleBand.Ruled(2, 4, 4, 2).BackToBack().Staggered()),
        new("Rising rows", TriangleBand.Ruled(2, 3, 3, 3, 2).Following().Staggered()),
        new("Ridge zigzag", TriangleBand.Ruled(2, 5, 2).Adjacent().WithLineCuts()),
        new("Curved ridges", TriangleBand.Ruled(2, 5, 2).Curved(0.5).Adjacent()),
        new("Hollow diamonds", TriangleBand.Ruled(2, 4, 4, 2).Curved(-0.5).WithLineCuts()),
        new("Petal row", TriangleBand.Ruled(2, 6, 2).Curved(0.7).WithPitch(9)),
        new("Saw teeth", TriangleBand.Ruled(2, 5, 2).Leaning(1).WithPitch(5)),
        new("Running leaves", Leaning(0.9, 0.9).WithPitch(6)),
        new("Turning teeth", Leaning(0.8, -0.8)),
        new("Gliding teeth", Gliding()),
    ];

    /// <summary>Two rows back to back that lean alike: a mirror along the band.</summary>
    private static TriangleBand Leaning(double lower, double upper) =>
        TriangleBand
            .Ruled(2, 4, 4, 2)
            .WithRows(
                TriangleRow.Between(1, 2).Down().Leaning(lower),
                TriangleRow.Between(2, 3).Up().Leaning(upper)
            );

    /// <summary>The same with the upper row half a pitch on.</summary>
    private static TriangleBand Gliding() =>
        TriangleBand
            .Ruled(2, 4, 4, 2)
            .WithRows(
                TriangleRow.Between(1, 2).Up().Leaning(0.8),
                TriangleRow.Between(2, 3).Down().Leaning(0.8).Staggered()
            );
}
