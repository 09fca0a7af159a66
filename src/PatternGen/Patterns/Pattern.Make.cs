using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

public abstract partial class Pattern
{
    /// <inheritdoc cref="OfLineCuts(IEnumerable{LineCut})"/>
    public static Pattern OfLineCuts(params LineCut[] cuts) =>
        OfLineCuts((IEnumerable<LineCut>)cuts);

    /// <summary>Returns a pattern of line cuts.</summary>
    public static Pattern OfLineCuts(IEnumerable<LineCut> cuts) =>
        Of(new MotifNode { LineCuts = Each(cuts) });

    /// <inheritdoc cref="OfLayoutLines(IEnumerable{Chain})"/>
    public static Pattern OfLayoutLines(params Chain[] lines) =>
        OfLayoutLines((IEnumerable<Chain>)lines);

    /// <summary>Returns a pattern of layout lines.</summary>
    public static Pattern OfLayoutLines(IEnumerable<Chain> lines) =>
        Of(new MotifNode { LayoutLines = Each(lines) });

    /// <summary>Returns a pattern of lines of a grid.</summary>
    internal static Pattern OfGrid(IEnumerable<Chain> lines) =>
        Of(new MotifNode { GridLines = Each(lines) });

    /// <inheritdoc cref="OfStock(IEnumerable{Contour})"/>
    public static Pattern OfStock(params Contour[] outlines) =>
        OfStock((IEnumerable<Contour>)outlines);

    /// <summary>Returns a pattern that is the outline of a piece of wood; holes run clockwise.</summary>
    public static Pattern OfStock(IEnumerable<Contour> outlines) =>
        Of(new MotifNode { Stock = Each(outlines) });

    /// <inheritdoc cref="OfLabels(IEnumerable{Label})"/>
    public static Pattern OfLabels(params Label[] labels) => OfLabels((IEnumerable<Label>)labels);

    /// <summary>Returns a pattern of labels.</summary>
    public static Pattern OfLabels(IEnumerable<Label> labels) =>
        Of(new MotifNode { Labels = Each(labels) });

    /// <inheritdoc cref="Combine(IEnumerable{Pattern})"/>
    public static Pattern Combine(params Pattern[] patterns) =>
        Combine((IEnumerable<Pattern>)patterns);

    /// <summary>Returns the patterns together, drawn in the order given; rows of chips are counted on from one to the next.</summary>
    public static Pattern Combine(IEnumerable<Pattern> patterns)
    {
        Pattern[] parts = [.. Guard.NotNull(patterns).Select(pattern => Guard.NotNull(pattern))];
        return new DrawnPattern(
            GroupNode.Of(parts.Select(part => part.Root)),
            null,
            words => parts.SelectMany(part => part.Facts(words)).Distinct(),
            new CombinedOrigin(parts)
        );
    }

    /// <summary>Returns this pattern with another drawn after it. The name stays.</summary>
    public Pattern With(Pattern other) => With([Guard.NotNull(other)]);

    /// <summary>Returns this pattern with others drawn after it, one by one, in a tree as low as for one.</summary>
    internal Pattern With(IReadOnlyList<Pattern> others) =>
        new DrawnPattern(
            GroupNode.Of(others.Select(other => other.Root).Prepend(Root)),
            Name,
            words => Facts(words).Concat(others.SelectMany(other => other.Facts(words))).Distinct(),
            new WithOrigin(this, others)
        );

    /// <summary>Returns the pattern under a name, for captions.</summary>
    /// <param name="name">What the piece is called.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public Pattern Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new DrawnPattern(
            Root,
            name,
            words => Facts(words).Where(fact => fact != Name).Prepend(name).Distinct(),
            new NamedOrigin(this, name)
        );
    }

    /// <summary>Returns the pattern moved by the given distances in mm.</summary>
    public Pattern Moved(double dx, double dy) => Transformed(Transform.Move(dx, dy));

    /// <summary>Returns the pattern turned counter-clockwise about a point (the origin by default), in degrees.</summary>
    public Pattern Turned(double degrees, Point about = default) =>
        Transformed(Transform.Rotate(degrees, about));

    /// <summary>Returns the pattern with left and right swapped in the upright line at <paramref name="x"/>.</summary>
    public Pattern MirroredLeftRight(double x = 0) => Transformed(Transform.MirrorLeftRight(x));

    /// <summary>Returns the pattern with top and bottom swapped in the level line at <paramref name="y"/>.</summary>
    public Pattern MirroredTopBottom(double y = 0) => Transformed(Transform.MirrorTopBottom(y));

    /// <summary>Returns the pattern scaled evenly about a point (the origin by default).</summary>
    /// <param name="factor">More than 0; 2 doubles all lengths.</param>
    /// <param name="about">The point that stays where it is.</param>
    public Pattern Scaled(double factor, Point about = default) =>
        Transformed(Transform.Resize(factor, about));

    /// <summary>Returns the pattern placed by a similarity; the motif itself is shared, not copied.</summary>
    public Pattern Transformed(Transform transform) =>
        new DrawnPattern(
            new PlacedNode(Root, transform),
            Name,
            Facts,
            new PlacedOrigin(this, transform)
        );

    /// <summary>Returns the pattern repeated to the right.</summary>
    /// <param name="count">Number of repeats, at least 1.</param>
    /// <param name="pitch">Distance from one repeat to the next in mm. Corners a whole or half pitch apart meet to the last digit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count or the pitch is not positive, or the last repeat would lie over 1 km away.</exception>
    /// <exception cref="PatternException">There would be more chips than can be carved or written.</exception>
    public Pattern Repeated(int count, double pitch)
    {
        Guard.Within(count, 1, int.MaxValue / 2);
        Guard.Positive(pitch);
        Guard.Positive(pitch * count);
        return new DrawnPattern(
            new RepeatNode(Root, new(0, pitch * count, 2 * count), 0, count),
            Name,
            Facts,
            new RepeatedOrigin(this, count, pitch)
        );
    }

    /// <summary>Returns a pattern of pieces that are known to be sound.</summary>
    internal static Pattern OfPieces(MotifNode pieces) => Of(pieces);

    private static DrawnPattern Of(MotifNode root) => new(root, null, _ => []);

    /// <summary>Copies the pieces; none may be missing.</summary>
    private static T[] Each<T>(
        IEnumerable<T> pieces,
        [CallerArgumentExpression(nameof(pieces))] string name = ""
    )
        where T : class =>
        [.. Guard.NotNull(pieces, name).Select(piece => Guard.NotNull(piece, name))];
}
