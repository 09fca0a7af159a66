using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws facets where a placement takes them, each as bright as it faces the light. Nothing is allocated per facet.</summary>
internal sealed class WallBrush(SvgPathWriter paths, CarvingLight light, WallTones tones)
{
    private Vertex[] _placed = new Vertex[32];

    /// <param name="facets">In the frame of the chip's shape.</param>
    /// <param name="placement">Where the chip lies.</param>
    /// <param name="slope">Angle between the walls and the surface.</param>
    internal void Draw(IReadOnlyList<WallFacet> facets, Transform placement, Angle slope)
    {
        var level = slope.Sin() / placement.Scale;
        var upright = slope.Cos();
        for (var i = 0; i < facets.Count; i++)
        {
            var facing = placement.Apply(facets[i].Downhill) * level;
            paths.TryClosed(
                Place(facets[i].Ring, placement),
                tones.Of(light.BrightnessOf(facing, upright))
            );
        }
    }

    private ReadOnlySpan<Vertex> Place(Vertex[] ring, Transform placement)
    {
        if (_placed.Length < ring.Length)
            _placed = new Vertex[2 * ring.Length];
        for (var i = 0; i < ring.Length; i++)
            _placed[i] = new(placement.Apply(ring[i].Point), placement.ApplyBulge(ring[i].Bulge));
        return _placed.AsSpan(0, ring.Length);
    }
}
