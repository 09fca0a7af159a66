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

    /// <summary>A coordinate in millimetres: up to 2 km either way, twice the largest size.</summary>
    internal static double Coordinate(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    )
    {
        if (!(Math.Abs(value) <= 2 * MaxSize))
            Throw(name, value, "must lie between -2,000,000 and 2,000,000 mm");
        return value;
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

    [DoesNotReturn]
    private static void Throw(string name, double value, string rule) =>
        throw new ArgumentOutOfRangeException(
            name,
            value.ToString(CultureInfo.InvariantCulture),
            $"{name} {rule}, but is {value.ToString(CultureInfo.InvariantCulture)}."
        );
}
