using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A pattern bent along a path of lines and arcs: once, or in whole repeats.</summary>
/// <remarks>
/// <para>
/// x in the motif counts along the path, y to its left. What is level becomes a parallel of the path, what is upright
/// stands square on it, everything else is followed by arcs that meet smoothly, to <see cref="Accuracy"/>. Chips, line
/// cuts and layout lines are bent; labels are placed and turned; the outline of the stock is left out, as wood isn't bent.
/// Stab-cut chips keep their three sides.
/// </para>
/// <para>Drawn when first needed. Each method returns a changed copy. Immutable and safe to share between threads.</para>
/// </remarks>
public sealed class BentPattern : Pattern
{
    private readonly Lazy<BendLine> _line;

    internal BentPattern(SegmentRun path, Pattern motif, double? spacing, double offset)
    {
        (Path, Motif, Spacing, Offset) = (path, motif, spacing, offset);
        _line = new(() => BendLineBuilder.Along(Path, Span(), Start));
    }

    private BentPattern(BentPattern other)
        : this(other.Path, other.Motif, other.Spacing, other.Offset) =>
        (Accuracy, Start) = (other.Accuracy, other.Start);

    /// <summary>The path.</summary>
    public SegmentRun Path { get; }

    /// <summary>The motif.</summary>
    public Pattern Motif { get; }

    /// <summary>Length of one repeat in mm that was asked for; null if the motif is bent once.</summary>
    public double? Spacing { get; }

    /// <summary>Distance in mm from the path to the motif's x axis, positive to the left of travel.</summary>
    public double Offset { get; }

    /// <summary>How far arcs may be off the bent curve, in mm. Default 0.01.</summary>
    public double Accuracy { get; private init; } = 0.01;

    /// <summary>Where x is 0 on a closed path: distance along it in mm. Default 0, its first corner.</summary>
    public double Start { get; private init; }

    /// <summary>Number of repeats: the whole number whose repeats come nearest to <see cref="Spacing"/>.</summary>
    public int Repeats
    {
        get
        {
            if (Spacing is not { } spacing)
                return 1;
            var length = Path.Length;
            var below = Math.Max(1, Math.Floor(length / spacing));
            var isBelow = length / below - spacing <= spacing - length / (below + 1);
            return (int)Math.Min(isBelow ? below : below + 1, PitchQuestion.MaxRepeats);
        }
    }

    /// <summary>Length of one repeat along the path in mm; the whole path if the motif is bent once.</summary>
    public double Pitch => Path.Length / Repeats;

    /// <inheritdoc/>
    public override string? Name => Motif.Name;

    /// <summary>Returns the pattern bent to another accuracy.</summary>
    /// <param name="accuracy">In mm, from 0.000001 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The accuracy is out of range.</exception>
    [Pure]
    public BentPattern WithAccuracy(double accuracy) =>
        new(this) { Accuracy = BentStyle.Checked(accuracy) };

    /// <summary>Returns the pattern begun elsewhere on a closed path.</summary>
    /// <param name="length">Distance along the path in mm, as for <see cref="SegmentRun.PointAt"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    /// <exception cref="InvalidOperationException">The path is open.</exception>
    [Pure]
    public BentPattern StartingAt(double length)
    {
        Guard.Finite(length);
        return Path.IsClosed
            ? new(this) { Start = length }
            : throw new InvalidOperationException(
                "On an open path x is 0 at its start; move the motif instead."
            );
    }

    internal override IEnumerable<string> Facts(Wording words) =>
        [.. Motif.Facts(words), words.Bent(Path.Length, Repeats, Pitch)];

    private protected override PatternNode Draw()
    {
        RefuseTooLong();
        var halves = 2 * Repeats;
        var stations = new Stations(0, _line.Value.Length, halves, Path.IsClosed);
        // Repeats have the motif's origin in their middle; a motif bent once has it where the path begins.
        var first = Spacing is null ? 0 : 1;
        return new MotifBending(_line.Value, Accuracy, stations, first, Repeats).Draw(Motif.Root);
    }

    private BandSpan Span()
    {
        var extents = Motif.Bounds(LayerSet.Drawn & ~LayerSet.Stock);
        var (low, high) = extents is { } drawn ? (drawn.Min.Y, drawn.Max.Y) : (0, 0);
        return new(Offset, low, high, 0, [], Pitch);
    }

    private void RefuseTooLong()
    {
        if (Motif.Bounds(LayerSet.Drawn & ~LayerSet.Stock) is not { } drawn)
            return;
        var rounding = Path.Tolerance.Merge;
        if (Path.IsClosed ? drawn.Width <= Path.Length + rounding : Fits(drawn, rounding))
            return;
        throw new PatternException(
            $"A motif from x = {Guard.Text(drawn.Min.X)} to {Guard.Text(drawn.Max.X)} mm does not lie on a path of {Guard.Text(Path.Length)} mm.",
            Path.PointAt(0),
            Spacing is null
                ?
                [
                    $"a motif between 0 and {Guard.Text(Path.Length)} mm",
                    $"a path of at least {Guard.Text(drawn.Max.X)} mm, and a motif that starts at 0",
                ]
                : [$"a motif at most {Guard.Text(Pitch)} mm long, drawn about the origin"]
        );
    }

    private bool Fits(Extents drawn, double rounding)
    {
        var first = Spacing is null ? 0 : Pitch / 2;
        var last = Spacing is null ? 0 : Path.Length - Pitch / 2;
        return first + drawn.Min.X >= -rounding && last + drawn.Max.X <= Path.Length + rounding;
    }
}
