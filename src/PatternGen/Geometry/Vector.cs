namespace PatternGen.Geometry;

/// <summary>A direction with a length in millimetres; y points up. The default value is the zero vector.</summary>
/// <remarks>Immutable and safe to share between threads. Equality is exact.</remarks>
public readonly record struct Vector
{
    /// <summary>Creates a vector from its components.</summary>
    /// <param name="x">Component to the right, in mm.</param>
    /// <param name="y">Component upwards, in mm.</param>
    public Vector(double x, double y)
    {
        X = x;
        Y = y;
    }

    /// <summary>Component to the right, in mm.</summary>
    public double X { get; }

    /// <summary>Component upwards, in mm.</summary>
    public double Y { get; }

    /// <summary>The zero vector.</summary>
    public static Vector Zero => default;

    /// <summary>Length in mm. <c>new Vector(3, 4).Length</c> is 5.</summary>
    public double Length => double.Hypot(X, Y);

    /// <summary>Squared length in mm².</summary>
    public double LengthSquared => X * X + Y * Y;

    /// <summary>This vector turned a quarter counter-clockwise: what lies to the left when walking along it.</summary>
    public Vector Left => new(-Y, X);

    /// <summary>Direction measured counter-clockwise from the x axis, from -180 to 180 degrees; 0 for the zero vector.</summary>
    public Angle Direction => Angle.FromRadians(Math.Atan2(Y, X));

    /// <summary>Returns the vector of length 1 in this direction.</summary>
    /// <exception cref="InvalidOperationException">This is the zero vector, which has no direction.</exception>
    public Vector Unit()
    {
        var length = Length;
        return length > 0
            ? new(X / length, Y / length)
            : throw new InvalidOperationException("The zero vector has no direction.");
    }

    /// <summary>Returns the vector of length 1 in the given direction.</summary>
    public static Vector Towards(Angle direction) => new(direction.Cos(), direction.Sin());

    /// <summary>Dot product in mm²: positive when the directions differ by less than 90 degrees.</summary>
    public double Dot(Vector other) => X * other.X + Y * other.Y;

    /// <summary>Cross product in mm²: positive when <paramref name="other"/> points to the left of this vector.</summary>
    public double Cross(Vector other) => X * other.Y - Y * other.X;

    /// <summary>Adds two vectors.</summary>
    public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Subtracts one vector from another.</summary>
    public static Vector operator -(Vector a, Vector b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>Turns a vector round.</summary>
    public static Vector operator -(Vector a) => new(-a.X, -a.Y);

    /// <summary>Scales a vector.</summary>
    public static Vector operator *(Vector a, double factor) => new(a.X * factor, a.Y * factor);

    /// <summary>Scales a vector.</summary>
    public static Vector operator *(double factor, Vector a) => a * factor;

    /// <summary>Divides a vector.</summary>
    public static Vector operator /(Vector a, double divisor) => new(a.X / divisor, a.Y / divisor);

    /// <summary>Returns the components as text, for messages: <c>(12.5, 3)</c>, whatever the system's language.</summary>
    public override string ToString() => new Point(X, Y).ToString();
}
