using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A measured frame: members of one width round an opening, seen from the carved face.</summary>
/// <remarks>
/// The lower left corner of a rectangle is at (0, 0). Sides are numbered counter-clockwise from the lower one, and corner 1
/// is where side 1 begins. Unless said otherwise the members are pieces of wood for themselves, each with the grain along
/// it. Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class Frame
{
    private Frame(Point[] corners, double memberWidth)
    {
        Outline = new(corners);
        MemberWidth = memberWidth;
        RefuseNoOpening();
    }

    private Frame(Frame other, double? memberWidth = null)
    {
        Outline = other.Outline;
        Measures = other.Measures;
        MemberWidth = memberWidth ?? other.MemberWidth;
        HasOpening = other.HasOpening;
        IsOneBoard = other.IsOneBoard;
        CornerRadius = other.CornerRadius;
        Name = other.Name;
    }

    /// <summary>Width over all, in mm.</summary>
    public double Width => Outer.Extents.Width;

    /// <summary>Height over all, in mm.</summary>
    public double Height => Outer.Extents.Height;

    /// <summary>Width of the members in mm, from the outer edge to the opening.</summary>
    public double MemberWidth { get; }

    /// <summary>Number of sides: 4 for a rectangle.</summary>
    public int SideCount => Outline.Sides.Count;

    /// <summary>The outer edge, counter-clockwise.</summary>
    public Contour Outer => RingAt(0);

    /// <summary>The edge of the opening, counter-clockwise, or the line where it would be.</summary>
    public Contour Inner => RingAt(MemberWidth);

    /// <summary>Whether there is an opening; a lid has none. Default yes.</summary>
    public bool HasOpening { get; private init; } = true;

    /// <summary>Whether it is one piece of wood, with one grain. Default no: each side has the grain along it.</summary>
    public bool IsOneBoard { get; private init; }

    /// <summary>Radius of the corners at the outer edge in mm; those of the opening have the same centres. Default 0: sharp.</summary>
    public double CornerRadius { get; private init; }

    /// <summary>What the piece is called in captions; null, the default, for its size.</summary>
    public string? Name { get; private init; }

    internal FrameOutline Outline { get; }

    /// <summary>What a frame of equal sides was made from; null for other frames.</summary>
    internal RegularMeasures? Measures { get; private init; }

    /// <summary>Returns a frame of four members.</summary>
    /// <param name="width">Width over all, in mm.</param>
    /// <param name="height">Height over all, in mm.</param>
    /// <param name="band">
    /// Width of the members in mm. 22 leave an opening of 276 × 196 in a frame of 320 × 240.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or over 1 km.</exception>
    /// <exception cref="PatternException">The members leave no opening.</exception>
    public static Frame Of(double width, double height, double band) =>
        Of(
            [
                new(0, 0),
                new(Guard.Positive(width), 0),
                new(width, Guard.Positive(height)),
                new(0, height),
            ],
            Guard.Positive(band)
        );

    /// <summary>Returns the frame under a name, for captions.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public Frame Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(this) { Name = name };
    }

    /// <summary>Returns the frame with rounded corners. Bands keep their own: <see cref="FrameBorder.Bent"/> lets them follow.</summary>
    /// <param name="radius">Radius at the outer edge in mm, 0 for sharp corners. An opening in members as wide as that or wider has sharp ones.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative.</exception>
    /// <exception cref="PatternException">A side is too short for it.</exception>
    [Pure]
    public Frame Rounded(double radius)
    {
        RefuseRadius(Guard.NotNegative(radius));
        return new(this) { CornerRadius = radius };
    }

    /// <summary>Returns the frame cut out of one board, so that all sides have the board's grain.</summary>
    [Pure]
    public Frame OneBoard() => new(this) { IsOneBoard = true };

    /// <summary>Returns a lid or panel of the same size, of one board without an opening.</summary>
    [Pure]
    public Frame Lid() => new(this) { IsOneBoard = true, HasOpening = false };

    internal Frame WithMembers(double width)
    {
        var frame = new Frame(this, width);
        frame.RefuseNoOpening();
        return frame;
    }

    /// <summary>Returns the frame with a band carved round it, mitred at the corners.</summary>
    /// <param name="band">The band. Its lower edge lies outside.</param>
    /// <param name="fromEdge">Distance in mm from the outer edge to the lowest rule; centred on the members if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative.</exception>
    /// <exception cref="PatternException">The band is higher than the members are wide, or would leave them.</exception>
    [Pure]
    public FrameBorder Border(TriangleBand band, double? fromEdge = null)
    {
        Guard.NotNull(band);
        var room = Room(band, 0);
        var from = Guard.NotNegative(fromEdge ?? Math.Max(0, room / 2), nameof(fromEdge));
        RefuseOver(from, room, band);
        return new(this, new([new(band, from, Fitting.Default)]));
    }

    /// <summary>Returns the size and the name, for messages.</summary>
    public override string ToString() => Name ?? Title(Wording.English);

    internal string Title(Wording words) =>
        HasOpening
            ? words.Frame(SideCount, Width, Height, MemberWidth)
            : words.Panel(Width, Height);

    /// <summary>Distance from the outer edge that a band may be moved to; refused if there is none from a given one on.</summary>
    internal double Room(TriangleBand band, double from)
    {
        var room = MemberWidth - band.Height;
        if (room < from - Rounding)
            throw new PatternException(
                $"A band {Guard.Text(band.Height)} mm high does not fit on members {Guard.Text(MemberWidth)} mm wide"
                    + (from > 0 ? $" from {Guard.Text(from)} mm on." : "."),
                remedies:
                [
                    $"members at least {Guard.Text(band.Height + from)} mm wide",
                    MemberWidth > from
                        ? $"rules that are at most {Guard.Text(MemberWidth - from)} mm apart in all"
                        : "fewer bands",
                ]
            );
        return room;
    }

    internal void RefuseOver(double from, double room, TriangleBand band)
    {
        if (from > room + Rounding)
            throw new PatternException(
                $"{Guard.Text(from)} mm from the edge, a band {Guard.Text(band.Height)} mm high would leave members {Guard.Text(MemberWidth)} mm wide.",
                new(0, from),
                [$"at most {Guard.Text(room)} mm from the edge"]
            );
    }

    internal void RefuseRadius(double radius)
    {
        var largest = Outline.LargestRadius;
        if (radius > largest)
            throw new PatternException(
                $"A radius of {Guard.Text(radius)} mm takes more than the shortest side has.",
                remedies: [$"a radius of at most {FitTrouble.Down(largest)} mm"]
            );
    }

    private Contour RingAt(double height) => Outline.Ring(height, CornerRadius);

    private double Rounding => Tolerance.ForExtent(MemberWidth).Merge;

    private void RefuseNoOpening()
    {
        if (Outline.IsOpenAt(MemberWidth))
            return;
        var shortest = Outline.Sides.MinBy(side => side.LengthAt(MemberWidth))!;
        var isTooWide =
            shortest.LengthAt(MemberWidth) <= Tolerance.ForExtent(shortest.Length).Merge;
        // All sides shrink in proportion to the width.
        var most = Outline
            .Sides.Where(side => side.First + side.Last > 0)
            .Min(side => side.Length / (side.First + side.Last));
        throw new PatternException(
            HasOpening
                ? $"Members {Guard.Text(MemberWidth)} mm wide leave no opening in a frame of {Guard.Text(Width)} × {Guard.Text(Height)} mm."
                : $"A border {Guard.Text(MemberWidth)} mm wide leaves nothing inside a panel of {Guard.Text(Width)} × {Guard.Text(Height)} mm.",
            FrameOutline.PointAt(shortest, MemberWidth),
            [
                isTooWide ? $"less than {Guard.Text(most)} mm" : "less",
                HasOpening ? "a larger frame" : "a larger panel",
            ]
        );
    }
}
