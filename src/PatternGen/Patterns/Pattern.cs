using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// A drawing on wood: chips to cut away, line cuts, layout lines, the outline of the stock and labels.
/// </summary>
/// <remarks>
/// A pattern is a tree of placements: a motif drawn once is shared by all its repeats, and <see cref="Chips"/>
/// flattens the tree only as far as it is read, so that a rail of 10,000 repeats costs one outline in memory.
/// All lengths are millimetres, y points up. Immutable and safe to share between threads.
/// </remarks>
public abstract partial class Pattern
{
    private readonly Lazy<PatternNode> _root;

    private protected Pattern() => _root = new(Draw);

    /// <summary>A pattern with nothing on it.</summary>
    public static Pattern Empty { get; } = Of(MotifNode.Empty);

    /// <summary>What the piece is called in captions, such as "Rail 742.5 × 36 mm"; null if it has no name.</summary>
    public virtual string? Name => null;

    /// <summary>All chips, in the order of their ids within each motif, made as they are asked for.</summary>
    public IEnumerable<Chip> Chips => PatternReader.Chips(Root);

    /// <summary>Number of chips, known without flattening.</summary>
    public long ChipCount => Root.ChipCount;

    /// <summary>Lines to lay the pattern out by.</summary>
    public IReadOnlyList<Chain> LayoutLines => PatternReader.Read(Root).LayoutLines;

    /// <summary>V grooves along lines.</summary>
    public IReadOnlyList<LineCut> LineCuts => PatternReader.Read(Root).LineCuts;

    /// <summary>Outlines of the wood; holes in it run clockwise.</summary>
    public IReadOnlyList<Contour> Stock => PatternReader.Read(Root).Stock;

    /// <summary>Text that belongs to the pattern.</summary>
    public IReadOnlyList<Label> Labels => PatternReader.Read(Root).Labels;

    /// <summary>Extents of all that is drawn: centre lines, without text. Null for an empty pattern.</summary>
    public Extents? Extents => Root.Bounds(Transform.Identity, LayerSet.Drawn);

    internal PatternNode Root => _root.Value;

    /// <summary>Returns the words that stand under a printed pattern: what it is and how it was fitted, a line each.</summary>
    /// <param name="wording">The language; English by default.</param>
    public IReadOnlyList<string> Caption(Wording? wording = null)
    {
        var words = wording ?? Wording.English;
        return ChipCount > 0 ? [.. Facts(words), words.ChipCount(ChipCount)] : [.. Facts(words)];
    }

    /// <summary>Returns what the pattern is and its number of chips, for messages.</summary>
    public override string ToString() =>
        $"{TitleWithSize(Wording.English)}, {Wording.English.ChipCount(ChipCount)}";

    /// <summary>What the pattern is and how it was fitted, a line each; nothing if nobody has said.</summary>
    internal abstract IEnumerable<string> Facts(Wording words);

    /// <summary>What the pattern is, in one line.</summary>
    internal string Title(Wording words) => Facts(words).FirstOrDefault() ?? words.Untitled;

    /// <summary>What the pattern is and how large: a bare name says nothing of the size.</summary>
    internal string TitleWithSize(Wording words)
    {
        var title = Title(words);
        if ((title != Name && title != words.Untitled) || Bounds(LayerSet.Stock) is not { } wood)
            return title;
        var size = words.Size(wood.Width, wood.Height);
        return title.Contains(size, StringComparison.Ordinal) ? title : $"{title}, {size}";
    }

    /// <summary>Extents of some layers only; null if nothing is drawn there.</summary>
    internal Extents? Bounds(LayerSet layers) => Root.Bounds(Transform.Identity, layers);

    private protected abstract PatternNode Draw();
}
