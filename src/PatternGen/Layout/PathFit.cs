namespace PatternGen;

/// <summary>How repeats were fitted to a path.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class PathFit
{
    internal PathFit(
        double length,
        bool isClosed,
        bool isLoop,
        double askedSpacing,
        IReadOnlyList<PathStretch> stretches,
        int corners,
        int cornerMotifs,
        bool onBothSides
    )
    {
        Length = length;
        IsClosed = isClosed;
        ClosesLoop = isLoop;
        AskedSpacing = askedSpacing;
        Stretches = stretches;
        Corners = corners;
        CornerMotifs = cornerMotifs;
        OnBothSides = onBothSides;
        Repeats = stretches.Sum(stretch => stretch.Repeats);
        var spaced = stretches.Where(stretch => stretch.Repeats > 0).ToArray();
        SmallestSpacing = spaced.Min(stretch => stretch.Spacing);
        LargestSpacing = spaced.Max(stretch => stretch.Spacing);
    }

    /// <summary>Length of the path in mm.</summary>
    public double Length { get; }

    /// <summary>Whether the path is closed.</summary>
    public bool IsClosed { get; }

    /// <summary>Whether the last repeat is as far from the first as from the one before it: a closed path, not stopped at corners.</summary>
    public bool ClosesLoop { get; }

    /// <summary>The spacing that was aimed at, in mm.</summary>
    public double AskedSpacing { get; }

    /// <summary>The stretches that were fitted each by itself, in their order along the path: one, unless repeats stop at corners.</summary>
    public IReadOnlyList<PathStretch> Stretches { get; }

    /// <summary>Places for repeats on all stretches; on both sides of the path, each place has two.</summary>
    public int Repeats { get; }

    /// <summary>Whether there is a repeat on each side of the path at every place.</summary>
    public bool OnBothSides { get; }

    /// <summary>Number of corners of the path.</summary>
    public int Corners { get; }

    /// <summary>Motifs that stand on corners.</summary>
    public int CornerMotifs { get; }

    /// <summary>Shortest spacing of a stretch, in mm.</summary>
    public double SmallestSpacing { get; }

    /// <summary>Longest spacing of a stretch, in mm. 314.159 mm round a circle of radius 50 in 20 repeats make 15.708.</summary>
    public double LargestSpacing { get; }

    /// <summary>
    /// Returns the fit in words: <c>20 repeats, spacing 15.708 mm (16 asked), closed without a seam</c>; where repeats stop
    /// at corners <c>28 repeats on 4 stretches (7, 7, 7, 7), spacing 14.2857 mm (15 asked), 4 corner motifs</c>.
    /// </summary>
    /// <param name="wording">The language; English by default.</param>
    public string InWords(Wording? wording = null) =>
        (wording ?? Wording.English).PathFit(
            [.. Stretches.Select(stretch => stretch.Repeats)],
            SmallestSpacing,
            LargestSpacing,
            AskedSpacing,
            ClosesLoop,
            OnBothSides,
            CornerMotifs
        );

    /// <summary>Returns the fit in English words.</summary>
    public override string ToString() => InWords();
}
