using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A compass drawing with some of its parts carved: a pattern with a chip for each.</summary>
/// <remarks>
/// Two chips that share a side stay two, with a ridge between them that is as sharp as a knife edge, unless they are
/// joined. A chip's row is the number of its orbit, which the key drawing shows, and its place counts the chips of that
/// orbit counter-clockwise. Immutable and safe to share between threads.
/// </remarks>
public sealed class CarvedDrawing : Pattern
{
    private readonly DrawingPart[] _parts;
    private readonly PartJoints _joints;
    private readonly bool _withLines;

    internal CarvedDrawing(CompassDrawing drawing, IEnumerable<DrawingPart> parts)
        : this(drawing, parts, PartJoints.None, withLines: false) { }

    private CarvedDrawing(
        CompassDrawing drawing,
        IEnumerable<DrawingPart> parts,
        PartJoints joints,
        bool withLines
    )
    {
        Drawing = drawing;
        _parts = [.. parts.Distinct().OrderBy(part => part.Number)];
        _joints = joints;
        _withLines = withLines;
    }

    /// <summary>The drawing.</summary>
    public CompassDrawing Drawing { get; }

    /// <summary>The parts that are carved, in the order of their numbers.</summary>
    public IReadOnlyList<DrawingPart> Parts => _parts;

    /// <summary>The neighbouring parts that are one chip, the lower number first, each pair once.</summary>
    internal IEnumerable<(DrawingPart One, DrawingPart Other)> Joined =>
        _joints
            .Pairs.Where(pair => _parts.Contains(pair.One) && _parts.Contains(pair.Other))
            .Distinct();

    /// <summary>Whether the lines that are no side of a chip are drawn too.</summary>
    internal bool ShowsLines => _withLines;

    /// <summary>Share of the area of all parts of the figure that is carved, from 0 to 1.</summary>
    public double CarvedShare => _parts.Sum(part => part.Area) / Drawing.Figure.TotalArea;

    /// <summary>Returns the reverse within the figure's boundary: what was carved stands, and what stood is carved, all but parts that always stay ground.</summary>
    /// <exception cref="PatternException">Everything is carved, so that the reverse would carve nothing.</exception>
    [Pure]
    public CarvedDrawing Reverse() =>
        Copy(
            PartChoice.Carvable(Drawing).Except(_parts),
            PartJoints.None,
            "Everything that may be carved is, so the reverse carves nothing."
        );

    /// <summary>Returns the drawing with further parts carved.</summary>
    /// <param name="which">Says of each part whether it is carved too; parts that always stay ground are not asked.</param>
    [Pure]
    public CarvedDrawing And(Func<DrawingPart, bool> which) =>
        new(
            Drawing,
            _parts.Concat(PartChoice.Carvable(Drawing).Where(Guard.NotNull(which))),
            _joints,
            _withLines
        );

    /// <summary>Returns the drawing with some of the carved parts left standing.</summary>
    /// <param name="which">Says of each carved part whether it is left.</param>
    /// <exception cref="PatternException">Nothing stays carved.</exception>
    [Pure]
    public CarvedDrawing Without(Func<DrawingPart, bool> which)
    {
        Guard.NotNull(which);
        return Copy(
            _parts.Where(part => !which(part)),
            _joints,
            "All parts that are carved would be left standing."
        );
    }

    /// <summary>Returns the drawing with neighbouring chips made one: the side that they share is no ridge any more.</summary>
    /// <param name="which">
    /// Says of two carved parts that share a side, the lower number first, whether they become one chip:
    /// <c>petals.JoinedWith((a, b) => a.Orbit == b.Orbit)</c>. Joined in a round, they leave a hole.
    /// </param>
    [Pure]
    public CarvedDrawing JoinedWith(Func<DrawingPart, DrawingPart, bool> which) =>
        new(Drawing, _parts, _joints.And(_parts, Guard.NotNull(which)), _withLines);

    /// <summary>Returns the pattern with the lines of the figure that are no side of a chip as layout lines; without this there are none.</summary>
    [Pure]
    public CarvedDrawing WithDrawing() => new(Drawing, _parts, _joints, withLines: true);

    internal override IEnumerable<string> Facts(Wording words) =>
        [
            DrawingTitle.Of(Drawing, words),
            words.Carved(
                [
                    .. _parts
                        .GroupBy(part => part.Orbit)
                        .OrderBy(orbit => orbit.Key)
                        .Select(orbit =>
                            words.CarvedOfOrbit(
                                orbit.Key,
                                orbit.Count(),
                                Drawing.OrbitParts(orbit.Key).Count
                            )
                        ),
                ],
                CarvedShare
            ),
        ];

    private protected override PatternNode Draw()
    {
        var rows = new List<ChipShape>[_parts.Max(part => part.Orbit)];
        for (var row = 0; row < rows.Length; row++)
            rows[row] = [];
        foreach (var joined in _joints.Groups(_parts))
            rows[joined[0].Orbit - 1].Add(ShapeOf(joined));
        return new MotifNode
        {
            ChipRows = [.. rows.Select(row => row.ToArray())],
            LayoutLines = _withLines ? [.. RemainingLines()] : [],
        };
    }

    private ChipShape ShapeOf(DrawingPart[] joined)
    {
        var shape =
            joined.Length == 1
                ? joined[0].Shape
                : FaceOutline.Of(Drawing.Arrangement, [.. joined.Select(part => part.FaceIndex)]);
        return new(shape.Outer, [.. shape.Holes]);
    }

    private IEnumerable<Chain> RemainingLines()
    {
        var carved = _parts.Select(part => part.FaceIndex).ToHashSet();
        return Drawing
            .Arrangement.Edges.Where(edge =>
                !carved.Contains(edge.Forward.Face.Index)
                && !carved.Contains(edge.Backward.Face.Index)
            )
            .Select(edge => Chain.Of(edge.Forward.Segments));
    }

    private CarvedDrawing Copy(IEnumerable<DrawingPart> parts, PartJoints joints, string ifNone)
    {
        var copy = new CarvedDrawing(Drawing, parts, joints, _withLines);
        return copy._parts.Length > 0
            ? copy
            : throw new PatternException(
                ifNone,
                Drawing.Symmetry.Centre,
                ["a choice that carves some parts and leaves others"]
            );
    }
}
