using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class ImportedDrawing
{
    /// <summary>Returns the area that the closed curves bound: what lies inside an odd number of them. Open curves take no part.</summary>
    /// <returns><c>Import.Drawing("lid.svg").Outline().Inset(8).Largest()</c> is a line 8 mm inside the edge.</returns>
    /// <exception cref="PatternException">No curve is closed; the message says where the open ones end and what would close them.</exception>
    public Region Outline()
    {
        // A curve there and back bounds nothing.
        Contour[] rings = [.. _contours.Where(ring => ring.Area > AreaLost(ring))];
        return rings.Length > 0 ? new(rings) : throw NothingClosed();
    }

    /// <summary>Returns each closed curve as a chip; where one lies in another, the ground in it stays.</summary>
    /// <exception cref="PatternException">No curve is closed, or one crosses itself or another.</exception>
    public Pattern AsChips() => Pattern.OfChips(Outline().Parts);

    /// <summary>Returns the closed curves as the outline of a piece of wood with its holes.</summary>
    /// <exception cref="PatternException">No curve is closed.</exception>
    public Pattern AsStock() => Pattern.OfStock(Outline().Contours);

    /// <summary>Returns all curves, closed and open, as layout lines: drawn, not cut.</summary>
    public Pattern AsLayoutLines() =>
        Pattern.OfLayoutLines(
            _contours
                .Select(ring => new Chain(ring.Vertices.Append(new(ring.Vertices[0].Point))))
                .Concat(_chains)
        );

    /// <summary>Returns all curves, closed and open, as the figure of a compass drawing, so that the areas between them can be chosen and carved.</summary>
    /// <returns><c>drawing.Figure().Carve(part =&gt; part.Area &lt; 200)</c> carves the small ones.</returns>
    /// <remarks>
    /// Curves may cross and end on each other: the areas are those between the lines, however these are joined. The figure has
    /// no steps, since a file does not say how to draw it by hand, and no petals.
    /// </remarks>
    /// <exception cref="PatternException">There is no curve.</exception>
    public CompassDrawing Figure() =>
        _contours.Length + _chains.Length > 0
            ? CompassDrawing.OfCurves([
                .. _contours.SelectMany(WholeCurves.Of),
                .. _chains.SelectMany(WholeCurves.Of),
            ])
            : throw NothingDrawn();

    private static double AreaLost(Contour ring) => Tolerance.For(ring.Extents).Merge * ring.Length;

    private PatternException NothingClosed()
    {
        if (_chains.Length == 0)
            return NothingDrawn();
        var narrowest = Gaps[0];
        // Ends in a fork lie in one point, and joining more coarsely is no help.
        if (narrowest.Width == 0)
            return new(
                $"No curve of the drawing is closed: there are {this}, and more than two ends meet in one point.",
                narrowest.From,
                [
                    "Figure, for the areas between curves that meet",
                    "a drawing with each outline by itself",
                ]
            );
        var more = Gaps.Count > MostTold ? $"; and {Gaps.Count - MostTold} more" : "";
        return new(
            $"No curve of the drawing is closed: there are {this}, and their ends lie apart: {string.Join("; ", Gaps.Take(MostTold))}{more}.",
            narrowest.From,
            [
                .. Joining(),
                "the gaps closed in the drawing",
                "Figure, for areas between curves that cross",
            ]
        );
    }

    /// <summary>The setting with which a curve would close; none if the gaps are too wide for any.</summary>
    private IEnumerable<string> Joining()
    {
        if (_gaps.Value.Closing is not { } width)
            yield break;
        var within = Math.Ceiling(width * 100) / 100;
        if (within <= ImportSettings.MostJoined)
            yield return FormattableString.Invariant(
                $"ImportSettings.Default.WithJoinWithin({within})"
            );
    }

    private PatternException NothingDrawn()
    {
        var skipped = Notes.Where(note => note.Kind == ImportNoteKind.Skipped).Take(3).ToArray();
        return new(
            skipped.Length > 0
                ? $"The drawing has no curve that can be read. {string.Join(". ", skipped.Select(note => note.ToString()))}."
                : "The drawing has no curve.",
            null,
            ["a drawing with lines or arcs", "another layer, if layers were named"]
        );
    }

    /// <summary>Gaps that a message tells; <see cref="Gaps"/> has all of them.</summary>
    private const int MostTold = 4;
}
