using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A measured rail: a straight piece of wood, seen from its carved face.</summary>
/// <remarks>
/// The left shoulder is at x = 0, the lower edge at y = 0. Each method returns a changed copy. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed class Rail
{
    private Rail(double length, double width)
    {
        Length = length;
        Width = width;
    }

    private Rail(Rail other)
        : this(other.Length, other.Width)
    {
        LeftTenon = other.LeftTenon;
        RightTenon = other.RightTenon;
        Name = other.Name;
    }

    /// <summary>Length that is seen, between the shoulders, in mm.</summary>
    public double Length { get; }

    /// <summary>Width in mm.</summary>
    public double Width { get; private init; }

    /// <summary>Length of the left tenon in mm, hidden in the joint. Default 0.</summary>
    public double LeftTenon { get; private init; }

    /// <summary>Length of the right tenon in mm, hidden in the joint. Default 0.</summary>
    public double RightTenon { get; private init; }

    /// <summary>What the piece is called in captions; null, the default, for its size.</summary>
    public string? Name { get; private init; }

    /// <summary>Returns a rail without tenons.</summary>
    /// <param name="length">Length that is seen, between the shoulders, in mm.</param>
    /// <param name="width">Width in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or over 1 km.</exception>
    public static Rail Of(double length, double width) =>
        new(Guard.Positive(length), Guard.Positive(width));

    /// <summary>Returns the rail with tenons, which are drawn as stock and not carved.</summary>
    /// <param name="left">Length of the left tenon in mm, 0 or more.</param>
    /// <param name="right">Length of the right tenon in mm, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative.</exception>
    [Pure]
    public Rail WithTenons(double left, double right) =>
        new(this) { LeftTenon = Guard.NotNegative(left), RightTenon = Guard.NotNegative(right) };

    /// <summary>Returns the rail under a name, for captions.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public Rail Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(this) { Name = name };
    }

    /// <summary>Returns the name and the size, for messages.</summary>
    public override string ToString() =>
        Name is null
            ? Wording.English.Rail(Length, Width)
            : $"{Name}, {Wording.English.Size(Length, Width)}";

    internal Rail WithWidth(double width) => new(this) { Width = width };

    /// <summary>Returns the rail with a band carved along it, fitted with whole repeats.</summary>
    /// <param name="band">The band.</param>
    /// <param name="fromEdge">Distance in mm from the lower edge of the rail to the lowest rule; centred if not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative.</exception>
    /// <exception cref="PatternException">The band is higher than the rail is wide, or would leave it.</exception>
    [Pure]
    public RailBorder Border(TriangleBand band, double? fromEdge = null)
    {
        Guard.NotNull(band);
        return new(this, band, BandPosition(band, fromEdge), Fitting.Default);
    }

    /// <summary>Height of the band's lowest rule over the lower edge.</summary>
    internal double BandPosition(TriangleBand band, double? fromEdge)
    {
        var rounding = Tolerance.ForExtent(Width).Merge;
        var room = Width - band.Height;
        if (room < -rounding)
            throw new PatternException(
                $"A band {Guard.Text(band.Height)} mm high does not fit on a rail {Guard.Text(Width)} mm wide.",
                remedies:
                [
                    $"rules that are at most {Guard.Text(Width)} mm apart in all",
                    $"a rail at least {Guard.Text(band.Height)} mm wide",
                ]
            );
        var low = Guard.NotNegative(fromEdge ?? Math.Max(0, room / 2), nameof(fromEdge));
        if (low > room + rounding)
            throw new PatternException(
                $"{Guard.Text(low)} mm from the edge, a band {Guard.Text(band.Height)} mm high would leave a rail {Guard.Text(Width)} mm wide.",
                new(0, low),
                [$"at most {Guard.Text(room)} mm from the edge"]
            );
        return low;
    }

    /// <summary>Outline of the stock and, where there are tenons, the shoulder lines.</summary>
    internal PatternNode Draw()
    {
        Point low = new(-LeftTenon, 0);
        Point high = new(Length + RightTenon, Width);
        return new MotifNode
        {
            Stock = [Contour.Rectangle(low, high)],
            LayoutLines = [.. Shoulders()],
        };
    }

    private IEnumerable<Chain> Shoulders()
    {
        if (LeftTenon > 0)
            yield return Chain.Line(new(0, 0), new(0, Width));
        if (RightTenon > 0)
            yield return Chain.Line(new(Length, 0), new(Length, Width));
    }
}
