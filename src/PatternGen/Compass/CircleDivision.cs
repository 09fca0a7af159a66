using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A circle divided into equal parts by stepping round it with the dividers.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class CircleDivision
{
    /// <summary>Closing error in mm that a pencil line hides.</summary>
    internal const double UsualLimit = 0.25;

    /// <summary>Most times as large as a circle that one is stepped on.</summary>
    private const int MostFactor = 1000;

    /// <summary>Finest reading of a rule in mm; what is finer than a wavelength of light, nobody reads.</summary>
    private const double FinestReading = 1e-4;

    /// <summary>Most parts that a division has; more would lie closer together than a pencil marks.</summary>
    internal const int MostParts = 360;

    private CircleDivision(int count, double radius, double steppedRadius)
    {
        Count = count;
        Radius = radius;
        SteppedRadius = steppedRadius;
    }

    /// <summary>Number of equal parts.</summary>
    public int Count { get; }

    /// <summary>Radius in mm of the circle that is divided.</summary>
    public double Radius { get; }

    /// <summary>Radius in mm of the circle that is stepped round: <see cref="Radius"/> itself, or that of a larger circle round the same centre.</summary>
    public double SteppedRadius { get; }

    /// <summary>The setting of the dividers in mm, unrounded: 2R sin(180°/n). Nine parts of a radius of 40 take 27.3616.</summary>
    public double Chord => 2 * SteppedRadius * Math.Sin(Math.PI / Count);

    /// <summary>Whether compass and straightedge divide exactly, by a construction of few steps: 2, 3, 4, 5, 6, 8, 10, 12 and 16 parts.</summary>
    public bool IsExact => Count is 2 or 3 or 4 or 5 or 6 or 8 or 10 or 12 or 16;

    /// <summary>Returns the division of a circle.</summary>
    /// <param name="count">Number of parts, 2 to 360.</param>
    /// <param name="radius">Radius of the circle in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count or the radius is out of range.</exception>
    public static CircleDivision Of(int count, double radius) =>
        new(Guard.Within(count, 2, MostParts), Guard.Positive(radius), radius);

    /// <summary>Returns the setting rounded as it is read: 27.4 for a <see cref="Chord"/> of 27.3616 read to 0.1 mm.</summary>
    /// <param name="reading">The finest that the rule is read to, in mm, such as 0.1 or 0.25.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reading is less than 0.0001 mm.</exception>
    public double Setting(double reading)
    {
        Guard.Within(reading, FinestReading, Guard.MaxSize);
        var marks = Math.Round(Chord / reading, MidpointRounding.AwayFromZero);
        // Divided by 10, 274 is the double nearest to 27.4; times 0.1 it is not.
        var perMillimetre = Math.Round(1 / reading);
        return perMillimetre * reading == 1 ? marks / perMillimetre : marks * reading;
    }

    /// <summary>
    /// Returns by how much the last step misses the start when the setting is read, in mm along the divided circle:
    /// positive past the start, negative short of it. Nine parts of a radius of 40, read to 0.1 mm, end 0.37 mm past it.
    /// </summary>
    /// <param name="reading">The finest that the rule is read to, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reading is not positive.</exception>
    /// <exception cref="PatternException">Read so coarsely the setting is 0 or wider than the circle.</exception>
    public double ClosingError(double reading) => Count * StepError(reading).Radians * Radius;

    /// <summary>Returns by how much each step turns too far when the setting is read.</summary>
    /// <inheritdoc cref="ClosingError"/>
    public Angle StepError(double reading)
    {
        var setting = Setting(reading);
        if (!CanStep(setting))
            throw new PatternException(
                $"Read to {Guard.Text(reading)} mm, the setting for {Count} parts of a circle of {Guard.Text(SteppedRadius)} mm radius is {Guard.Text(setting)} mm, which no step round it has.",
                remedies: ["a finer reading", "a larger circle round the same centre"]
            );
        return Angle.FromRadians(2 * Math.Asin(setting / (2 * SteppedRadius)) - Math.Tau / Count);
    }

    /// <summary>
    /// Returns the cure for a closing error: the same division stepped on a larger circle round the same centre, whose
    /// marks are brought in along the radii. What is missed there counts here only by one part in
    /// <paramref name="factor"/>.
    /// </summary>
    /// <remarks>After Joshua Rose, Modern Machine-Shop Practice.</remarks>
    /// <param name="factor">How many times as large, 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is out of range, or the circle larger than 1 km.</exception>
    public CircleDivision OnLargerCircle(double factor) =>
        new(Count, Radius, Guard.Positive(Radius * Guard.Within(factor, 1, MostFactor)));

    /// <summary>Returns how many times as large a circle, at least, brings the closing error within a limit; 1 if none is needed.</summary>
    /// <param name="reading">The finest that the rule is read to, in mm.</param>
    /// <param name="limit">The largest closing error in mm; 0.25 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The reading or the limit is not positive.</exception>
    /// <exception cref="PatternException">No circle up to 1000 times as large is enough.</exception>
    public int LargerCircle(double reading, double limit = UsualLimit)
    {
        Guard.Positive(reading);
        Guard.Positive(limit);
        return FactorFor(reading, limit)
            ?? throw new PatternException(
                $"Read to {Guard.Text(reading)} mm, no larger circle brings the closing error of {Count} parts under {Guard.Text(limit)} mm.",
                remedies: ["a finer reading", "a larger limit"]
            );
    }

    /// <summary>As <see cref="LargerCircle"/>; null if no circle is enough.</summary>
    internal int? FactorFor(double reading, double limit)
    {
        for (var factor = 1; factor <= MostFactor && factor * Radius <= Guard.MaxSize; factor++)
        {
            var larger = OnLargerCircle(factor);
            if (larger.CanRead(reading) && Math.Abs(larger.ClosingError(reading)) <= limit)
                return factor;
        }
        return null;
    }

    /// <summary>Whether the setting, when read so finely, can step round the circle.</summary>
    internal bool CanRead(double reading) => CanStep(Setting(reading));

    private bool CanStep(double setting) => setting > 0 && setting <= 2 * SteppedRadius;
}
