namespace PatternGen;

/// <summary>Motifs at any number of places; what stands at a place is shared, never copied.</summary>
/// <remarks>
/// All motifs draw into the same rows, and the chips of a row are counted in the order of the places: the first chip of
/// row 1 at the second place follows the last one of row 1 at the first, whichever motifs stand there.
/// </remarks>
/// <typeparam name="TPlace">A place, and which motif stands there.</typeparam>
internal abstract class PlacesNode<TPlace> : PatternNode
    where TPlace : struct, IPlaceOfChild
{
    private readonly int[] _rowSizes;

    /// <param name="children">The motifs.</param>
    /// <param name="places">Where they lie, in the order that chips are counted. Not copied.</param>
    private protected PlacesNode(PatternNode[] children, TPlace[] places)
    {
        Children = children;
        Places = places;
        var times = new int[children.Length];
        foreach (ref readonly var place in places.AsSpan())
            times[place.Child]++;
        RefuseTooMany(Total(child => child.PieceCount));
        PieceCount = (long)Total(child => child.PieceCount);
        HoleCount = (long)Total(child => child.HoleCount);
        _rowSizes = new int[children.Max(child => child.RowSizes.Count)];
        for (var i = 0; i < children.Length; i++)
        {
            if (times[i] > 0)
                Layers |= children[i].Layers;
            for (var row = 0; row < children[i].RowSizes.Count; row++)
                _rowSizes[row] += children[i].RowSizes[row] * times[i];
        }

        decimal Total(Func<PatternNode, long> number)
        {
            var total = 0m;
            for (var i = 0; i < children.Length; i++)
                total += (decimal)number(children[i]) * times[i];
            return total;
        }
    }

    internal override IReadOnlyList<int> RowSizes => _rowSizes;

    internal override long PieceCount { get; }

    internal override long HoleCount { get; }

    internal override LayerSet Layers { get; }

    private protected PatternNode[] Children { get; }

    private protected TPlace[] Places { get; }

    internal override Action Bind(IPatternSink sink, LayerSet layers)
    {
        var mapping = SinkTo(sink);
        var draws = Array.ConvertAll(
            Children,
            // What holds nothing of the layers is not walked, but its chips are counted.
            child => (child.Layers & layers) == 0 ? null : child.Bind(mapping, layers)
        );
        return () =>
        {
            mapping.Restart();
            foreach (ref readonly var place in Places.AsSpan())
            {
                mapping.MoveTo(place);
                draws[place.Child]?.Invoke();
            }
        };
    }

    internal override IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink)
    {
        if (PieceCount == 0)
            yield break;
        var mapping = SinkTo(sink);
        mapping.Restart();
        foreach (var place in Places)
        {
            mapping.MoveTo(place);
            foreach (var leaf in Children[place.Child].Leaves(mapping))
                yield return leaf;
        }
    }

    /// <summary>Returns the sink that maps what is drawn at one place after the other.</summary>
    private protected abstract CountingSink SinkTo(IPatternSink target);

    /// <summary>Counts chips on from place to place.</summary>
    private protected abstract class CountingSink(IPatternSink target, PlacesNode<TPlace> node)
        : MappingSink(target)
    {
        /// <summary>For each row the number of chips at the places before this one.</summary>
        private readonly int[] _counted = new int[node._rowSizes.Length];

        private readonly IReadOnlyList<int>[] _rowSizes = Array.ConvertAll(
            node.Children,
            child => child.RowSizes
        );

        private int _child = -1;

        internal void Restart()
        {
            Array.Clear(_counted);
            _child = -1;
        }

        internal void MoveTo(in TPlace place)
        {
            if (_child >= 0)
                for (var row = 0; row < _rowSizes[_child].Count; row++)
                    _counted[row] += _rowSizes[_child][row];
            _child = place.Child;
            StandAt(place);
        }

        /// <summary>Maps to a place from now on.</summary>
        protected abstract void StandAt(in TPlace place);

        protected override ChipId MapId(ChipId id) => new(id.Row, id.Index + _counted[id.Row]);
    }
}
