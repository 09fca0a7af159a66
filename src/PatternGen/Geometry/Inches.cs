using System.Diagnostics.CodeAnalysis;

namespace PatternGen;

/// <summary>
/// Lengths as people write them, turned into millimetres. This is the only place that knows of inches; everything else
/// is in millimetres and guesses no unit.
/// </summary>
/// <remarks>
/// Understood, whatever the system's language: inches as <c>29 3/16</c>, <c>29-3/16</c>, <c>3/8</c>, <c>5 ½</c> or
/// <c>29.1875</c>, with or without <c>"</c>, <c>in</c> or <c>inches</c>; feet and inches as <c>2' 5 3/16"</c> or
/// <c>2 ft 5 in</c>; metric as <c>742.5 mm</c>, <c>74.25 cm</c> or <c>0.7425 m</c>, always with its unit.
/// </remarks>
public static class Inches
{
    /// <summary>Millimetres in an inch, by definition.</summary>
    internal const double Millimetres = 25.4;

    /// <summary>Returns a length in inches as millimetres, ×25.4. <c>ToMillimetres(29.1875)</c> is 741.3625.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative, not finite, or more than 1 km.</exception>
    public static double ToMillimetres(double inches) =>
        Geometry.Guard.Within(inches, 0, Geometry.Guard.MaxSize / Millimetres) * Millimetres;

    /// <summary>Returns the length that a text gives, in millimetres. <c>Parse("29 3/16")</c> is 741.3625.</summary>
    /// <param name="text">The length; without a unit it is in inches.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    /// <exception cref="FormatException">The text gives no length; the message says where it stops making sense and what would work.</exception>
    public static double Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var reader = new LengthText(text);
        return reader.TryRead(out var millimetres)
            ? millimetres
            : throw new FormatException(reader.Problem);
    }

    /// <summary>Reads the length that a text gives, in millimetres, if it gives one.</summary>
    /// <param name="text">As for <see cref="Parse"/>; null gives none.</param>
    /// <param name="millimetres">The length in mm, or 0.</param>
    public static bool TryParse([NotNullWhen(true)] string? text, out double millimetres)
    {
        millimetres = 0;
        return text is not null && new LengthText(text).TryRead(out millimetres);
    }
}
