using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// What to do about pieces of which nothing is left in a file's decimals, the same in every format: a chip or an
/// outline of the wood is refused, since the piece would be wrong without it; a line is left out and counted.
/// </summary>
internal static class Vanishing
{
    /// <summary>Whether a line is left out: its corners lie within two units of the last decimal, which no tool can show.</summary>
    /// <remarks>
    /// One unit would do were it not for rounding: a format counts from an origin of its own, and corners a unit apart
    /// may round to one place there. Corners two units apart never do.
    /// </remarks>
    internal static bool IsSpeck(ReadOnlySpan<Vertex> line, int decimals)
    {
        var reach = 2 * Math.Pow(10, -decimals);
        foreach (ref readonly var vertex in line)
            if (
                Math.Abs(vertex.Point.X - line[0].Point.X) >= reach
                || Math.Abs(vertex.Point.Y - line[0].Point.Y) >= reach
            )
                return false;
        return true;
    }

    /// <summary>Returns how many of a pattern's lines and strokes of text are left out.</summary>
    internal static int CountSpecks(Pattern pattern, int decimals)
    {
        var read = PatternReader.Read(pattern.Root);
        return read
            .LayoutLines.Concat(read.LineCuts.Select(cut => cut.Path))
            .Concat(read.Labels.SelectMany(label => label.Strokes()))
            .Count(line => IsSpeck(line.Span, decimals));
    }

    /// <summary>Returns the refusal of a chip, a hole in one or an outline, with what would help.</summary>
    internal static PatternException Refusal(ReadOnlySpan<Vertex> ring, int decimals)
    {
        var finest = new RoundedRun(SaveOptions.MaxDecimals, ring[0].Point);
        var helps = !RoundedRun.IsNothing(finest.Round(ring, closed: true));
        if (!helps && HasArcs(ring))
            return new(
                $"A chip, hole or outline is so flat that nothing of it is left: its arcs rise less than {Guard.Text(RoundedRun.FlatSagitta)} mm and are written as lines.",
                ring[0].Point,
                ["leave it out", "make it wider"]
            );
        return new(
            $"A chip, hole or outline is so small that nothing of it is left in {decimals} decimals.",
            ring[0].Point,
            [
                "leave it out or make it larger",
                .. helps ? [$"more decimals (up to {SaveOptions.MaxDecimals})"] : (string[])[],
            ]
        );
    }

    private static bool HasArcs(ReadOnlySpan<Vertex> ring)
    {
        foreach (ref readonly var vertex in ring)
            if (vertex.Bulge != 0)
                return true;
        return false;
    }
}
