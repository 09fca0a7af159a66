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

    /// <summary>Draws it.</summary>
    /// <param name="pen">Takes what is drawn.</param>
    /// <param name="map">Where its coordinates go, in mm.</param>
    /// <param name="layer">The layer that it counts as lying on.</param>
    internal abstract void Draw(DxfPen pen, DxfMap map, string layer);

    /// <summary>The corners of a free curve, fitted once for all places that differ by a move, as those of an array do.</summary>
    protected (Point Point, double Bulge)[] Fitted(
        DxfMap map,
        Func<DxfMap, IEnumerable<(Point, double)>> fit
    )
    {
        if (_fitted is null || _fittedTo != map.Linear)
            (_fitted, _fittedTo) = ([.. fit(map.Linear)], map.Linear);
        return Array.ConvertAll(_fitted, corner => (corner.Point + map.Move, corner.Bulge));
    }
}
