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
    /// <exception cref="PatternException">Nothing is left of it in the file's decimals.</exception>
    internal void Closed(ReadOnlySpan<Vertex> ring, ReadOnlySpan<byte> attributes = default)
    {
        if (TryCircle(ring, attributes))
            return;
        Begin(attributes);
        AddClosed(ring);
        End();
    }

    /// <summary>Writes a chip as an element of its own, with its holes left out of its area.</summary>
    /// <param name="chip">The chip.</param>
    /// <param name="attributes">As for <see cref="Begin"/>.</param>
    /// <exception cref="PatternException">Nothing is left of one of its rings in the file's decimals.</exception>
    internal void Chip(in PlacedChip chip, ReadOnlySpan<byte> attributes = default)
    {
        if (!chip.HasHoles)
        {
            Closed(chip.Outline, attributes);
            return;
        }
        // Filled by direction, and holes run the other way round.
        Begin(attributes);
        for (var ring = 0; ring < chip.RingCount; ring++)
            AddClosed(chip.Ring(ring));
        End();
    }

    /// <summary>Writes an open run as an element of its own; one that ends where it starts is closed. Specks are left out.</summary>
    internal void Open(ReadOnlySpan<Vertex> run)
    {
        if (Vanishing.IsSpeck(run, decimals))
            return;
        var isRound = run.Length > 2 && run[0].Point == run[^1].Point;
        if (isRound && TryCircle(run[..^1], default))
            return;
        Begin();
        if (isRound)
            AddRound(run[..^1]);
        else
            AddOpen(run);
        End();
    }

    /// <summary>Writes an open run as an element with a line of its own width, in mm. Specks are left out.</summary>
    internal void Open(ReadOnlySpan<Vertex> run, double width)
    {
        if (Vanishing.IsSpeck(run, decimals))
            return;
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
        _run.ReadClosed(ring);
        if (!_run.EnclosesArea)
            throw Vanishing.Refusal(ring, decimals);
        WriteClosedRun();
    }

    /// <summary>Adds a closed run to the path that was begun, unless nothing is left of it in the file's decimals.</summary>
    internal void TryAddClosed(ReadOnlySpan<Vertex> ring)
    {
        _run.ReadClosed(ring);
        if (_run.EnclosesArea)
            WriteClosedRun();
    }

    /// <summary>Adds an open run to the path that was begun, unless it is a speck.</summary>
    internal void AddOpen(ReadOnlySpan<Vertex> run)
    {
        if (Vanishing.IsSpeck(run, decimals))
            return;
        _run.ReadOpen(run);
        WriteRun(_run.Pieces);
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

    private void WriteClosedRun()
    {
        // The way back to the start is what closing draws; only an arc needs saying.
        var last = _run.Pieces[^1];
        WriteRun(last.IsLine ? _run.Pieces[..^1] : _run.Pieces);
        output.Write("Z"u8);
    }

    private void AddRound(ReadOnlySpan<Vertex> ring)
    {
        _run.ReadClosed(ring);
        // Out and straight back is one line.
        if (_run.EnclosesArea)
            WriteClosedRun();
        else
            WriteRun(_run.Pieces[..1]);
    }

    private bool TryCircle(ReadOnlySpan<Vertex> ring, ReadOnlySpan<byte> attributes)
    {
        if (WholeCircle.Of(ring, decimals) is not { } circle)
            return false;
        output.Write("<circle"u8);
        output.Write(attributes);
        output.Write(" cx=\""u8);
        output.Write(sheet.X(circle.Centre.X), decimals);
        output.Write("\" cy=\""u8);
        output.Write(sheet.Y(circle.Centre.Y), decimals);
        output.Write("\" r=\""u8);
        output.Write(circle.Radius, decimals);
        End();
        return true;
    }
}
