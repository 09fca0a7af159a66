using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A stem with leaves: a tapered stroke along a line, and leaves beside it that get smaller towards its tip.</summary>
/// <remarks>
/// All leaves are the same motif, turned, scaled and, on the right of the stem, mirrored. The end of the stem is as fine as
/// <see cref="Stroke"/> says. Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Stem : Pattern
{
    private Stem(Chain path, double width)
    {
        Path = path;
        Width = width;
        Leaf = Leaf.Of(7 * width, 2.8 * width).WithWidestAt(0.4);
        Spacing = 6 * width;
        BareBase = 3 * width;
    }

    private Stem(Stem other)
        : this(other.Path, other.Width)
    {
        Leaf = other.Leaf;
        Spacing = other.Spacing;
        Placing = other.Placing;
        LeafAngle = other.LeafAngle;
        TipScale = other.TipScale;
        BareBase = other.BareBase;
        HasTipLeaf = other.HasTipLeaf;
        Gap = other.Gap;
        Seed = other.Seed;
        Variation = other.Variation;
    }

    /// <summary>The line along its middle, from the base to the tip.</summary>
    public Chain Path { get; }

    /// <summary>Greatest width of the stem in mm, near its base.</summary>
    public double Width { get; }

    /// <summary>The leaf nearest to the base, in its own frame, as a leaf on the left of the stem looks.</summary>
    public Leaf Leaf { get; private init; }

    /// <summary>From one leaf (or pair) to the next along the stem in mm, where leaves have their full size. Default six times the width of the stem.</summary>
    public double Spacing { get; private init; }

    /// <summary>How the leaves stand. Default alternating.</summary>
    public LeafPlacing Placing { get; private init; }

    /// <summary>Between stem and leaf, in degrees. Default 40.</summary>
    public double LeafAngle { get; private init; } = 40;

    /// <summary>Size of a leaf at the tip as a share of one at the base. Default 0.5.</summary>
    public double TipScale { get; private init; } = 0.5;

    /// <summary>Length of stem before the first leaf in mm. Default three times the width of the stem.</summary>
    public double BareBase { get; private init; }

    /// <summary>Whether a leaf goes on where the stem ends. Default yes.</summary>
    public bool HasTipLeaf { get; private init; } = true;

    /// <summary>Wood left between the stem and its leaves in mm. Default 1.2: common practice, no source.</summary>
    public double Gap { get; private init; } = FreeFormShape.UsualRidge;

    /// <summary>What the variation is drawn from: the same seed gives the same stem. Default 0.</summary>
    public int Seed { get; private init; }

    /// <summary>How much leaves differ in size and angle, from 0, not at all (the default), to 1.</summary>
    public double Variation { get; private init; }

    /// <summary>Returns a stem along a line, with leaves at the usual places.</summary>
    /// <param name="path">The line, from base to tip; it should bend smoothly. A free curve gives one: <c>FreeCurve.Through(…).ToChain()</c>.</param>
    /// <param name="width">Greatest width of the stem in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    public static Stem Along(Chain path, double width) =>
        new(Guard.NotNull(path), Guard.Positive(width));

    /// <summary>Returns the stem with other leaves.</summary>
    /// <param name="leaf">The leaf nearest to the base, as it looks on the left of the stem; on the right it is mirrored.</param>
    /// <param name="spacing">From one to the next along the stem in mm, where they have their full size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not positive.</exception>
    [Pure]
    public Stem WithLeaves(Leaf leaf, double spacing) =>
        new(this) { Leaf = Guard.NotNull(leaf), Spacing = Guard.Positive(spacing) };

    /// <summary>Returns the stem with leaves placed otherwise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public Stem WithPlacing(LeafPlacing placing) => new(this) { Placing = Guard.Defined(placing) };

    /// <summary>Returns the stem with leaves at another angle.</summary>
    /// <param name="degrees">Between stem and leaf, 10 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Stem WithLeafAngle(double degrees) =>
        new(this) { LeafAngle = Guard.Within(degrees, 10, 90) };

    /// <summary>Returns the stem with leaves that get smaller towards the tip.</summary>
    /// <param name="to">Size of a leaf at the tip as a share of one at the base, 0.1 to 1; 1 for leaves all alike.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is out of range.</exception>
    [Pure]
    public Stem Diminishing(double to) => new(this) { TipScale = Guard.Within(to, 0.1, 1) };

    /// <summary>Returns the stem with another length without leaves at its base.</summary>
    /// <param name="length">In mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Pure]
    public Stem WithBareBase(double length) => new(this) { BareBase = Guard.NotNegative(length) };

    /// <summary>Returns the stem with a leaf at its tip.</summary>
    [Pure]
    public Stem WithTipLeaf() => new(this) { HasTipLeaf = true };

    /// <summary>Returns the stem without a leaf at its tip.</summary>
    [Pure]
    public Stem WithoutTipLeaf() => new(this) { HasTipLeaf = false };

    /// <summary>Returns the stem with another ridge between it and its leaves.</summary>
    /// <param name="width">In mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative.</exception>
    [Pure]
    public Stem WithGap(double width) => new(this) { Gap = Guard.NotNegative(width) };

    /// <summary>Returns the stem with leaves that differ a little, as grown ones do.</summary>
    /// <param name="seed">The same seed gives the same stem, everywhere and always.</param>
    /// <param name="variation">How much, from 0 to 1: at 1 a leaf is up to a quarter smaller and turned by up to 15 degrees. Default 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The variation is out of range.</exception>
    [Pure]
    public Stem Varied(int seed, double variation = 0.5) =>
        new(this) { Seed = seed, Variation = Guard.Within(variation, 0, 1) };

    internal override IEnumerable<string> Facts(Wording words) =>
        [words.Stem(Path.Length, LeafCount)];

    /// <summary>Number of leaves, that at the tip among them.</summary>
    public int LeafCount => Places().Count();
}
