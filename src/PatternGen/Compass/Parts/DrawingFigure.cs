using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A drawing's lines as an arrangement, with the symmetry and the parts that follow from them.</summary>
/// <remarks>
/// Nouns. A <em>face</em> is an area between the lines, numbered as it was found; a <em>part</em> is a bounded face, numbered
/// by where it lies. A <em>ring</em> is the parts at one distance from the centre, an <em>orbit</em> the parts that the
/// figure's symmetries take to each other; each orbit lies in one ring.
/// </remarks>
internal sealed class DrawingFigure
{
    /// <summary>
    /// How near, in shares of the extent, places that a symmetry takes to each other must come. Nodes at tangencies are known
    /// to the square root of the tolerance only, 3e-5; far larger values would take for alike what a carver sees differ.
    /// </summary>
    private const double NearInRoots = 3;

    private readonly Lazy<IReadOnlyList<DrawingPart>[]> _neighbours;
    private readonly DrawingPart?[] _partOfFace;

    internal DrawingFigure(CompassDrawing drawing)
    {
        Drawing = drawing;
        Arrangement = Arrangement.Of(drawing.Curves);
        var extents = drawing.Extents;
        var extent = Math.Max(extents.Width, extents.Height);
        var near = NearInRoots * Math.Sqrt(Arrangement.Tolerance.Merge * extent);
        (Symmetry, var faces) = SymmetryFinder.Of(Arrangement, near);
        var shapes = PartOrder.Of(
            Arrangement.BoundedFaces.Select(face => new FaceShape(face, Symmetry.Centre, near)),
            near
        );
        var numbers = new int[shapes.Count];
        for (var i = 0; i < shapes.Count; i++)
            numbers[shapes[i].Shape.FaceIndex - 1] = i;
        Group = faces.Renumbered(numbers);
        Orbits = PartOrbits.Of(shapes.Count, [Group.Turn(1), Group.Mirror]);
        Parts = PartsOf(shapes, Marked(drawing.PetalMarks), Marked(drawing.PlainMarks));
        _partOfFace = new DrawingPart?[Arrangement.Faces.Count];
        foreach (var part in Parts)
            _partOfFace[part.FaceIndex] = part;
        _neighbours = new(FindNeighbours);
        TotalArea = Parts.Sum(part => part.Area);
    }

    internal CompassDrawing Drawing { get; }

    internal Arrangement Arrangement { get; }

    internal FigureSymmetry Symmetry { get; }

    internal IReadOnlyList<DrawingPart> Parts { get; }

    /// <summary>Where the symmetries take the parts, counted from 0.</summary>
    internal FigureGroup Group { get; }

    /// <summary>The parts of each orbit, counted from 0.</summary>
    internal int[][] Orbits { get; }

    internal double TotalArea { get; }

    /// <summary>The part that a point lies in; null on a line and outside.</summary>
    internal DrawingPart? PartAt(Point point) =>
        Arrangement.FaceAt(point) is { } face ? _partOfFace[face.Index] : null;

    internal IReadOnlyList<DrawingPart> NeighboursOf(DrawingPart part) =>
        _neighbours.Value[part.Number - 1];

    /// <summary>
    /// A place inside a part: found for the first part of its orbit, and taken from there to the others, so that congruent
    /// parts have theirs alike.
    /// </summary>
    internal InsidePlace InsideOf(DrawingPart part)
    {
        var first = Orbits[part.Orbit - 1][0];
        if (first == part.Number - 1)
            return InsidePlace.Of(part.Shape);
        var inside = Parts[first];
        var element = 0;
        foreach (var taken in Group.All())
        {
            if (taken[first] == part.Number - 1)
                break;
            element++;
        }
        return new(Taking(element).Apply(inside.InsidePoint), inside.Clearance);
    }

    private Transform Taking(int element)
    {
        var order = Symmetry.Order;
        var centre = Symmetry.Centre;
        var turn = Transform.Rotate(Angle.OfTurn((double)(element % order) / order), centre);
        return element < order
            ? turn
            : turn.Then(Transform.Mirror(centre, Symmetry.FirstMirror ?? Angle.Zero));
    }

    private HashSet<int> Marked(IEnumerable<Point> marks) =>
        [
            .. marks
                .Select(mark => Arrangement.FaceAt(mark))
                .OfType<Face>()
                .Select(face => face.Index),
        ];

    private DrawingPart[] PartsOf(
        IReadOnlyList<(FaceShape Shape, int Ring)> shapes,
        HashSet<int> petals,
        HashSet<int> plain
    )
    {
        var orbitOf = new int[shapes.Count];
        for (var orbit = 0; orbit < Orbits.Length; orbit++)
            foreach (var part in Orbits[orbit])
                orbitOf[part] = orbit + 1;
        return
        [
            .. shapes.Select(
                (entry, i) =>
                    new DrawingPart(this, i + 1, orbitOf[i], entry.Ring, entry.Shape)
                    {
                        IsPetal = petals.Contains(entry.Shape.FaceIndex),
                        IsPlain = plain.Contains(entry.Shape.FaceIndex),
                    }
            ),
        ];
    }

    private IReadOnlyList<DrawingPart>[] FindNeighbours()
    {
        var found = new SortedSet<int>[Parts.Count];
        for (var i = 0; i < found.Length; i++)
            found[i] = [];
        foreach (var edge in Arrangement.Edges)
        {
            var left = _partOfFace[edge.Forward.Face.Index];
            var right = _partOfFace[edge.Backward.Face.Index];
            if (left is null || right is null || left == right)
                continue;
            found[left.Number - 1].Add(right.Number - 1);
            found[right.Number - 1].Add(left.Number - 1);
        }
        return Array.ConvertAll(
            found,
            numbers => (IReadOnlyList<DrawingPart>)[.. numbers.Select(number => Parts[number])]
        );
    }
}
