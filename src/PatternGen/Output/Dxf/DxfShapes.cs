using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws contours and chains as the entities that suit them: lines, circles or polylines.</summary>
/// <param name="file">Where the entities go.</param>
/// <param name="decimals">Decimals of a coordinate.</param>
/// <param name="origin">The place in the pattern that is the entities' origin.</param>
internal sealed class DxfShapes(IDxfEntities file, int decimals, Point origin = default)
{
    private readonly RoundedRun _rounded = new(decimals, origin);
    private readonly double _unit = Math.Pow(10, -decimals);

    /// <summary>Draws a closed contour.</summary>
    /// <exception cref="PatternException">Nothing is left of it once it is rounded.</exception>
    internal void Ring(Layer layer, ReadOnlySpan<Vertex> ring)
    {
        if (WholeCircle(ring) is { } circle)
        {
            file.Circle(layer, circle.Centre - (origin - Point.Origin), circle.Radius);
            return;
        }
        var rounded = _rounded.Round(ring, closed: true);
        if (IsNothing(rounded))
            throw new PatternException(
                $"An outline on layer {DxfLayers.NameOf(layer)} is so small that nothing is left of it when rounded to {decimals} decimals.",
                ring[0].Point,
                ["leave it out or make it larger", "save with more decimals"]
            );
        file.Polyline(layer, rounded, closed: true);
    }

    /// <summary>Draws a chain; one that ends where it starts is closed, one too short for a digit is left out.</summary>
    internal void Run(Layer layer, Chain chain)
    {
        if (chain.Start == chain.End)
        {
            Ring(layer, chain.Span[..^1]);
            return;
        }
        var rounded = _rounded.Round(chain.Span, closed: false);
        if (rounded.Length < 2)
            return;
        if (rounded.Length == 2 && rounded[0].Bulge == 0)
            file.Line(layer, rounded[0], rounded[1]);
        else
            file.Polyline(layer, rounded, closed: false);
    }

    /// <summary>Whether a ring goes nowhere, or out and straight back.</summary>
    private static bool IsNothing(ReadOnlySpan<RoundedVertex> ring) =>
        ring.Length < 2 || (ring.Length == 2 && ring[0].Bulge == -ring[1].Bulge);

    private Circle? WholeCircle(ReadOnlySpan<Vertex> ring)
    {
        foreach (ref readonly var vertex in ring)
            if (vertex.Bulge == 0 || (vertex.Bulge > 0) != (ring[0].Bulge > 0))
                return null;
        Circle? circle = null;
        double turned = 0;
        for (var i = 0; i < ring.Length; i++)
        {
            var next = ring[i + 1 < ring.Length ? i + 1 : 0].Point;
            var arc = new Segment(ring[i].Point, next, ring[i].Bulge);
            if (arc.Start == arc.End)
                return null;
            circle ??= new(arc.Centre, arc.Radius);
            if (!IsOn(circle.Value, arc))
                return null;
            turned += Math.Abs(arc.Sweep.Radians);
        }
        var isOnce = turned < 1.5 * Math.Tau;
        return isOnce && circle?.Radius >= _unit ? circle : null;
    }

    private bool IsOn(Circle circle, Segment arc) =>
        arc.Centre.DistanceTo(circle.Centre) < _unit
        && Math.Abs(arc.Radius - circle.Radius) < _unit;
}
