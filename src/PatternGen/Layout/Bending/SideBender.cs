using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bends the sides of chips, and other runs, that are drawn as on a rail.</summary>
/// <remarks>
/// Neighbours that share a side walk it in different directions and count from different stations. It is always walked
/// from its lower end, or its left end if it is level, and counted from there, so that both get the same corners to the
/// last digit.
/// </remarks>
/// <param name="line">The line that they are bent along.</param>
/// <param name="sides">What becomes of straight slanted sides.</param>
/// <param name="accuracy">How far a fitted side may be off, in mm.</param>
/// <param name="levels">Heights on which corners lie exactly.</param>
internal sealed class SideBender(
    BendLine line,
    BentSides sides,
    double accuracy,
    IReadOnlyList<double> levels
)
{
    /// <summary>Lengths in mm that differ by less are meant to be the same.</summary>
    private const double Same = 1e-9;

    /// <summary>Returns the corners of a run as it is bent; without the end of an open one.</summary>
    internal IEnumerable<BentCorner> Corners(SegmentRun run, BendStation station) =>
        run.Segments.SelectMany(side => Side(side, station));

    /// <summary>A corner on the band, on a rule if it is meant to be.</summary>
    internal BendPlace At(Point corner)
    {
        foreach (var level in levels)
            if (Math.Abs(corner.Y - level) <= Same)
                return new(corner.X, level);
        return new(corner.X, corner.Y);
    }

    private IEnumerable<BentCorner> Side(Segment side, BendStation station)
    {
        var (from, to) = (At(side.Start), At(side.End));
        var isReversed = (to.Y, to.X).CompareTo((from.Y, from.X)) < 0;
        if (isReversed)
            (from, to) = (to, from);
        var walked = new Segment(
            new(0, from.Y),
            new(to.X - from.X, to.Y),
            isReversed ? -side.Bulge : side.Bulge
        );
        Vertex[] parts = [.. Walk(walked, station.XOf(from))];
        if (!isReversed)
            return parts.Select((part, i) => new BentCorner(i == 0 ? from : On(part), part.Bulge));
        return parts
            .Select(
                (part, i) =>
                    new BentCorner(i == parts.Length - 1 ? to : On(parts[i + 1]), -part.Bulge)
            )
            .Reverse();

        BendPlace On(Vertex part) => new(from.X, part.Point.Y, part.Point.X);
    }

    /// <summary>Where the parts of a bent side begin that starts at x = 0, with their bulges.</summary>
    /// <param name="side">The side.</param>
    /// <param name="start">Where along the line it starts.</param>
    private IEnumerable<Vertex> Walk(Segment side, double start)
    {
        var (width, height) = (Math.Abs(side.Chord.X), Math.Abs(side.Chord.Y));
        if (side.IsLine && height <= Same)
            return Level(side, start);
        return side.IsLine && (sides == BentSides.Straight || width <= Same)
            ? [new(side.Start)]
            : Curved(side, start);
    }

    private IEnumerable<Vertex> Level(Segment side, double start)
    {
        double[] stops = [0, .. Joints(side, start), side.End.X];
        for (var i = 1; i < stops.Length; i++)
        {
            var piece = line.PieceAt(line.Wrapped(start + (stops[i - 1] + stops[i]) / 2));
            foreach (var part in BentArc.Parts(stops[i - 1], stops[i], piece.Turn))
                yield return new(new(part.X, side.Start.Y), part.Bulge);
        }
    }

    private IEnumerable<Vertex> Curved(Segment side, double start)
    {
        Segment[] parts = [side];
        foreach (var joint in Joints(side, start))
            parts =
            [
                .. parts
                    .SelectMany(part => UprightCut.Pieces(part, joint))
                    .Where(part => part.Length > Same),
            ];
        // Both ends may lie on a joint: only the middle of all tells on which side of it a part is.
        return parts.SelectMany(part =>
            BentCurve.Fit(line.PieceAt(line.Wrapped(start + part.Extents.Centre.X)), part, accuracy)
        );
    }

    private IEnumerable<double> Joints(Segment side, double start)
    {
        var extents = side.Extents;
        return line.Joints(start + extents.Min.X, start + extents.Max.X).Select(x => x - start);
    }
}
