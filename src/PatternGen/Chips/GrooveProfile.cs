using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How a groove along a path runs out at its ends: as wide all along, or tapering to a point at both ends.</summary>
/// <remarks>
/// The clearance of a groove, its depth over the tangent of the wall angle, is half its width where it is widest. Where it
/// tapers, the clearance grows from 0 at the end of the path in proportion to the length walked along it. The default
/// value is <see cref="Constant"/>. Immutable and safe to share between threads.
/// </remarks>
public readonly record struct GrooveProfile
{
    /// <summary>Length of the taper at either end: 0 for none, without end for half of any path.</summary>
    private readonly double _taper;

    private GrooveProfile(double taper) => _taper = taper;

    /// <summary>As wide all along; the ends are upright, as where a groove runs off the wood or meets a stop cut.</summary>
    public static GrooveProfile Constant => default;

    /// <summary>To a point at both ends, widest in the middle of the path only.</summary>
    public static GrooveProfile Tapering => new(double.PositiveInfinity);

    /// <summary>Whether the groove ends in points.</summary>
    public bool IsTapering => _taper > 0;

    /// <summary>Length in mm of the taper at either end: null for none and for half of any path.</summary>
    internal double? Taper => _taper > 0 && double.IsFinite(_taper) ? _taper : null;

    /// <summary>Returns a profile that ends in points and has its full width between.</summary>
    /// <param name="length">Length of the taper at either end in mm, along the path. On a path shorter than two tapers they meet in its middle.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive.</exception>
    public static GrooveProfile TaperingOver(double length) => new(Guard.Positive(length));

    /// <summary>Returns the length of the taper at either end in mm: 0 for none, and at most half the path.</summary>
    /// <param name="pathLength">Length of the path in mm. On one of 30, a taper over 10 has 10, and <see cref="Tapering"/> has 15.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or not a number.</exception>
    public double TaperOn(double pathLength) => Math.Min(_taper, Guard.NotNegative(pathLength) / 2);

    /// <summary>Returns the share of the full width at a place along a path, from 0 to 1.</summary>
    /// <param name="along">Distance from the start in mm; the nearer end counts outside the path.</param>
    /// <param name="pathLength">Length of the path in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is out of range or not a number.</exception>
    public double ShareAt(double along, double pathLength)
    {
        var taper = TaperOn(pathLength);
        Guard.Finite(along);
        if (taper == 0)
            return 1;
        var fromEnd = Math.Min(along, pathLength - along);
        return Math.Clamp(fromEnd / taper, 0, 1);
    }

    /// <summary>The profile of a groove that is scaled as a whole.</summary>
    internal GrooveProfile Scaled(double scale) => new(_taper * scale);

    /// <summary>Refuses a groove that would be blunt: one that is wider than its tapers are long has round ends, not points.</summary>
    /// <exception cref="PatternException">It is.</exception>
    internal void RefuseBlunt(Chain path, double width)
    {
        var taper = TaperOn(path.Length);
        if (!IsTapering || width / 2 < taper)
            return;
        throw new PatternException(
            $"A groove {Guard.Text(width)} mm wide can't taper to a point over {Guard.Text(taper)} mm.",
            path.Start,
            [
                $"a groove less than {Guard.Text(2 * taper)} mm wide",
                $"a taper of more than {Guard.Text(width / 2)} mm, on a path of more than {Guard.Text(width)} mm",
            ]
        );
    }
}
