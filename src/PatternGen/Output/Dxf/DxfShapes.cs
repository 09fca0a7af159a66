using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws contours and chains as the entities that suit them: lines, circles or polylines.</summary>
/// <param name="file">Where the entities go.</param>
/// <param name="decimals">Decimals of a coordinate.</param>
/// <param name="origin">The place in the pattern that is the entities' origin.</param>
internal sealed class DxfShapes(IDxfEntities file, int decimals, Point origin = default)
{
    private readonly RoundedRun _rounded = new(decimals, origin);

    /// <summary>Draws a chip: its outline, then its holes, each a closed contour.</summary>
    /// <exception cref="PatternException">Nothing is left of one of them once it is rounded.</exception>
    internal void Chip(in PlacedChip chip)
    {
        for (var ring = 0; ring < chip.RingCount; ring++)
            Ring(Layer.Chips, chip.Ring(ring));
    }

    /// <summary>Draws a closed contour.</summary>
    /// <exception cref="PatternException">Nothing is left of it once it is rounded.</exception>
    internal void Ring(Layer layer, ReadOnlySpan<Vertex> ring)
    {
        if (TryCircle(layer, ring))
            return;
        var rounded = _rounded.Round(ring, closed: true);
        if (RoundedRun.IsNothing(rounded))
            throw Vanishing.Refusal(ring, decimals);
        file.Polyline(layer, rounded, closed: true);
    }

    /// <summary>Draws a line that is no speck; one that ends where it starts is closed.</summary>
    internal void Run(Layer layer, Chain chain)
    {
        if (chain.Start == chain.End)
            RunRound(layer, chain.Span[..^1]);
        else
            Open(layer, _rounded.Round(chain.Span, closed: false));
    }

    private void RunRound(Layer layer, ReadOnlySpan<Vertex> ring)
    {
        if (TryCircle(layer, ring))
            return;
        var rounded = _rounded.Round(ring, closed: true);
        // Out and straight back is one line.
        if (RoundedRun.IsNothing(rounded))
            Open(layer, rounded);
        else
            file.Polyline(layer, rounded, closed: true);
    }

    private bool TryCircle(Layer layer, ReadOnlySpan<Vertex> ring)
    {
        if (WholeCircle.Of(ring, decimals) is not { } circle)
            return false;
        file.Circle(layer, circle.Transformed(Transform.Move(Point.Origin - origin)));
        return true;
    }

    private void Open(Layer layer, ReadOnlySpan<RoundedVertex> run)
    {
        if (run.Length == 2 && run[0].Bulge == 0)
            file.Line(layer, run[0], run[1]);
        else
            file.Polyline(layer, run, closed: false);
    }
}
