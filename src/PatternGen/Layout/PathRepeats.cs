using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Motifs at equal distances along a path, fitted to whole repeats.</summary>
/// <remarks>
/// <para>
/// The default: the spacing nearest to the one asked for, at most a third off it; round a closed path from its first corner
/// on, without a seam; on an open path half a spacing in from both ends, so that the repeats lie alike at both. A repeat
/// that comes to stand on a corner of the path is turned on the bisector.
/// </para>
/// <para>
/// Motifs are moved, turned, mirrored and scaled, never bent. The fit is worked out when it is first needed, so settings
/// may come in any order; an impossible one throws a <see cref="PatternException"/> then. Each method returns a changed
/// copy. Chips are counted along the path: those of row 1 of all repeats are row 1. Immutable and safe to share between
/// threads.
/// </para>
/// </remarks>
public sealed partial class PathRepeats : Pattern
{
    private readonly Lazy<PathPlan> _plan;
    private readonly Lazy<ScatterPlace[]> _places;
    private readonly Lazy<Transform[]> _placements;
    private readonly Lazy<Transform[]> _cornerPlacements;

    internal PathRepeats(SegmentRun path, IReadOnlyList<Pattern> motifs, PathSettings settings)
    {
        Path = path;
        Motifs = motifs;
        Settings = settings;
        _plan = new(() => new PathSolver(path, settings, motifs.Count).Solve());
        _places = new(() => Placer().Places());
        _placements = new(() => Array.ConvertAll(_places.Value, place => place.At));
        _cornerPlacements = new(() =>
            settings.Corners == PathCorners.Motif ? Placer().CornerPlaces() : []
        );
    }

    /// <summary>The path.</summary>
    public SegmentRun Path { get; }

    /// <summary>The motifs, in the order in which they follow each other along the path; mostly one.</summary>
    public IReadOnlyList<Pattern> Motifs { get; }

    /// <summary>How the repeats were fitted.</summary>
    /// <exception cref="PatternException">No fit is possible; the message gives the nearest spacings that work.</exception>
    public PathFit Fit => _plan.Value.Fit;

    /// <summary>
    /// How the motif is placed at each repeat, along the path: where the origin goes and where the x axis turns to. On both
    /// sides of the path, the one on the left comes before the one on the right.
    /// </summary>
    /// <exception cref="PatternException">No fit is possible.</exception>
    public IReadOnlyList<Transform> Placements => _placements.Value;

    /// <summary>How the corner motif is placed at each corner, along the path; nothing without a corner motif.</summary>
    /// <exception cref="PatternException">No fit is possible.</exception>
    public IReadOnlyList<Transform> CornerPlacements => _cornerPlacements.Value;

    internal PathSettings Settings { get; }

    internal override IEnumerable<string> Facts(Wording words) =>
        [words.PathRepeats(Path.Length, Path.IsClosed), Fit.InWords(words)];

    private protected override PatternNode Draw()
    {
        List<PatternNode> nodes =
        [
            new ScatterNode([.. Motifs.Select(motif => motif.Root)], _places.Value),
        ];
        if (Settings is { Corners: PathCorners.Motif, CornerMotif: { } motif })
            if (_cornerPlacements.Value.Length > 0)
                nodes.Add(new ScatterNode(motif.Root, _cornerPlacements.Value));
        if (Settings.ShowsPath)
            nodes.Add(new MotifNode { LayoutLines = [PathAsChain()] });
        return GroupNode.Of(nodes);
    }

    private PathPlacer Placer() => new(Path, Settings, _plan.Value, Motifs.Count);

    private Chain PathAsChain() =>
        Path as Chain ?? new Chain(Path.Vertices.Append(new(Path.Vertices[0].Point)));

    [Pure]
    private PathRepeats With(PathSettings settings) => new(Path, Motifs, settings);
}
