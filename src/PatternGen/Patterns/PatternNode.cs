using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A node of the placement tree. Motifs are drawn once, in leaves; everything above places what is below it.
/// </summary>
internal abstract class PatternNode
{
    /// <summary>The most pieces of any kind that a pattern may hold: more could neither be written nor carved.</summary>
    private const long MaxPieces = 100_000_000;

    /// <summary>Number of chips in each row. Rows and places are counted from 0 inside the tree.</summary>
    internal abstract IReadOnlyList<int> RowSizes { get; }

    /// <summary>Number of pieces of any kind, once flattened.</summary>
    internal abstract long PieceCount { get; }

    /// <summary>Number of holes in all chips together, once flattened.</summary>
    internal abstract long HoleCount { get; }

    internal long ChipCount => RowSizes.Sum(size => (long)size);

    /// <summary>The layers that something under this node is drawn on.</summary>
    internal abstract LayerSet Layers { get; }

    /// <summary>Passes every piece of the chosen layers on, in a fixed order, where this node puts it.</summary>
    internal void Draw(IPatternSink sink, LayerSet layers = LayerSet.All)
    {
        // A file is written layer by layer; what holds nothing of a layer is not walked for it.
        if ((Layers & layers) != 0)
            Bind(sink, layers)();
    }

    /// <summary>
    /// Returns the drawing of this node's chosen layers to a sink. What the node needs for it is made once, here, so
    /// that a repeat can draw its child ten thousand times without an allocation.
    /// </summary>
    internal abstract Action Bind(IPatternSink sink, LayerSet layers);

    /// <summary>
    /// Returns the leaves one by one with the sink that maps each, for those who pull rather than be pushed to. Each is
    /// to be drawn before the next one is asked for.
    /// </summary>
    internal abstract IEnumerable<(MotifNode Motif, IPatternSink Sink)> Leaves(IPatternSink sink);

    /// <summary>
    /// Extents of the chosen layers under a transform, without flattening repeats; null if nothing is drawn there.
    /// </summary>
    internal abstract Extents? Bounds(Transform transform, LayerSet layers);

    /// <summary>Returns a copy of this node with changed leaves. To be called by the change only, which keeps what is shared.</summary>
    internal abstract PatternNode Changed(LeafChange change);

    /// <summary>Refuses a node that would flatten into more than can be dealt with, before anything is flattened.</summary>
    private protected static void RefuseTooMany(decimal pieces)
    {
        if (pieces > MaxPieces)
            throw new PatternException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"A pattern of {pieces:0} pieces is more than can be carved or written ({MaxPieces})."
                ),
                remedies: ["fewer repeats, a larger pitch, or patterns saved one by one"]
            );
    }

    /// <summary>Extents that hold both, where nothing has no extents.</summary>
    internal static Extents? Union(Extents? a, Extents? b) =>
        a is { } first && b is { } second ? first.Including(second) : a ?? b;
}

/// <summary>A choice of layers.</summary>
[Flags]
internal enum LayerSet
{
    Stock = 1 << Layer.Stock,
    LayoutLines = 1 << Layer.LayoutLines,
    LineCuts = 1 << Layer.LineCuts,
    Chips = 1 << Layer.Chips,
    Labels = 1 << Layer.Labels,
    Grid = 1 << Layer.Grid,
    Drawn = Stock | LayoutLines | LineCuts | Chips,
    All = Drawn | Labels | Grid,
}
