using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A heart of four arcs: one chip, or two halves with a ridge left standing between them.</summary>
/// <remarks>
/// Its point is at the origin, and it stands upright above it. Each method returns a changed copy. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed class Heart : Pattern
{
    /// <summary>Radius of the lobes as a share of the width: at a quarter they would only touch at the top of the notch.</summary>
    private const double Lobe = 0.27;

    private Heart(double width, double height, double? ridge)
    {
        Width = width;
        Height = height;
        Ridge = ridge;
    }

    /// <summary>Over all, in mm.</summary>
    public double Width { get; }

    /// <summary>From the point to the top of the lobes, in mm.</summary>
    public double Height { get; }

    /// <summary>Width in mm of the ridge between its halves; 0 for one as sharp as a knife; null, the default, for a heart in one piece.</summary>
    public double? Ridge { get; }

    /// <summary>Returns a heart in one piece.</summary>
    /// <param name="width">Over all, in mm.</param>
    /// <param name="height">From the point to the top of the lobes, in mm; from 0.8 to 2 times the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or the height out of range.</exception>
    public static Heart Of(double width, double height)
    {
        Guard.Positive(width);
        return new(width, Guard.Within(Guard.Positive(height), 0.8 * width, 2 * width), null);
    }

    /// <summary>Returns the heart as two chips, left and right of a ridge.</summary>
    /// <param name="ridge">Width of the ridge in mm; 0, the default, for one as sharp as a knife.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is negative, or more than a quarter of the width.</exception>
    [Pure]
    public Heart Halved(double ridge = 0) => new(Width, Height, Guard.Within(ridge, 0, Width / 4));

    internal override IEnumerable<string> Facts(Wording words) => [words.Heart(Width, Height)];

    private protected override PatternNode Draw()
    {
        if (Ridge is not { } ridge)
            return FreeFormShape.Row(
                Contour.Of([
                    .. RightSide(Point.Origin, Notch),
                    .. RightSide(Point.Origin, Notch)
                        .Select(segment =>
                            segment.Transformed(Transform.MirrorLeftRight()).Reversed()
                        )
                        .Reverse(),
                ])
            );
        var right = RightHalf(ridge / 2);
        return FreeFormShape.Row(right.Transformed(Transform.MirrorLeftRight()).Reversed(), right);
    }

    private double LobeRadius => Lobe * Width;

    private Point LobeCentre => new(Width / 2 - LobeRadius, Height - LobeRadius);

    private Point Notch => new(0, OnLobe(0));

    /// <summary>Height of the lobe's inner side over a place left of its middle.</summary>
    private double OnLobe(double x)
    {
        var beside = LobeCentre.X - x;
        return LobeCentre.Y + Math.Sqrt(LobeRadius * LobeRadius - beside * beside);
    }

    /// <summary>From the point up to where the lobe is widest, and over it to its end.</summary>
    private Segment[] RightSide(Point point, Point end)
    {
        Point widest = new(Width / 2, LobeCentre.Y);
        return
        [
            Biarc.Leaving(widest, new(0, -1), point).Reversed(),
            Biarc.Leaving(widest, new(0, 1), end),
        ];
    }

    /// <summary>The right half beside an upright line: both of its ends lie on the side that it has in the whole heart.</summary>
    private Contour RightHalf(double x)
    {
        Point end = new(x, OnLobe(x));
        var side = RightSide(Point.Origin, Notch)[0];
        if (x > 0)
        {
            var cut = side.Intersect(new Segment(new(x, -Height), new(x, Height))).Points[0];
            side = side.SplitAt(side.LengthAt(cut)).After;
        }
        Point start = new(x, side.Start.Y);
        return Contour.Of(
            new Segment(start, side.End, side.Bulge),
            Biarc.Leaving(side.End, new(0, 1), end),
            new Segment(end, start)
        );
    }
}
