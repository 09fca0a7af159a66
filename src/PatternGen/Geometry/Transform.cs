namespace PatternGen.Geometry;

/// <summary>
/// A similarity: a move, turn, mirroring and uniform scale. Lines stay lines and arcs stay arcs, which is why nothing
/// else is allowed on a contour. The default value is the identity.
/// </summary>
/// <remarks>
/// A point (x, y), as the complex number z = x + iy, goes to m·z + t, or to m·conj(z) + t when mirrored.
/// Immutable and safe to share between threads.
/// </remarks>
public readonly record struct Transform
{
    // The default value is the identity, so only set values carry a matrix. Storing a - 1 instead would cost digits at
    // small scales.
    private readonly bool _isSet;
    private readonly double _a;

    private Transform(double a, double b, bool mirrored, Vector move)
    {
        _isSet = true;
        _a = a;
        B = b;
        IsMirrored = mirrored;
        Translation = move;
    }

    /// <summary>The transform that changes nothing.</summary>
    public static Transform Identity => default;

    /// <summary>Real part of m: scale × cos(turn).</summary>
    internal double A => _isSet ? _a : 1;

    /// <summary>Imaginary part of m: scale × sin(turn).</summary>
    internal double B { get; }

    /// <summary>Whether the transform turns things over: counter-clockwise becomes clockwise and bulges change sign.</summary>
    public bool IsMirrored { get; }

    /// <summary>Where the origin goes.</summary>
    public Vector Translation { get; }

    /// <summary>Uniform scale, always above 0; lengths grow by it.</summary>
    public double Scale => double.Hypot(A, B);

    /// <summary>The direction that the x axis is turned to.</summary>
    public Angle Turn => new Vector(A, B).Direction;

    /// <summary>Returns a move by the given distances in mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A distance is not finite or more than 4 km.</exception>
    public static Transform Move(double dx, double dy) =>
        new(1, 0, false, new(Guard.Shift(dx), Guard.Shift(dy)));

    /// <summary>Returns a move.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A component is not finite or more than 4 km.</exception>
    public static Transform Move(Vector move)
    {
        Guard.Shift(move.X, nameof(move), "The x component of move");
        Guard.Shift(move.Y, nameof(move), "The y component of move");
        return new(1, 0, false, move);
    }

    /// <summary>Returns a counter-clockwise turn about a point (the origin by default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point lies beyond 2 km.</exception>
    public static Transform Rotate(Angle turn, Point about = default) =>
        About(Guard.Place(about), turn.Cos(), turn.Sin(), mirrored: false);

    /// <summary>Returns a counter-clockwise turn about a point (the origin by default), in degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite, or the point lies beyond 2 km.</exception>
    public static Transform Rotate(double degrees, Point about = default) =>
        Rotate(Angle.FromDegrees(degrees), about);

    /// <summary>Returns a uniform scaling about a point (the origin by default).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not between 1e-6 and 1e6, or the point lies beyond 2 km.</exception>
    public static Transform Resize(double factor, Point about = default) =>
        About(Guard.Place(about), Guard.Within(factor, 1e-6, 1e6), 0, mirrored: false);

    /// <summary>Returns the mirroring in the line through a point with the given direction.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The point lies beyond 2 km.</exception>
    public static Transform Mirror(Point on, Angle direction)
    {
        Guard.Place(on);
        var twice = direction * 2;
        return About(on, twice.Cos(), twice.Sin(), mirrored: true);
    }

    /// <summary>Returns the mirroring that swaps left and right in the upright line at <paramref name="x"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The line lies beyond 2 km.</exception>
    public static Transform MirrorLeftRight(double x = 0) =>
        new(-1, 0, true, new(2 * Guard.Coordinate(x), 0));

    /// <summary>Returns the mirroring that swaps top and bottom in the level line at <paramref name="y"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The line lies beyond 2 km.</exception>
    public static Transform MirrorTopBottom(double y = 0) =>
        new(1, 0, true, new(0, 2 * Guard.Coordinate(y)));

    /// <summary>Returns the placing of a frame: its origin at a point, its x axis along a vector.</summary>
    /// <param name="origin">Where the origin goes.</param>
    /// <param name="xAxis">Where the x axis goes; its length is the scale.</param>
    /// <param name="mirrored">Whether the y axis comes to lie on the right of the x axis.</param>
    internal static Transform Placing(Point origin, Vector xAxis, bool mirrored = false) =>
        new(xAxis.X, xAxis.Y, mirrored, origin - Point.Origin);

    /// <summary>Returns the transform that does this one first and then the other.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Both together scale or move by more than numbers hold.</exception>
    public Transform Then(Transform next)
    {
        if (!_isSet)
            return next;
        if (!next._isSet)
            return this;
        // next.m · (m z + t) + next.t, conjugating m and t first when the next one mirrors.
        var sign = next.IsMirrored ? -1 : 1;
        var both = new Transform(
            next.A * A - next.B * (sign * B),
            next.B * A + next.A * (sign * B),
            IsMirrored != next.IsMirrored,
            next.Apply(Translation) + next.Translation
        );
        return both.IsUsable
            ? both
            : throw new ArgumentOutOfRangeException(
                nameof(next),
                FormattableString.Invariant(
                    $"Together, the two transforms must scale by 1e-100 to 1e100 and move by at most 1e100 mm, but they scale by {both.Scale:R} and move by {both.Translation.Length:R} mm."
                )
            );
    }

    /// <summary>Returns the transform that undoes this one.</summary>
    public Transform Inverse()
    {
        var square = A * A + B * B;
        var back = IsMirrored
            ? new Transform(A / square, B / square, true, default)
            : new Transform(A / square, -B / square, false, default);
        return new(back.A, back.B, IsMirrored, -back.Apply(Translation));
    }

    /// <summary>Returns where a point goes.</summary>
    public Point Apply(Point point)
    {
        var moved = Apply(new Vector(point.X, point.Y));
        return new(moved.X + Translation.X, moved.Y + Translation.Y);
    }

    /// <summary>Returns where a vector goes; the move does not change vectors.</summary>
    public Vector Apply(Vector vector)
    {
        var y = IsMirrored ? -vector.Y : vector.Y;
        return new(A * vector.X - B * y, B * vector.X + A * y);
    }

    /// <summary>Returns a bulge as the transform leaves it: its sign changes when mirrored.</summary>
    internal double ApplyBulge(double bulge) => IsMirrored ? -bulge : bulge;

    /// <summary>Whether two transforms do exactly the same.</summary>
    public bool Equals(Transform other) =>
        A == other.A
        && B == other.B
        && IsMirrored == other.IsMirrored
        && Translation == other.Translation;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(A, B, IsMirrored, Translation);

    /// <summary>Whether the numbers are far from those whose squares overflow or vanish, so that there is an inverse.</summary>
    /// <summary>Returns the similarity that takes x to a, y to its left by b, and moves: for those who read one that was written.</summary>
    /// <exception cref="ArgumentException">It scales by less than 1e-100 or more than 1e100, or moves by more than 1e100 mm.</exception>
    internal static Transform Of(double a, double b, bool mirrored, Vector move)
    {
        var read = new Transform(a, b, mirrored, move);
        return read.IsUsable
            ? read
            : throw new ArgumentException(
                "A placement scales by 1e-100 to 1e100 and moves by at most 1e100 mm."
            );
    }

    private bool IsUsable =>
        A * A + B * B is >= 1e-200 and <= 1e200
        && Math.Abs(Translation.X) <= 1e100
        && Math.Abs(Translation.Y) <= 1e100;

    private static Transform About(Point fixedPoint, double a, double b, bool mirrored)
    {
        var linear = new Transform(a, b, mirrored, default);
        var centre = fixedPoint - Point.Origin;
        return new(a, b, mirrored, centre - linear.Apply(centre));
    }
}
