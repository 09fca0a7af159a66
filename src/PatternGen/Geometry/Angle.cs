using System.Globalization;

namespace PatternGen.Geometry;

/// <summary>An angle, counter-clockwise positive. The default value is zero. Not reduced to one turn.</summary>
/// <remarks>Immutable and safe to share between threads. Equality and order are by size, so 360° is not 0°.</remarks>
public readonly record struct Angle : IComparable<Angle>
{
    /// <summary>Quarter turns beyond this are not told apart from their neighbours well enough to be exact.</summary>
    private const double MostQuarters = 1e9;

    private const string OnlyFinite = "must be a finite number, and leave the angle finite";

    private Angle(double radians) => Radians = radians;

    /// <summary>No turn.</summary>
    public static Angle Zero => default;

    /// <summary>A whole turn, 360 degrees.</summary>
    public static Angle FullTurn => new(Math.Tau);

    /// <summary>The size in radians.</summary>
    public double Radians { get; }

    /// <summary>The size in degrees.</summary>
    public double Degrees => double.RadiansToDegrees(Radians);

    /// <summary>Returns the angle of the given size. <c>FromDegrees(90).Radians</c> is π/2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not finite.</exception>
    public static Angle FromDegrees(double degrees) =>
        new(double.DegreesToRadians(Guard.Finite(degrees)));

    /// <summary>Returns the angle of the given size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not finite.</exception>
    public static Angle FromRadians(double radians) => new(Guard.Finite(radians));

    /// <summary>Returns the given share of a whole turn: <c>OfTurn(1.0 / 6)</c> is 60 degrees.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The share is not finite.</exception>
    public static Angle OfTurn(double share) =>
        Finite(Math.Tau * share, share, nameof(share), OnlyFinite);

    /// <summary>Cosine; exactly 0, 1 or -1 at whole quarter turns, so that quarter turns stay exact.</summary>
    public double Cos() =>
        QuarterTurns() is { } quarters ? Quarter(quarters + 1) : Math.Cos(Radians);

    /// <summary>Sine; exactly 0, 1 or -1 at whole quarter turns.</summary>
    public double Sin() => QuarterTurns() is { } quarters ? Quarter(quarters) : Math.Sin(Radians);

    /// <summary>Returns the same direction between 0 (included) and 360 degrees (excluded).</summary>
    public Angle Normalized()
    {
        var turn = Math.IEEERemainder(Radians, Math.Tau);
        if (turn < 0)
            turn += Math.Tau;
        // A tiny negative remainder rounds up to a whole turn, which is 0.
        return new(turn >= Math.Tau ? 0 : turn);
    }

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    /// <summary>Adds two angles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is not finite.</exception>
    public static Angle operator +(Angle a, Angle b) =>
        Finite(a.Radians + b.Radians, b.Radians, nameof(b), OnlyFinite);

    /// <summary>Subtracts one angle from another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The difference is not finite.</exception>
    public static Angle operator -(Angle a, Angle b) =>
        Finite(a.Radians - b.Radians, b.Radians, nameof(b), OnlyFinite);

    /// <summary>The same angle clockwise.</summary>
    public static Angle operator -(Angle a) => new(-a.Radians);

    /// <summary>Multiplies an angle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor or the product is not finite.</exception>
    public static Angle operator *(Angle a, double factor) =>
        Finite(a.Radians * factor, factor, nameof(factor), OnlyFinite);

    /// <summary>Divides an angle.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The divisor is 0 or not finite, or the quotient is not finite.</exception>
    public static Angle operator /(Angle a, double divisor) =>
        Finite(
            double.IsInfinity(divisor) ? double.NaN : a.Radians / divisor,
            divisor,
            nameof(divisor),
            "must be a finite number other than 0, and leave the angle finite"
        );

    /// <summary>Whether one angle is smaller than another.</summary>
    public static bool operator <(Angle a, Angle b) => a.Radians < b.Radians;

    /// <summary>Whether one angle is larger than another.</summary>
    public static bool operator >(Angle a, Angle b) => a.Radians > b.Radians;

    /// <summary>Whether one angle is at most as large as another.</summary>
    public static bool operator <=(Angle a, Angle b) => a.Radians <= b.Radians;

    /// <summary>Whether one angle is at least as large as another.</summary>
    public static bool operator >=(Angle a, Angle b) => a.Radians >= b.Radians;

    /// <summary>Returns the size in degrees, for messages: <c>22.5°</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Degrees:0.######}°");

    private static Angle Finite(double radians, double operand, string name, string rule)
    {
        if (!double.IsFinite(radians))
            Guard.Throw(name, name, operand, rule);
        return new(radians);
    }

    private double? QuarterTurns()
    {
        var quarters = Radians / (Math.PI / 2);
        return quarters == Math.Round(quarters) && Math.Abs(quarters) < MostQuarters
            ? quarters
            : null;
    }

    /// <summary>The sine of a whole number of quarter turns.</summary>
    private static double Quarter(double quarters) =>
        ((long)quarters & 3) switch
        {
            0 => 0,
            1 => 1,
            2 => 0,
            _ => -1,
        };
}
