namespace PatternGen.Geometry;

/// <summary>The direction of a vector as a number from 0 to 4 that grows with its angle, without trigonometry.</summary>
/// <remarks>The number is how far round the square |x| + |y| = 1 the vector points, in sides of the square.</remarks>
internal static class Diamond
{
    /// <summary>A whole turn.</summary>
    internal const double Turn = 4;

    internal static double Of(Vector vector)
    {
        var (x, y) = (vector.X, vector.Y);
        if (y >= 0)
            return x >= 0 ? (y == 0 ? 0 : y / (x + y)) : 1 + x / (x - y);
        return x < 0 ? 2 + y / (x + y) : 3 + x / (x - y);
    }

    /// <summary>A difference of two directions, brought to 0 (included) to a whole turn (excluded).</summary>
    internal static double Turned(double difference)
    {
        if (difference < 0)
            difference += Turn;
        // A tiny negative difference rounds up to a whole turn, which is none.
        return difference >= Turn ? 0 : difference;
    }
}
