using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A line or an arc of a groove's path along which the clearance grows or falls evenly.</summary>
/// <param name="Segment">The piece of the path, of some length.</param>
/// <param name="Start">Clearance at its start, in mm.</param>
/// <param name="Growth">By how much the clearance grows for each mm along it, between -1 and 1.</param>
internal readonly record struct GroovePiece(Segment Segment, double Start, double Growth)
{
    /// <summary>
    /// An arc that turns by less than this, in radians, is first searched like a line: its circle's numbers would have
    /// lost the digits that the search needs, and it lies nearer to its chord than the search begins anyway.
    /// </summary>
    private const double Flat = 1e-3;

    /// <summary>Steps that take a place a thousandth off to the last digit.</summary>
    private const int Refinements = 4;

    internal double Length => Segment.Length;

    internal double End => Start + Growth * Length;

    /// <summary>Length of the wall's normal across the path, seen from above: √(1 - growth²).</summary>
    internal double Across => Math.Sqrt(1 - Growth * Growth);

    /// <summary>Returns the pieces of a path, cut where its tapers end too.</summary>
    internal static GroovePiece[] Along(Chain path, double width, GrooveProfile profile)
    {
        var (length, full) = (path.Length, width / 2);
        var taper = profile.TaperOn(length);
        var merge = path.Tolerance.Merge;
        double[] kinks = profile.IsTapering ? [taper, length - taper] : [];
        var pieces = new List<GroovePiece>();
        double walked = 0;
        foreach (var whole in path.Segments)
        {
            Segment? rest = whole;
            var end = walked + whole.Length;
            foreach (var kink in kinks)
                if (rest is { } segment && kink > walked + merge && kink < end - merge)
                {
                    var (before, after) = segment.SplitAt(kink - walked);
                    Add(before);
                    rest = after;
                }
            if (rest is { Length: > 0 } last)
                Add(last);
            walked = end;
        }
        return [.. pieces];

        void Add(Segment segment)
        {
            var (from, to) = (walked, walked + segment.Length);
            var middle = (from + to) / 2;
            var growth =
                middle < taper ? full / taper
                : middle > length - taper ? -full / taper
                : 0;
            pieces.Add(new(segment, full * profile.ShareAt(from, length), growth));
            walked = to;
        }
    }

    /// <summary>Clearance left at a point by the cones along this piece; negative where they do not reach.</summary>
    /// <param name="point">The point.</param>
    /// <param name="cutOffStart">Whether nothing is cut beyond the start, square to the path.</param>
    /// <param name="cutOffEnd">The same of the end.</param>
    internal double ClearanceAt(Point point, bool cutOffStart, bool cutOffEnd)
    {
        var length = Length;
        // No cone stands farther off than the nearest point of the piece.
        if (
            Math.Max(Start, End)
            <= Segment.DistanceTo(point) - Tolerance.For(Segment.Extents).Merge
        )
            return double.NegativeInfinity;
        var best = double.NegativeInfinity;
        if (!cutOffStart || (point - Segment.Start).Dot(Segment.TangentAt(0)) >= 0)
            best = Clearance(point, 0);
        if (!cutOffEnd || (point - Segment.End).Dot(Segment.TangentAt(length)) <= 0)
            best = Math.Max(best, Clearance(point, length));
        if (Segment.IsLine || Math.Abs(4 * Math.Atan(Segment.Bulge)) < Flat)
            return Math.Max(best, From(point, OnLine(point)));
        foreach (var guess in OnCircle(point))
            best = Math.Max(best, From(point, guess));
        return best;
    }

    /// <summary>Clearance that the cone at a place along the piece leaves at a point.</summary>
    private double Clearance(Point point, double along) =>
        Start + Growth * along - Segment.PointAt(along).DistanceTo(point);

    /// <summary>Clearance by the best cone near a place; none if that lies off the piece.</summary>
    private double From(Point point, double guess)
    {
        var length = Length;
        var along = Math.Clamp(guess, 0, length);
        if (!Segment.IsLine)
            for (var i = 0; i < Refinements; i++)
                along = Math.Clamp(Refined(point, along), 0, length);
        // At the ends others decide, who know whether the piece is cut off there.
        return along > 0 && along < length ? Clearance(point, along) : double.NegativeInfinity;
    }

    /// <summary>Where the clearance left at a point no longer grows along the straight line through both ends.</summary>
    private double OnLine(Point point)
    {
        var unit = Segment.Chord.Unit();
        var offset = point - Segment.Start;
        return offset.Dot(unit) + Math.Abs(offset.Cross(unit)) * Growth / Across;
    }

    /// <summary>
    /// Where the clearance left at a point does not change along the arc's circle. At an angle δ from the point's own
    /// direction, with the point ρ from the centre of radius R, that is ρ sin δ = k √(R² + ρ² - 2Rρ cos δ): a quadratic
    /// equation for cos δ.
    /// </summary>
    private IEnumerable<double> OnCircle(Point point)
    {
        var (centre, radius) = (Segment.Centre, Segment.Radius);
        var (toStart, toPoint) = (Segment.Start - centre, point - centre);
        var far = toPoint.Length;
        if (far <= Math.Abs(Growth) * radius)
            yield break;
        var turning = Math.Sign(Segment.Bulge);
        var own = turning * Math.Atan2(toStart.Cross(toPoint), toStart.Dot(toPoint));
        var root = Across * Math.Sqrt(far * far - Growth * Growth * radius * radius);
        foreach (var sign in (int[])[1, -1])
        {
            var cosine = (Growth * Growth * radius + sign * root) / far;
            var off = Math.Acos(Math.Clamp(cosine, -1, 1));
            foreach (var angle in (double[])[own + off, own - off])
                for (var turn = -1; turn <= 1; turn++)
                    yield return (angle + turn * Math.Tau) * radius;
        }
    }

    /// <summary>One step of Newton's method for the place where the clearance left at a point does not change.</summary>
    private double Refined(Point point, double along)
    {
        var offset = point - Segment.PointAt(along);
        var distance = offset.Length;
        if (distance == 0)
            return along;
        var tangent = Segment.TangentAt(along);
        var forward = offset.Dot(tangent) / distance;
        var curved = Segment.Curvature * offset.Dot(tangent.Left);
        var change = (forward * forward - 1 + curved) / distance;
        // Only towards a greatest clearance; elsewhere the guess is left as it is.
        return change < 0 ? along - (Growth + forward) / change : along;
    }
}
