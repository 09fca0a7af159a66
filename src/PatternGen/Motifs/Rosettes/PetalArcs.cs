namespace PatternGen;

/// <summary>
/// The arcs that make the sides of petals, each from tip to tip through the centre, a side of two petals, or between the
/// centre and a tip.
/// </summary>
/// <param name="needles">Where the needle stands for each arc.</param>
/// <param name="from">Where each starts, counter-clockwise: a tip, or the centre.</param>
/// <param name="to">Where each ends.</param>
internal sealed class PetalArcs(MarkedPoint[] needles, MarkedPoint[] from, MarkedPoint[] to)
{
    /// <summary>Sides from the centre to tips, of which a whirl has no others.</summary>
    internal static PetalArcs Outward(
        MarkedPoint centre,
        MarkedPoint[] needles,
        MarkedPoint[] tips
    ) => new(needles, [.. tips.Select(_ => centre)], tips);

    /// <summary>Sides from tips to the centre.</summary>
    internal static PetalArcs Inward(
        MarkedPoint centre,
        MarkedPoint[] needles,
        MarkedPoint[] tips
    ) => new(needles, tips, [.. tips.Select(_ => centre)]);

    /// <summary>These arcs, and others round the same centre.</summary>
    internal PetalArcs And(PetalArcs others) =>
        new([.. needles, .. others.Needles], [.. from, .. others.From], [.. to, .. others.To]);

    /// <summary>Those of the arcs that meet certain tips.</summary>
    internal PetalArcs At(IReadOnlyCollection<MarkedPoint> tips)
    {
        int[] those =
        [
            .. Enumerable
                .Range(0, needles.Length)
                .Where(i => tips.Contains(from[i]) || tips.Contains(to[i])),
        ];
        return new(
            [.. those.Select(i => needles[i])],
            [.. those.Select(i => from[i])],
            [.. those.Select(i => to[i])]
        );
    }

    private MarkedPoint[] Needles => needles;

    private MarkedPoint[] From => from;

    private MarkedPoint[] To => to;

    /// <summary>Draws the arcs.</summary>
    internal DrawnCurve[] Draw(Pencil pencil, PencilLine line) =>
        [.. pencil.Arcs(needles, from, to, line)];

    /// <summary>Goes over faint arcs from the tips inwards.</summary>
    /// <param name="pencil">The pencil that has drawn them.</param>
    /// <param name="faint">The arcs, faint.</param>
    /// <param name="tips">The tips to begin from.</param>
    /// <param name="until">Where to stop.</param>
    internal DrawnCurve[] GoOver(
        Pencil pencil,
        DrawnCurve[] faint,
        IReadOnlyCollection<MarkedPoint> tips,
        IEnumerable<DrawnCurve> until
    )
    {
        (DrawnCurve Arc, MarkedPoint Tip)[] ways =
        [
            .. faint.Zip(to).Concat(faint.Zip(from)).Where(way => tips.Contains(way.Second)),
        ];
        return [.. pencil.GoOver(ways.Select(way => way.Arc), ways.Select(way => way.Tip), until)];
    }
}
