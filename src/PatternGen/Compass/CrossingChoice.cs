using PatternGen.Geometry;

namespace PatternGen;

/// <summary>By what a person tells two crossings of the same curves apart.</summary>
public enum CrossingRule
{
    /// <summary>The crossing nearest to a point.</summary>
    Nearest,

    /// <summary>The crossing farthest from a point.</summary>
    Farthest,

    /// <summary>The crossing left of the way from one point to another.</summary>
    Left,

    /// <summary>The crossing right of the way from one point to another.</summary>
    Right,
}

/// <summary>Which crossing of two curves is meant.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class CrossingChoice
{
    private CrossingChoice(CrossingRule rule, MarkedPoint from, MarkedPoint? to = null)
    {
        Rule = rule;
        From = from;
        To = to;
    }

    /// <summary>By what it is told.</summary>
    public CrossingRule Rule { get; }

    /// <summary>The point whose distance counts, or the start of the way whose side counts.</summary>
    public MarkedPoint From { get; }

    /// <summary>The end of the way whose side counts; null where a distance counts.</summary>
    public MarkedPoint? To { get; }

    /// <summary>The crossing nearest to a point.</summary>
    public static CrossingChoice NearestTo(MarkedPoint point) =>
        new(CrossingRule.Nearest, Guard.NotNull(point));

    /// <summary>The crossing farthest from a point.</summary>
    public static CrossingChoice FarthestFrom(MarkedPoint point) =>
        new(CrossingRule.Farthest, Guard.NotNull(point));

    /// <summary>The crossing on the left of the way from one point to another.</summary>
    public static CrossingChoice LeftOf(MarkedPoint from, MarkedPoint to) =>
        new(CrossingRule.Left, Guard.NotNull(from), Guard.NotNull(to));

    /// <summary>The crossing on the right of the way from one point to another.</summary>
    public static CrossingChoice RightOf(MarkedPoint from, MarkedPoint to) =>
        new(CrossingRule.Right, Guard.NotNull(from), Guard.NotNull(to));

    /// <summary>The places that fit the rule: one, or none or several where it does not tell them apart.</summary>
    internal Point[] Fitting(IReadOnlyList<Point> places, Tolerance tolerance)
    {
        double[] ranks = [.. places.Select(Rank)];
        // A side must be the right one; a distance need only be the best.
        var least = Rule is CrossingRule.Left or CrossingRule.Right
            ? tolerance.Merge
            : ranks.Max() - tolerance.Merge;
        return [.. places.Where((_, i) => ranks[i] > least)];
    }

    private double Rank(Point place) =>
        Rule switch
        {
            CrossingRule.Nearest => -From.Point.DistanceTo(place),
            CrossingRule.Farthest => From.Point.DistanceTo(place),
            CrossingRule.Left => LeftBy(place),
            _ => -LeftBy(place),
        };

    private double LeftBy(Point place)
    {
        var way = To!.Point - From.Point;
        return way.Cross(place - From.Point) / way.Length;
    }
}
