using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes runs of lines and arcs as elements: straight from numbers to bytes, nothing allocated per element.</summary>
internal sealed partial class SvgPathWriter(OutputBuffer output, SvgSheet sheet, int decimals)
{
    /// <summary>The longest command: a letter, two radii, three flags, two coordinates and the spaces between.</summary>
    private const int MaxCommand = 4 * (FixedPoint.MaxLength + 1) + 8;

    /// <summary>From this radius on (mm) its decimals move the arc by less than the last decimal of a coordinate.</summary>
    private const double LargeRadius = 1e6;

    private readonly SvgRun _run = new(sheet, decimals);

    /// <summary>Begins a path of several runs; attributes come with their leading space, ASCII.</summary>
    internal void Begin(ReadOnlySpan<byte> attributes = default)
    {
        output.Write("<path"u8);
        output.Write(attributes);
        output.Write(" d=\""u8);
    }

    internal void End() => output.Write("\"/>\n"u8);

    /// <summary>Writes a closed run as an element of its own: a path, or a circle if it is a whole one.</summary>
    /// <param name="ring">The run.</param>
    /// <param name="attributes">More of the element's attributes, as for <see cref="Begin"/>.</param>
    internal void Closed(ReadOnlySpan<Vertex> ring, ReadOnlySpan<byte> attributes = default)
    {
        if (IsCircle(ring))
        {
            Circle(ring[0].Point, ring[1].Point, attributes);
            return;
        }
        Begin(attributes);
        AddClosed(ring);
        End();
    }

    /// <summary>Writes an open run as an element of its own; one that ends where it starts is closed.</summary>
    internal void Open(ReadOnlySpan<Vertex> run)
    {
        if (run.Length > 2 && run[0].Point == run[^1].Point)
        {
            Closed(run[..^1]);
            return;
        }
        Begin();
        AddOpen(run);
        End();
    }

    /// <summary>Writes an open run as an element with a line of its own width, in mm.</summary>
    internal void Open(ReadOnlySpan<Vertex> run, double width)
    {
        output.Write("<path stroke-width=\""u8);
        output.Write(width, decimals);
        output.Write("\" d=\""u8);
        AddOpen(run);
        End();
    }

    /// <summary>Adds a closed run to the path that was begun.</summary>
    /// <exception cref="PatternException">Nothing is left of it in the file's decimals.</exception>
    internal void AddClosed(ReadOnlySpan<Vertex> ring)
    {
        if (!TryAddClosed(ring))
            throw Vanished(ring[0].Point);
    }

    /// <summary>Writes a closed run as a path with attributes of its own, unless nothing is left of it in the file's decimals.</summary>
    internal void TryClosed(ReadOnlySpan<Vertex> ring, ReadOnlySpan<byte> attributes)
    {
        _run.ReadClosed(ring);
        if (!_run.EnclosesArea)
            return;
        Begin(attributes);
        WriteClosedRun();
        End();
    }

    /// <summary>Adds a closed run unless nothing is left of it in the file's decimals.</summary>
    private bool TryAddClosed(ReadOnlySpan<Vertex> ring)
    {
        _run.ReadClosed(ring);
        if (!_run.EnclosesArea)
            return false;
        WriteClosedRun();
        return true;
    }

    private void WriteClosedRun()
    {
        // The way back to the start is what closing draws; only an arc needs saying.
        var last = _run.Pieces[^1];
        WriteRun(last.IsLine ? _run.Pieces[..^1] : _run.Pieces);
        output.Write("Z"u8);
    }

    /// <summary>Adds an open run to the path that was begun.</summary>
    /// <exception cref="PatternException">Nothing is left of it in the file's decimals.</exception>
    internal void AddOpen(ReadOnlySpan<Vertex> run)
    {
        if (!TryAddOpen(run))
            throw Vanished(run[0].Point);
    }

    /// <summary>Adds an open run unless nothing is left of it in the file's decimals.</summary>
    internal bool TryAddOpen(ReadOnlySpan<Vertex> run)
    {
        _run.ReadOpen(run);
        if (_run.Pieces.IsEmpty)
            return false;
        WriteRun(_run.Pieces);
        return true;
    }

    private static bool IsCircle(ReadOnlySpan<Vertex> ring) =>
        ring.Length == 2 && ring[0].Bulge == ring[1].Bulge && Math.Abs(ring[0].Bulge) == 1;

    private void Circle(Point a, Point b, ReadOnlySpan<byte> attributes)
    {
        var centre = a.Towards(b, 0.5);
        var radius = FixedPoint.Scale(a.DistanceTo(b) / 2, decimals);
        if (radius == 0)
            throw Vanished(a);
        output.Write("<circle"u8);
        output.Write(attributes);
        output.Write(" cx=\""u8);
        output.Write(sheet.X(centre.X), decimals);
        output.Write("\" cy=\""u8);
        output.Write(sheet.Y(centre.Y), decimals);
        output.Write("\" r=\""u8);
        output.WriteScaled(radius, decimals);
        End();
    }

    private PatternException Vanished(Point place) =>
        new(
            $"A line or chip is so small that nothing of it is left in {decimals} decimals.",
            place,
            ["leave it out", "more decimals (up to 9)"]
        );
}
