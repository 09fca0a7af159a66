using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The line square to another through a point, as the compass finds it: Euclid I.11 and I.12.</summary>
internal sealed class SquareLine
{
    private readonly MarkedPoint _through;
    private readonly Point[] _cuts;
    private readonly Point _near;
    private readonly Point _beyond;

    /// <exception cref="PatternException">The setting does not reach across the line.</exception>
    internal SquareLine(
        Segment line,
        MarkedPoint through,
        Point at,
        double setting,
        Tolerance tolerance
    )
    {
        _through = through;
        var along = line.Chord.Unit();
        var offset = at - line.Start;
        var height = along.Cross(offset);
        IsOnLine = Math.Abs(height) <= tolerance.Merge;
        Foot = IsOnLine ? at : line.Start + along * along.Dot(offset);
        var distance = IsOnLine ? 0 : Math.Abs(height);
        if (setting <= distance + tolerance.Merge)
            throw new PatternException(
                $"From {through.Label}, a compass set to {Guard.Text(setting)} mm does not reach across the line, {Guard.Text(distance)} mm away.",
                at,
                [$"a setting of more than {Guard.Text(distance)} mm"]
            );
        var half = Math.Sqrt((setting - distance) * (setting + distance));
        Opened = 2 * half;
        _cuts = [Foot - along * half, Foot + along * half];
        // Arcs as wide as the cuts are apart cross as in an equilateral triangle.
        var rise = along.Left * (Math.Sqrt(3) * half * (height < 0 && !IsOnLine ? -1 : 1));
        (_near, _beyond) = (Foot + rise, Foot - rise);
        Line = new(IsOnLine ? _near : at, _beyond);
    }

    internal bool IsOnLine { get; }

    internal Point Foot { get; }

    /// <summary>The wider setting: the distance of both cuts.</summary>
    internal double Opened { get; }

    internal Segment Line { get; }

    /// <summary>The arcs that find the cuts, then those that find the crossings.</summary>
    internal IEnumerable<DrawnCurve> Ticks()
    {
        foreach (var cut in _cuts)
            yield return Pencil.Tick(_through.Point, cut);
        foreach (var crossing in (Point[])[_near, _beyond])
        foreach (var cut in _cuts)
            yield return Pencil.Tick(cut, crossing);
    }
}
