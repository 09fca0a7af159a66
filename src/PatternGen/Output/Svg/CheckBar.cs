using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A bar of known length with a tick every 10 mm, to see with a ruler whether a print is true to size.</summary>
internal sealed class CheckBar
{
    /// <summary>Length in mm: long enough that 1 % shows, short enough for any sheet.</summary>
    internal const double Length = 100;

    private const double Step = 10;
    private const double ShortTick = 1.6;
    private const double LongTick = 3;

    private CheckBar(Transform placement, double length = Length) =>
        Strokes = [.. Draw(length).Select(stroke => stroke.Transformed(placement))];

    internal IReadOnlyList<Chain> Strokes { get; }

    internal Extents Box =>
        Strokes.Skip(1).Aggregate(Strokes[0].Extents, (box, s) => box.Including(s.Extents));

    /// <summary>A bar to the right, its ticks below.</summary>
    /// <param name="start">Its left end.</param>
    /// <param name="length">Its length in mm, whole tens.</param>
    internal static CheckBar Level(Point start, double length = Length) =>
        new(Transform.Move(start - Point.Origin), length);

    /// <summary>A bar upwards, its ticks on the right.</summary>
    internal static CheckBar Upright(Point start) =>
        new(Transform.Rotate(90).Then(Transform.Move(start - Point.Origin)));

    private static IEnumerable<Chain> Draw(double length)
    {
        yield return Chain.Line(new(0, 0), new(length, 0));
        for (var tick = 0; tick <= length / Step; tick++)
            yield return Chain.Line(
                new(tick * Step, 0),
                new(tick * Step, tick % 5 == 0 ? -LongTick : -ShortTick)
            );
    }
}
