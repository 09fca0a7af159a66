using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stretch of a path on one line or one circle.</summary>
internal sealed class BendStretch
{
    private readonly Segment? _line;
    private readonly Point _centre;
    private readonly double _radius;
    private readonly Angle _from;
    private readonly Angle _sweep;

    /// <summary>An arc or a whole circle.</summary>
    internal BendStretch(Point centre, double radius, Angle from, Angle sweep) =>
        (_centre, _radius, _from, _sweep) = (centre, radius, from, sweep);

    private BendStretch(Segment line) => _line = line;

    /// <summary>Returns the stretch of segments that go on along one line or circle.</summary>
    /// <param name="segments">The segments, at least one.</param>
    /// <param name="isRing">Whether they are the whole of a closed path, and so of a circle.</param>
    internal static BendStretch Of(IReadOnlyList<Segment> segments, bool isRing)
    {
        var (first, last) = (segments[0], segments[^1]);
        if (first.IsLine)
            return new(new Segment(first.Start, last.End));
        // The longest tells best where its circle runs.
        var circle = Circle.Under(segments.MaxBy(segment => segment.Length));
        var sweep = segments.Sum(segment => segment.Sweep.Radians);
        return new(
            circle.Centre,
            circle.Radius,
            (first.Start - circle.Centre).Direction,
            isRing ? Angle.FullTurn * Math.Sign(sweep) : Angle.FromRadians(sweep)
        );
    }

    /// <summary>Length where lengths are measured, as a share of that along the path.</summary>
    internal double Share(BandSpan band) =>
        _line is null ? (_radius - Side * band.Measured) / _radius : 1;

    /// <summary>Returns the stretch as the band sees it.</summary>
    /// <param name="start">x where it begins.</param>
    /// <param name="band">Where the band lies beside the path.</param>
    /// <exception cref="PatternException">It is too tight for the band.</exception>
    internal BendPiece Piece(double start, BandSpan band)
    {
        if (_line is { } line)
        {
            var along = line.Chord.Unit();
            return new StraightPiece(
                start,
                line.Length,
                line.Start + along.Left * band.Offset,
                along
            );
        }
        band.RefuseTight(_radius, Side, _centre.Polar(_radius, _from + _sweep / 2));
        return new ArcPiece(
            start,
            Math.Abs(_sweep.Radians) * (_radius - Side * band.Measured),
            _centre,
            _radius - Side * band.Offset,
            _from,
            _sweep
        );
    }

    private int Side => Math.Sign(_sweep.Radians);
}
