using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A line or arc as it is written: its end in units of the last decimal, and the radius of an arc.</summary>
/// <param name="X">Rounded x of the end.</param>
/// <param name="Y">Rounded y of the end, downwards.</param>
/// <param name="Radius">Radius in mm, 0 for a line.</param>
/// <param name="IsClockwise">Whether the arc turns clockwise as seen, which is what SVG's sweep flag says.</param>
internal readonly record struct SvgPiece(long X, long Y, double Radius, bool IsClockwise)
{
    internal bool IsLine => Radius == 0;
}

/// <summary>
/// A run of corners turned into what SVG draws well: arcs of at most a quarter turn, no piece without length, each end
/// the rounded start of the next. One object serves all runs of a file.
/// </summary>
internal sealed class SvgRun(SvgSheet sheet, int decimals)
{
    /// <summary>
    /// Bulge of a quarter turn, with a little to spare for arcs that are one but for arithmetic. Readers compute an
    /// arc's centre from its ends and radius: at a half turn a radius rounded up by 0.0005 mm moves the middle of the
    /// arc by 0.14 mm, at a quarter turn by less than 0.001 mm.
    /// </summary>
    private const double QuarterTurn = 0.41422;

    private SvgPiece[] _pieces = new SvgPiece[16];
    private int _count;
    private int _arcs;

    internal long StartX { get; private set; }

    internal long StartY { get; private set; }

    internal ReadOnlySpan<SvgPiece> Pieces => _pieces.AsSpan(0, _count);

    /// <summary>Whether a closed run is more than a line there and back.</summary>
    internal bool EnclosesArea => _count > 2 || (_count == 2 && _arcs > 0);

    internal void ReadClosed(ReadOnlySpan<Vertex> ring)
    {
        ReadOpen(ring);
        Add(ring[^1], ring[0].Point);
    }

    internal void ReadOpen(ReadOnlySpan<Vertex> run)
    {
        _count = _arcs = 0;
        (StartX, StartY) = Rounded(run[0].Point);
        for (var i = 1; i < run.Length; i++)
            Add(run[i - 1], run[i].Point);
    }

    private void Add(in Vertex from, Point to)
    {
        if (from.Bulge == 0)
        {
            AddPiece(to, 0, false);
            return;
        }
        var (chord, bulge) = (from.Point.DistanceTo(to), Math.Abs(from.Bulge));
        if (bulge * chord < 2 * RoundedRun.FlatSagitta)
        {
            AddPiece(to, 0, false);
            return;
        }
        var radius = chord * (1 + bulge * bulge) / (4 * bulge);
        // Turning y over changes the numbers, not the picture: what turns counter-clockwise as seen still does.
        var isClockwise = from.Bulge < 0;
        if (bulge > QuarterTurn)
            AddPiece(new Segment(from.Point, to, from.Bulge).Middle, radius, isClockwise);
        AddPiece(to, radius, isClockwise);
    }

    private void AddPiece(Point to, double radius, bool isClockwise)
    {
        var (x, y) = Rounded(to);
        var isAtLast =
            _count > 0
                ? _pieces[_count - 1].X == x && _pieces[_count - 1].Y == y
                : StartX == x && StartY == y;
        if (isAtLast)
            return;
        if (_count == _pieces.Length)
            Array.Resize(ref _pieces, 2 * _count);
        _pieces[_count++] = new(x, y, radius, isClockwise);
        if (radius > 0)
            _arcs++;
    }

    private (long X, long Y) Rounded(Point point) =>
        (
            FixedPoint.Scale(sheet.X(point.X), decimals),
            FixedPoint.Scale(sheet.Y(point.Y), decimals)
        );
}
