namespace PatternGen;

/// <summary>The facets of shapes, made once for all repeats of a shape.</summary>
/// <param name="detail">How fine they are; what is left free is in mm on the wood.</param>
internal sealed class KnownFacets(FacetDetail detail)
{
    /// <summary>Sides of a chip whose walls are drawn, at most: each is measured against all others. No knife goes round more.</summary>
    private const int MostSides = 1000;

    private (ChipShape? Shape, float Scale, IReadOnlyList<WallFacet> Facets) _last = (null, 0, []);

    // Scales are compared as single floats: turning a motif leaves them a few last digits of a double off.
    private readonly Dictionary<(ChipShape, float), IReadOnlyList<WallFacet>> _known = [];

    /// <summary>Returns the facets of a shape that is drawn at a scale; none for outlines that no one could carve.</summary>
    internal IReadOnlyList<WallFacet> Of(ChipShape shape, double scale)
    {
        var key = detail.Free > 0 ? (float)scale : 1;
        // Nearly always the shape is that of the chip before, or one of a few.
        if (_last.Shape == shape && _last.Scale == key)
            return _last.Facets;
        if (!_known.TryGetValue((shape, key), out var facets))
            _known[(shape, key)] = facets = Make(shape, scale);
        _last = (shape, key, facets);
        return facets;
    }

    private IReadOnlyList<WallFacet> Make(ChipShape shape, double scale)
    {
        if (shape.Corners.Length > MostSides)
            return [];
        var scaled = detail with { Free = detail.Free / scale };
        return StabFloor.Of(shape) is { } floor
            ? floor.Facets(scaled.Free)
            : WallFacets.Of(shape.Roof, scaled);
    }
}
