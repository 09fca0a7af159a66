using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a file draws, in the units and the frame of the file or of a block, so that it can be drawn anywhere.</summary>
/// <param name="layer">Its layer.</param>
/// <param name="line">Where it begins in the file.</param>
internal abstract class DxfItem(string layer, int line)
{
    private DxfMap _fittedTo;
    private (Point Point, double Bulge)[]? _fitted;

    internal string Layer => layer;

    internal int Line => line;

    /// <summary>How many segments, points or knots it keeps.</summary>
    internal virtual int Size => 0;

    /// <summary>What drawing it changes, to be told if it is drawn.</summary>
    internal IReadOnlyList<string> Changes { get; set; } = [];

    /// <summary>Draws it.</summary>
    /// <param name="pen">Takes what is drawn.</param>
    /// <param name="map">Where its coordinates go, in mm.</param>
    /// <param name="layer">The layer that it counts as lying on.</param>
    internal abstract void Draw(DxfPen pen, DxfMap map, string layer);

    /// <summary>
    /// The corners of a free curve, fitted once for all places where it has the same size: those of an array, or turned
    /// about a centre. So copies are alike, too.
    /// </summary>
    protected (Point Point, double Bulge)[] Fitted(
        DxfMap map,
        Func<DxfMap, IEnumerable<(Point, double)>> fit
    )
    {
        var (shape, placing) = map.Parted();
        if (_fitted is null || !_fittedTo.IsNear(shape))
            (_fitted, _fittedTo) = ([.. fit(shape)], shape);
        var sense = placing.Determinant < 0 ? -1 : 1;
        return Array.ConvertAll(
            _fitted,
            corner => (placing.Apply(corner.Point), sense * corner.Bulge)
        );
    }
}
