using System.Globalization;

namespace PatternGen.Geometry;

/// <summary>A place on the wood in millimetres; x to the right, y up. The default value is the origin.</summary>
/// <remarks>
/// A point is not a <see cref="Vector"/>: points can be subtracted but not added. Immutable and safe to share between
/// threads. Equality is exact; use <see cref="Tolerance.Same"/> to compare within a tolerance.
/// </remarks>
public readonly record struct Point
{
    /// <summary>Creates a point from its coordinates.</summary>
    /// <param name="x">Distance to the right of the origin, in mm.</param>
    /// <param name="y">Distance above the origin, in mm.</param>
    public Point(double x, double y)
    {
        X = x;
        Y = y;
    }

    /// <summary>Distance to the right of the origin, in mm.</summary>
    public double X { get; }

    /// <summary>Distance above the origin, in mm.</summary>
    public double Y { get; }

    /// <summary>The origin (0, 0).</summary>
    public static Point Origin => default;

    /// <summary>Whether both coordinates are finite numbers.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);

    /// <summary>Distance to another point in mm. From (0, 0) to (3, 4) it is 5.</summary>
    public double DistanceTo(Point other) => (other - this).Length;

    /// <summary>Returns the point at the given share of the way to another: 0 is this point, 1 the other, 0.5 the middle.</summary>
    public Point Towards(Point other, double share) =>
        new(X + (other.X - X) * share, Y + (other.Y - Y) * share);

    /// <summary>Returns the point at a distance (mm) from this one in the given direction.</summary>
    public Point Polar(double distance, Angle direction) =>
        this + distance * Vector.Towards(direction);

    /// <summary>Returns the vector from <paramref name="b"/> to <paramref name="a"/>.</summary>
    public static Vector operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Moves a point.</summary>
    public static Point operator +(Point a, Vector move) => new(a.X + move.X, a.Y + move.Y);

    /// <summary>Moves a point back.</summary>
    public static Point operator -(Point a, Vector move) => new(a.X - move.X, a.Y - move.Y);

    /// <summary>Returns the coordinates as text, for messages: <c>(12.5, 3)</c>, whatever the system's language.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"({X:0.######}, {Y:0.######})");
}
