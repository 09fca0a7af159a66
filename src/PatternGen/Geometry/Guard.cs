using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace PatternGen.Geometry;

/// <summary>The one place that refuses bad arguments, so that every message says what, which value, and what would work.</summary>
internal static class Guard
{
    /// <summary>
    /// The largest coordinate or size in millimetres, 1 km: far beyond any board, and small enough that doubles
    /// still resolve 1e-10 mm there.
    /// </summary>
    internal const double MaxSize = 1e6;

    /// <summary>Farthest coordinate from 0 in millimetres, 2 km: twice the largest size.</summary>
    internal const double MaxCoordinate = 2 * MaxSize;

    /// <summary>
    /// The largest bulge. Beyond it, the ends of the arc lie nearer to each other than the tolerance of its circle tells
    /// apart.
    /// </summary>
    internal const double MaxBulge = 1e9;

    private const string CoordinateRule = "must lie between -2,000,000 and 2,000,000 mm";

    /// <summary>A coordinate in millimetres.</summary>
    internal static double Coordinate(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!IsCoordinate(value))
            Throw(name, value, CoordinateRule);
        return value;
    }

    /// <summary>A point with usable coordinates.</summary>
    internal static Point Place(
        Point point,
        [CallerArgumentExpression(nameof(point))] string name = ""
    )
    {
        if (!IsCoordinate(point.X))
            Throw(name, $"The x coordinate of {name}", point.X, CoordinateRule);
        if (!IsCoordinate(point.Y))
            Throw(name, $"The y coordinate of {name}", point.Y, CoordinateRule);
        return point;
    }

    /// <summary>A distance to move by along one axis: far enough to bring any place to any other.</summary>
    internal static double Shift(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = "",
        string? subject = null
    )
    {
        if (!(Math.Abs(value) <= 2 * MaxCoordinate))
            Throw(name, subject ?? name, value, "must lie between -4,000,000 and 4,000,000 mm");
        return value;
    }

    /// <summary>Where a transform has taken a point.</summary>
    internal static Point Moved(Point moved, Point from, string name)
    {
        if (!IsCoordinate(moved.X) || !IsCoordinate(moved.Y))
            throw new ArgumentOutOfRangeException(
                name,
                $"{name} takes {from} to {moved}, but both coordinates must lie between -2,000,000 and 2,000,000 mm."
            );
        return moved;
    }

    /// <summary>The bulge of an arc that stays where coordinates may lie.</summary>
    /// <remarks>
    /// The arc lies within its height of the middle of the chord if it is a half circle or more, and within its height of
    /// the box of the chord if it is less.
    /// </remarks>
    internal static double Bulge(Point start, Point end, double bulge, string name)
    {
        if (bulge == 0)
            return bulge;
        Finite(bulge, name);
        // Rounding may carry an arc that ends at the limit a little beyond it.
        const double Limit = MaxCoordinate * (1 + 1e-9);
        // Not less than the chord, and without a root.
        var atMost = Math.Abs(end.X - start.X) + Math.Abs(end.Y - start.Y);
        var size = Math.Abs(bulge);
        if (size <= MaxBulge && Reach(start) + Reach(end) + atMost * size <= Limit)
            return bulge;
        var chord = start.DistanceTo(end);
        var beside = Limit - Math.Max(Reach(start), Reach(end));
        var around = Limit - Reach(start.Towards(end, 0.5));
        var largest = Math.Min(
            MaxBulge,
            around >= chord / 2 ? 2 * around / chord : 2 * beside / chord
        );
        // Without a chord there is no arc, and any bulge will do.
        if (size <= (chord > 0 ? largest : MaxBulge))
            return bulge;
        var given = bulge.ToString(CultureInfo.InvariantCulture);
        var permitted = Rounded(chord > 0 ? largest : MaxBulge);
        throw new ArgumentOutOfRangeException(
            name,
            given,
            $"The arc from {start} to {end}, over a chord of {Text(chord)} mm, must stay between -2,000,000 and 2,000,000 mm: "
                + $"a bulge between -{permitted} and {permitted} works, but it is {given}."
        );

        static double Reach(Point point) => Math.Max(Math.Abs(point.X), Math.Abs(point.Y));

        // Down, so that the number in the message does work.
        static string Rounded(double value) =>
            Text(value >= 1 ? Math.Floor(value) : Math.Floor(value * 1e6) / 1e6);
    }

    internal static double Finite(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!double.IsFinite(value))
            Throw(name, value, "must be a finite number");
        return value;
    }

    internal static double Positive(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!(value > 0 && value <= MaxSize))
            Throw(name, value, "must be more than 0 and at most 1,000,000 mm");
        return value;
    }

    internal static double NotNegative(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!(value >= 0 && value <= MaxSize))
            Throw(name, value, "must be 0 or more and at most 1,000,000 mm");
        return value;
    }

    /// <summary>A coordinate or signed distance in millimetres.</summary>
    internal static double Within(
        double value,
        double min,
        double max,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!(value >= min && value <= max))
            Throw(name, value, $"must lie between {Text(min)} and {Text(max)}");
        return value;
    }

    internal static int Within(
        int value,
        int min,
        int max,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (value < min || value > max)
            Throw(name, value, $"must lie between {Text(min)} and {Text(max)}");
        return value;
    }

    /// <summary>One of an enumeration's values: a number cast to it may be none.</summary>
    internal static T Defined<T>(
        T value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
        where T : struct, Enum
    {
        if (!Enum.IsDefined(value))
            throw new ArgumentOutOfRangeException(
                name,
                value,
                $"{name} must be one of {string.Join(", ", Enum.GetNames<T>())}, but is {value}."
            );
        return value;
    }

    internal static T NotNull<T>(
        [NotNull] T? value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
        where T : class
    {
        ArgumentNullException.ThrowIfNull(value, name);
        return value;
    }

    /// <summary>A number as messages print it: invariant, and short.</summary>
    internal static string Text(double value) =>
        value.ToString("0.######", CultureInfo.InvariantCulture);

    private static bool IsCoordinate(double value) => Math.Abs(value) <= MaxCoordinate;

    [DoesNotReturn]
    private static void Throw(string name, double value, string rule) =>
        Throw(name, name, value, rule);

    /// <param name="name">The parameter.</param>
    /// <param name="subject">What about it is wrong, as the message starts.</param>
    /// <param name="value">What it is.</param>
    /// <param name="rule">What it must be.</param>
    [DoesNotReturn]
    internal static void Throw(string name, string subject, double value, string rule)
    {
        var text = value.ToString(CultureInfo.InvariantCulture);
        throw new ArgumentOutOfRangeException(name, text, $"{subject} {rule}, but is {text}.");
    }
}
