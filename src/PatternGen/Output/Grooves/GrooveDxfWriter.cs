using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Writes groove paths as DXF: polylines in space, the outline of the wood, and a note.</summary>
internal sealed class GrooveDxfWriter
{
    /// <summary>A polyline in space is itself, its corners and its end.</summary>
    private const int EntitiesBesidesCorners = 2;

    private readonly GroovePaths _paths;
    private readonly SaveOptions _options;
    private readonly IReadOnlyList<Contour> _stock;
    private readonly IReadOnlyList<Chain> _note;
    private readonly Extents _extents;

    private GrooveDxfWriter(GroovePaths paths, SaveOptions options)
    {
        (_paths, _options) = (paths, options);
        _stock = LineSides.Once(paths.Pattern.Stock, options.Decimals);
        var drawn = DrawnExtents();
        _note = GrooveNote.Strokes(paths, drawn, options);
        _extents = _note.Aggregate(drawn, (extents, line) => extents.Including(line.Extents));
    }

    internal static void Write(GroovePaths paths, OutputBuffer output, SaveOptions options)
    {
        var writer = new GrooveDxfWriter(paths, options);
        IDxfFile file =
            options.DxfVersion == DxfVersion.R12
                ? new R12File(output, options.Decimals, DxfLayers.OfGrooves)
                : new R2000File(output, options.Decimals, DxfLayers.OfGrooves, []);
        writer.Write(file);
    }

    private void Write(IDxfFile file)
    {
        var shapes = new DxfShapes(file.Drawing, _options.Decimals);
        file.Begin(
            _extents,
            _note.Count
                + _stock.Count
                + _paths.PlaceCount
                + _paths.PathCount * EntitiesBesidesCorners
        );
        foreach (var line in _note)
            shapes.Run(Layer.Note, line);
        WritePaths(file.Drawing);
        foreach (var outline in _stock)
            shapes.Ring(Layer.Stock, outline.Span);
        file.End();
    }

    private void WritePaths(IDxfEntities drawing)
    {
        var rounded = new RoundedPath(_options.Decimals, Math.Tan(_paths.Bit.WallAngle.Radians));
        foreach (var path in _paths.Paths)
        {
            var places = rounded.Round(path, out var isClosed);
            // What is smaller than the decimals is no groove.
            if (places.Length > 1)
                drawing.Polyline(Layer.Grooves, places, isClosed);
        }
    }

    private Extents DrawnExtents()
    {
        var drawn = _paths.Pattern.Bounds(LayerSet.Stock);
        foreach (var place in _paths.Paths.SelectMany(path => path.Places))
            drawn = drawn?.Including(place.Point) ?? Extents.Of(place.Point);
        return drawn ?? default;
    }
}
