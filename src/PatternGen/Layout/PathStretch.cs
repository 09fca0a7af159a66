namespace PatternGen;

/// <summary>A part of a path that repeats were fitted to by itself: from corner to corner, or the whole.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class PathStretch
{
    internal PathStretch(double from, double to, int repeats, double spacing, double first)
    {
        From = from;
        To = to;
        Repeats = repeats;
        Spacing = spacing;
        First = first;
    }

    /// <summary>Where it starts along the path, in mm from the path's first corner; margins and the room at corners lie outside it.</summary>
    public double From { get; }

    /// <summary>Where it ends along the path, in mm. On a closed path it may lie beyond the length, which is once more round.</summary>
    public double To { get; }

    /// <summary>Number of places for repeats on it; 0 if there was no room for one.</summary>
    public int Repeats { get; }

    /// <summary>Distance along the path from one repeat to the next, in mm; 0 if there is no repeat.</summary>
    public double Spacing { get; }

    /// <summary>Where the first repeat stands along the path, in mm.</summary>
    public double First { get; }

    /// <summary>Where the last repeat stands along the path, in mm.</summary>
    public double Last => Repeats > 0 ? PlaceOf(Repeats - 1) : First;

    /// <summary>Returns the stretch in English words: <c>7 repeats, spacing 14.2857 mm</c>.</summary>
    public override string ToString() => Wording.English.PathStretch(Repeats, Spacing);

    /// <summary>Where a repeat stands along the path: from its index, never by adding up.</summary>
    internal double PlaceOf(int index) => First + index * Spacing;
}
