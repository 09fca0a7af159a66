namespace PatternGen;

public partial class Wording
{
    /// <summary>What motifs along a path are called: <c>Repeats along a closed path of 314.16 mm</c>.</summary>
    /// <param name="length">Length of the path in mm.</param>
    /// <param name="isClosed">Whether it ends where it starts.</param>
    public virtual string PathRepeats(double length, bool isClosed) =>
        $"Repeats along {(isClosed ? "a closed path" : "a path")} of {Millimetres(length)}";

    /// <summary>
    /// How repeats were fitted to a path: <c>20 repeats, spacing 15.708 mm (16 asked), closed without a seam</c>, or
    /// <c>28 repeats on 4 stretches (7, 7, 7, 7), spacing 14.2857 mm (15 asked), 4 corner motifs</c>.
    /// </summary>
    /// <param name="repeats">Repeats on each stretch that was fitted by itself.</param>
    /// <param name="smallest">Shortest spacing of a stretch in mm.</param>
    /// <param name="largest">Longest spacing of a stretch in mm.</param>
    /// <param name="asked">The spacing asked for in mm.</param>
    /// <param name="closed">Whether the last repeat is as far from the first as from the one before it.</param>
    /// <param name="onBothSides">Whether there is a repeat on each side of the path at every place.</param>
    /// <param name="cornerMotifs">Motifs that stand on corners.</param>
    public virtual string PathFit(
        IReadOnlyList<int> repeats,
        double smallest,
        double largest,
        double asked,
        bool closed,
        bool onBothSides,
        int cornerMotifs
    )
    {
        var words = RepeatCount(repeats.Sum());
        if (onBothSides)
            words += " on each side";
        if (repeats.Count > 1)
            words += $" on {repeats.Count} stretches ({string.Join(", ", repeats)})";
        var (from, to) = (Number(smallest, 4), Number(largest, 4));
        words +=
            $", spacing {(from == to ? from : $"{from} to {to}")} mm ({Number(asked, 4)} asked)";
        if (closed)
            words += ", closed without a seam";
        return cornerMotifs switch
        {
            0 => words,
            1 => $"{words}, 1 corner motif",
            _ => $"{words}, {cornerMotifs} corner motifs",
        };
    }

    /// <summary>How one stretch of a path was fitted: <c>7 repeats, spacing 14.2857 mm</c>.</summary>
    /// <param name="repeats">Repeats on it.</param>
    /// <param name="spacing">Their spacing in mm.</param>
    public virtual string PathStretch(int repeats, double spacing) =>
        repeats == 0
            ? "no room for a repeat"
            : $"{RepeatCount(repeats)}, spacing {Number(spacing, 4)} mm";

    private static string RepeatCount(int repeats) =>
        repeats == 1 ? "1 repeat" : $"{repeats} repeats";
}
