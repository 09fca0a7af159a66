using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Makes the line that a band is bent along from a path of lines and arcs.</summary>
internal static class BendLineBuilder
{
    /// <summary>
    /// Directions nearer than this, in radians, go on smoothly: 0.06 degrees, which displaces the far edge of a band 20 mm
    /// wide by 0.02 mm. Arcs that were fitted to curves or read from files meet less exactly than computed ones.
    /// </summary>
    private const double Smooth = 1e-3;

    /// <summary>Returns the line along a path, lengths measured a given distance to the left of it.</summary>
    /// <param name="path">Lines and arcs that go on smoothly.</param>
    /// <param name="band">Where the band lies beside it.</param>
    /// <param name="from">Where x is 0: distance along the path in mm; only for a closed one.</param>
    /// <exception cref="PatternException">The path has a corner, or an arc is too tight.</exception>
    internal static BendLine Along(SegmentRun path, BandSpan band, double from = 0)
    {
        var run = from == 0 || !path.IsClosed ? path : path.Part(from, from);
        var tolerance = run.Tolerance;
        List<Segment> segments = [.. run.Segments.Where(one => one.Length > tolerance.Merge)];
        if (segments.Count == 0)
            throw new PatternException("A path without length has no room for a band.");
        RefuseCorners(segments, path.IsClosed, band);
        var joined = Join(segments, tolerance.Merge, path.IsClosed, out var lead);
        return new(Pieces(joined, lead, band), path.IsClosed);
    }

    /// <summary>Returns the line along an arc or a whole circle.</summary>
    /// <param name="centre">The centre.</param>
    /// <param name="radius">Radius of the path.</param>
    /// <param name="from">Direction from the centre to where it begins.</param>
    /// <param name="sweep">The angle that it turns through, positive counter-clockwise, at most a whole turn.</param>
    /// <param name="band">Where the band lies beside it.</param>
    internal static BendLine Round(
        Point centre,
        double radius,
        Angle from,
        Angle sweep,
        BandSpan band
    ) =>
        new(
            Pieces([new(centre, radius, from, sweep)], 0, band),
            Math.Abs(sweep.Radians) == Math.Tau
        );

    private static void RefuseCorners(List<Segment> segments, bool isClosed, BandSpan band)
    {
        for (var i = isClosed ? 0 : 1; i < segments.Count; i++)
        {
            var before = segments[(i + segments.Count - 1) % segments.Count];
            var (arriving, leaving) = (before.TangentAt(before.Length), segments[i].TangentAt(0));
            var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
            if (Math.Abs(turn) > Smooth)
                throw band.Corner(segments[i].Start, turn);
        }
    }

    /// <summary>Joins neighbours that lie on one line or circle.</summary>
    /// <param name="segments">The segments.</param>
    /// <param name="near">How far off its line or circle, in mm, a piece may lie.</param>
    /// <param name="isClosed">Whether the last is a neighbour of the first.</param>
    /// <param name="lead">Length of those at the end that were joined to the first.</param>
    private static List<BendStretch> Join(
        List<Segment> segments,
        double near,
        bool isClosed,
        out double lead
    )
    {
        var groups = new List<List<Segment>>();
        foreach (var segment in segments)
            if (groups.Count > 0 && SmoothJoint.GoesOn(groups[^1][^1], segment, near))
                groups[^1].Add(segment);
            else
                groups.Add([segment]);
        lead = 0;
        if (isClosed && groups.Count > 1 && SmoothJoint.GoesOn(segments[^1], segments[0], near))
        {
            lead = groups[^1].Sum(segment => segment.Length);
            groups[0].InsertRange(0, groups[^1]);
            groups.RemoveAt(groups.Count - 1);
        }
        return [.. groups.Select(group => BendStretch.Of(group, isClosed && groups.Count == 1))];
    }

    /// <param name="stretches">The stretches.</param>
    /// <param name="lead">Length along the path from the beginning of the first to where x is 0.</param>
    /// <param name="band">Where the band lies.</param>
    private static BendPiece[] Pieces(List<BendStretch> stretches, double lead, BandSpan band)
    {
        var pieces = new List<BendPiece>();
        var start = lead == 0 ? 0 : -lead * stretches[0].Share(band);
        foreach (var stretch in stretches)
        {
            pieces.Add(stretch.Piece(start, band));
            start = pieces[^1].End;
        }
        return [.. pieces];
    }
}
