using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Which way the motifs along a path face: the direction of their x axis. The default value is <see cref="Along"/>.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public readonly record struct Heading
{
    private Heading(HeadingKind kind, Angle turn, Angle direction, Point target)
    {
        Kind = kind;
        Turn = turn;
        Direction = direction;
        Target = target;
    }

    /// <summary>In the direction of travel: along the tangent.</summary>
    public static Heading Along => default;

    /// <summary>Across the path to the left of travel, which is into a counter-clockwise contour. <c>Across.Turned(180)</c> is to the right.</summary>
    public static Heading Across => Of(HeadingKind.Across);

    /// <summary>Across a closed path into its inside, whichever way it runs.</summary>
    public static Heading Inwards => Of(HeadingKind.Inwards);

    /// <summary>Across a closed path out of its inside, whichever way it runs.</summary>
    public static Heading Outwards => Of(HeadingKind.Outwards);

    /// <summary>The angle that each motif is turned by from there, counter-clockwise.</summary>
    public Angle Turn { get; }

    internal HeadingKind Kind { get; }

    /// <summary>The fixed direction.</summary>
    internal Angle Direction { get; }

    /// <summary>The point to face, or to turn the back on.</summary>
    internal Point Target { get; }

    /// <summary>Whether the heading turns with the path, so that mirroring in the path mirrors it too.</summary>
    internal bool FollowsPath => Kind <= HeadingKind.Outwards;

    /// <summary>Returns the same direction everywhere.</summary>
    /// <param name="degrees">Counter-clockwise from the x axis: 90 is up.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    public static Heading Fixed(double degrees) => Fixed(Angle.FromDegrees(degrees));

    /// <inheritdoc cref="Fixed(double)"/>
    /// <param name="direction">Counter-clockwise from the x axis.</param>
    public static Heading Fixed(Angle direction) =>
        new(HeadingKind.Fixed, default, direction, default);

    /// <summary>Returns the heading that faces a point, from wherever the motif stands.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point lies beyond 2 km.</exception>
    public static Heading Towards(Point point) =>
        new(HeadingKind.Towards, default, default, Guard.Place(point));

    /// <summary>Returns the heading that turns its back on a point.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point lies beyond 2 km.</exception>
    public static Heading AwayFrom(Point point) =>
        new(HeadingKind.AwayFrom, default, default, Guard.Place(point));

    /// <summary>Returns the heading turned further, the same at every place.</summary>
    /// <param name="degrees">Counter-clockwise: <c>Along.Turned(30)</c> faces 30° to the left of travel.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Pure]
    public Heading Turned(double degrees) => Turned(Angle.FromDegrees(degrees));

    /// <inheritdoc cref="Turned(double)"/>
    /// <param name="turn">Counter-clockwise.</param>
    [Pure]
    public Heading Turned(Angle turn) => new(Kind, Turn + turn, Direction, Target);

    /// <summary>Returns the heading for messages: <c>Along</c>, <c>Towards (3, 4), turned 30°</c>.</summary>
    public override string ToString()
    {
        var what = Kind switch
        {
            HeadingKind.Fixed => $"Fixed {Direction}",
            HeadingKind.Towards => $"Towards {Target}",
            HeadingKind.AwayFrom => $"Away from {Target}",
            _ => Kind.ToString(),
        };
        return Turn == Angle.Zero ? what : $"{what}, turned {Turn}";
    }

    private static Heading Of(HeadingKind kind) => new(kind, default, default, default);
}

/// <summary>What a heading is measured from; those that turn with the path come first.</summary>
internal enum HeadingKind
{
    Along,
    Across,
    Inwards,
    Outwards,
    Fixed,
    Towards,
    AwayFrom,
}
