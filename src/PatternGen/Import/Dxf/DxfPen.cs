using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws what a file says into the curves of the import, layers, limits and blocks minded.</summary>
internal sealed class DxfPen(ImportedCurves curves, DxfLayerTable layers, DxfBlockTable blocks)
{
    private int _depth;

    /// <summary>Whether anything was drawn that only nearly follows the file.</summary>
    internal bool HasFreeCurves { get; private set; }

    /// <summary>Draws an item, unless its layer hides it.</summary>
    /// <param name="item">The item.</param>
    /// <param name="map">Where its coordinates go, in mm.</param>
    /// <param name="owner">The layer of the block that it belongs to, which is that of what lies on layer 0; null outside of blocks.</param>
    internal void Draw(DxfItem item, DxfMap map, string? owner)
    {
        curves.CountElement(item.Line);
        var layer = owner is not null && item.Layer == DxfLayerTable.Zero ? owner : item.Layer;
        if (layers.Hides(layer, item is DxfInsert) is { } reason)
            Skip(reason, item.Line);
        else
        {
            foreach (var change in item.Changes)
                curves.Note(ImportNoteKind.Changed, change, item.Line);
            item.Draw(this, map, layer);
        }
    }

    internal void Assume(string what, int line) => curves.Note(ImportNoteKind.Assumed, what, line);

    internal void Skip(string what, int line) => curves.Note(ImportNoteKind.Skipped, what, line);

    /// <summary>Draws a block once or in rows and columns.</summary>
    internal void Draw(DxfInsert insert, DxfMap map, string layer)
    {
        if (blocks.Find(insert.Block) is not { } block)
        {
            Skip($"block \"{insert.Block}\", which the file does not hold", insert.Line);
            return;
        }
        if (block.IsOutside)
        {
            Skip($"block \"{insert.Block}\", which lies in another file", insert.Line);
            return;
        }
        if (block.IsOpen)
            throw new ImportException(
                $"The block \"{insert.Block}\" holds itself.",
                ImportedCurves.LineName(insert.Line),
                ["a drawing whose blocks are nested without a circle"]
            );
        if (_depth >= curves.Settings.Limits.Depth)
            throw new ImportException(
                $"Blocks are nested more than {curves.Settings.Limits.Depth} deep.",
                ImportedCurves.LineName(insert.Line),
                ["a drawing with blocks less deep", "a higher limit (ImportLimits.WithDepth)"]
            );
        _depth++;
        block.IsOpen = true;
        if (block.Items.Count > 0)
            foreach (var place in insert.Places(block.Base, map))
            foreach (var item in block.Items)
                Draw(item, place, layer);
        block.IsOpen = false;
        _depth--;
    }

    internal void Add((Point Point, double Bulge)[] corners, bool isClosed, int line)
    {
        if (corners.Length < 2)
        {
            Skip("polyline with fewer than two corners", line);
            return;
        }
        var vertices = new Vertex[corners.Length];
        for (var i = 0; i < vertices.Length; i++)
            vertices[i] = VertexOf(corners[i].Point, corners[i].Bulge, line);
        SegmentRun run;
        try
        {
            run = isClosed ? new Contour(vertices) : new Chain(vertices);
        }
        catch (ArgumentException inner)
        {
            throw Unusable(inner, line);
        }
        curves.Add(run, line);
    }

    /// <summary>The corners of an arc of an ellipse, the last one too.</summary>
    internal IEnumerable<(Point, double)> Corners(EllipseArc arc, int line)
    {
        var (_, u, v, from, sweep) = arc = arc.OnAxes();
        return Corners(
            () =>
                FreeCurve.Ellipse(
                    arc.Centre,
                    u.Length,
                    v.Length,
                    u.Direction,
                    Angle.FromRadians(from),
                    Angle.FromRadians(Math.Clamp(sweep, -Math.Tau, Math.Tau))
                ),
            line
        ).Corners;
    }

    /// <summary>The corners of a free curve, the last one too, and whether it ends where it starts.</summary>
    internal (IEnumerable<(Point, double)> Corners, bool Closes) Corners(
        Func<FreeCurve> curve,
        int line
    )
    {
        HasFreeCurves = true;
        curves.Note(ImportNoteKind.Changed, "ellipse or free curve, drawn with arcs", line);
        try
        {
            var free = curve();
            var chain = free.ToChain(curves.Settings.Accuracy);
            return (chain.Vertices.Select(vertex => (vertex.Point, vertex.Bulge)), free.IsClosed);
        }
        catch (Exception inner) when (inner is ArgumentException or PatternException)
        {
            throw Unusable(inner, line);
        }
    }

    private static Vertex VertexOf(Point point, double bulge, int line)
    {
        if (!(Math.Abs(point.X) <= Guard.MaxCoordinate && Math.Abs(point.Y) <= Guard.MaxCoordinate))
            throw new ImportException(
                $"A place lies at {point} mm, but drawings reach at most 2 km from the origin.",
                ImportedCurves.LineName(line),
                [
                    "the drawing moved to the origin",
                    "the unit that it was drawn in (ImportSettings.WithUnit)",
                ]
            );
        return Math.Abs(bulge) <= Guard.MaxBulge
            ? new(point, bulge)
            : throw new ImportException(
                FormattableString.Invariant(
                    $"The bulge of an arc is at most 1000000000 either way, but here it is {bulge}."
                ),
                ImportedCurves.LineName(line),
                ["a whole circle as CIRCLE"]
            );
    }

    private static ImportException Unusable(Exception inner, int line) =>
        new(
            $"The curve can't be drawn: {inner.Message}",
            ImportedCurves.LineName(line),
            ["the drawing without it"],
            inner
        );
}
