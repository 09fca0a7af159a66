namespace PatternGen;

public partial class Wording
{
    /// <summary>What a rosette is called: <c>12 petals, radius 40 mm</c>; <c>Star {6/2} of 2 strokes, radius 40 mm</c>.</summary>
    /// <param name="family">How it is made; not nested, nor within a polygon.</param>
    /// <param name="count">Number of petals, points or whatever else goes round.</param>
    /// <param name="radius">Radius in mm.</param>
    /// <param name="sets">Number of sets of overlaid petals, or of separate strokes of a star; else 1.</param>
    /// <param name="every">To every how many-th point a star goes; else 1.</param>
    public virtual string Rosette(
        RosetteFamily family,
        int count,
        double radius,
        int sets,
        int every
    )
    {
        var what = family switch
        {
            RosetteFamily.Petals => $"{count} petals",
            RosetteFamily.Overlaid => $"{sets} × {count} petals overlaid",
            RosetteFamily.TwoLevel => $"2 × {count} petals on two levels",
            RosetteFamily.PetalRing => $"Ring of {count} petals",
            RosetteFamily.Wreathed => $"{count} petals in a wreath",
            RosetteFamily.Scalloped => $"{count} petals in a scalloped rim",
            RosetteFamily.Star => Star(count, every, sets),
            RosetteFamily.SplitStar => $"Star of {count} split points",
            RosetteFamily.Rays => $"{count} rays",
            RosetteFamily.Diamonds => $"Ring of {count} diamonds",
            RosetteFamily.Whirl => $"Whirl of {count}",
            RosetteFamily.OverlappingCircles => $"{count} overlapping circles",
            RosetteFamily.TouchingCircles => $"{count} touching circles",
            _ => $"Fan of {count} petals",
        };
        return $"{what}, radius {Millimetres(radius)}";
    }

    /// <summary>What overlaid petals are called of which the later sets stop at the earlier ones: <c>2 × 6 petals overlaid, radius 40 mm, the later behind the earlier</c>.</summary>
    /// <param name="rosette">What the rosette is called else.</param>
    public virtual string RosetteBehind(string rosette) =>
        $"{rosette}, the later behind the earlier";

    /// <summary>What a rosette in the plain centre of another is called: <c>24 rays, radius 40 mm, round 6 petals, radius 16 mm</c>.</summary>
    /// <param name="outer">What the outer one is called.</param>
    /// <param name="inner">What the inner one is called.</param>
    public virtual string RosetteRound(string outer, string inner) =>
        $"{outer}, round {FirstSmall(inner)}";

    /// <summary>What a rosette within a polygon is called: <c>6 petals, radius 40 mm, within 4 sides</c>.</summary>
    /// <param name="rosette">What the rosette is called.</param>
    /// <param name="sides">Number of the polygon's sides.</param>
    public virtual string RosetteWithin(string rosette, int sides) =>
        $"{rosette}, within {sides} sides";

    private static string Star(int count, int every, int strokes) =>
        $"Star {{{count}/{every}}}{(strokes == 1 ? "" : $" of {strokes} strokes")}";

    private static string FirstSmall(string text) =>
        text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}
