using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Motifs at any number of places, each drawn by a similarity of its own.</summary>
internal sealed class ScatterNode : PlacesNode<ScatterPlace>
{
    /// <param name="child">The motif at every place.</param>
    /// <param name="places">Where its frame comes to lie, in the order that chips are counted.</param>
    internal ScatterNode(PatternNode child, IEnumerable<Transform> places)
        : this([child], [.. places.Select(place => new ScatterPlace(place, 0))]) { }

    /// <inheritdoc/>
    internal ScatterNode(PatternNode[] children, ScatterPlace[] places)
        : base(children, places) { }

    internal override Extents? Bounds(Transform outer, LayerSet layers)
    {
        var own = Array.ConvertAll(Children, child => child.Bounds(Transform.Identity, layers));
        Extents? bounds = null;
        foreach (ref readonly var place in Places.AsSpan())
        {
            if (own[place.Child] is not { } box)
                continue;
            // A turned box holds the turned motif. If that is inside already, the motif needn't be measured.
            var at = place.At.Then(outer);
            if (bounds is { } all && Holds(all, box, at))
                continue;
            bounds = Union(bounds, Children[place.Child].Bounds(at, layers));
        }
        return bounds;
    }

    internal override PatternNode Changed(LeafChange change) =>
        new ScatterNode(Array.ConvertAll(Children, change.Of), Places);

    private static bool Holds(Extents all, Extents box, Transform at) =>
        all.Contains(at.Apply(box.Min))
        && all.Contains(at.Apply(box.Max))
        && all.Contains(at.Apply(new Point(box.Min.X, box.Max.Y)))
        && all.Contains(at.Apply(new Point(box.Max.X, box.Min.Y)));

    private protected override CountingSink SinkTo(IPatternSink target) => new Sink(target, this);

    private sealed class Sink(IPatternSink target, ScatterNode node) : CountingSink(target, node)
    {
        private Transform _placement;

        protected override Transform Placement => _placement;

        protected override void StandAt(in ScatterPlace place) => _placement = place.At;

        protected override void Map(ReadOnlySpan<Vertex> from, Span<Vertex> to)
        {
            for (var i = 0; i < from.Length; i++)
                to[i] = new(_placement.Apply(from[i].Point), _placement.ApplyBulge(from[i].Bulge));
        }
    }
}
