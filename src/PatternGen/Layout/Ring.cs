using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A circle, or a part of one, to carve a band round: the rim of a plate, a clock face.</summary>
/// <remarks>
/// The centre is the origin. The radius is that of the middle of the band (<see cref="Of"/>), of its outer edge
/// (<see cref="Inside"/>) or of its inner edge (<see cref="Outside"/>). Each method returns a changed copy. Immutable and
/// safe to share between threads.
/// </remarks>
public sealed class Ring
{
    /// <summary>Smallest angle of an arc in degrees.</summary>
    private const double LeastSweep = 1e-3;

    private Ring(double radius, double share) => (Radius, OuterShare) = (radius, share);

    private Ring(Ring other)
        : this(other.Radius, other.OuterShare)
    {
        Start = other.Start;
        Sweep = other.Sweep;
        DiscRadius = other.DiscRadius;
        HoleRadius = other.HoleRadius;
        Name = other.Name;
    }

    /// <summary>Radius in mm, of what the ring was made with.</summary>
    public double Radius { get; }

    /// <summary>
    /// Direction from the centre to where the first repeat begins, counter-clockwise from the right; of an arc, to its first end.
    /// Default 90 degrees: twelve o'clock.
    /// </summary>
    public Angle Start { get; private init; } = Angle.FromDegrees(90);

    /// <summary>The angle that the ring spans, counter-clockwise from <see cref="Start"/>: a whole turn, or less for an arc.</summary>
    public Angle Sweep { get; private init; } = Angle.FullTurn;

    /// <summary>Whether the ring is a whole circle.</summary>
    public bool IsWhole => Sweep == Angle.FullTurn;

    /// <summary>Radius in mm of the disc that the ring is carved on; null, the default, if no stock is drawn.</summary>
    public double? DiscRadius { get; private init; }

    /// <summary>Radius in mm of the hole in the disc; 0, the default, for none.</summary>
    public double HoleRadius { get; private init; }

    /// <summary>What the piece is called in captions; null, the default, for its size.</summary>
    public string? Name { get; private init; }

    /// <summary>Share of a band's height that lies outside of <see cref="Radius"/>.</summary>
    internal double OuterShare { get; }

    /// <summary>Returns a ring whose radius is that of the middle of its band. Ruled 2, 4, 4, 2 mm apart round 60, the edges have 54 and 66.</summary>
    /// <param name="radius">In mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive.</exception>
    public static Ring Of(double radius) => new(Guard.Positive(radius), 0.5);

    /// <summary>Returns a ring whose band lies just inside a circle: its outer edge has the radius.</summary>
    /// <param name="radius">In mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive.</exception>
    public static Ring Inside(double radius) => new(Guard.Positive(radius), 0);

    /// <summary>Returns a ring whose band lies just outside a circle: its inner edge has the radius.</summary>
    /// <param name="radius">In mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive.</exception>
    public static Ring Outside(double radius) => new(Guard.Positive(radius), 1);

    /// <summary>Returns the whole ring with its first repeat begun elsewhere.</summary>
    /// <param name="degrees">Counter-clockwise from the right; 90 is twelve o'clock.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Pure]
    public Ring From(double degrees) =>
        new(this) { Start = Angle.FromDegrees(degrees), Sweep = Angle.FullTurn };

    /// <summary>Returns a part of the ring.</summary>
    /// <param name="from">Direction from the centre to one end, in degrees counter-clockwise from the right.</param>
    /// <param name="sweep">The angle that it spans from there, in degrees, positive counter-clockwise, less than a whole turn: from 30, 120 ends at 150.</param>
    /// <exception cref="ArgumentOutOfRangeException">The sweep is 0 or a whole turn or more.</exception>
    [Pure]
    public Ring Arc(double from, double sweep)
    {
        var start = Angle.FromDegrees(Guard.Finite(from));
        var spanned = Angle.FromDegrees(
            Guard.Within(Math.Abs(sweep), LeastSweep, 360 - LeastSweep, nameof(sweep))
        );
        return new(this) { Start = sweep > 0 ? start : start - spanned, Sweep = spanned };
    }

    /// <summary>Returns the ring on a turned disc, which is drawn as its stock.</summary>
    /// <param name="radius">Radius of the disc in mm.</param>
    /// <param name="hole">Radius of the hole in its middle in mm; 0, the default, for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, or the hole not smaller than the disc.</exception>
    [Pure]
    public Ring OnDisc(double radius, double hole = 0)
    {
        Guard.Positive(radius);
        if (!(hole >= 0 && hole < radius))
            Guard.Throw(
                nameof(hole),
                nameof(hole),
                hole,
                $"must be 0 or more and less than the {Guard.Text(radius)} mm of the disc"
            );
        return new(this) { DiscRadius = radius, HoleRadius = hole };
    }

    /// <summary>Returns the ring under a name, for captions.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public Ring Named(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        return new(this) { Name = name };
    }

    /// <summary>Returns the ring with a band carved round it, fitted with whole repeats, its upper edge outwards.</summary>
    /// <param name="band">The band.</param>
    [Pure]
    public RingBorder Border(TriangleBand band) => new(this, Guard.NotNull(band));

    /// <summary>Returns the name and the size, for messages.</summary>
    public override string ToString() => Title(Wording.English);

    /// <summary>Returns the ring from a direction on, as far round as given.</summary>
    internal Ring Spanning(Angle start, Angle sweep) => new(this) { Start = start, Sweep = sweep };

    internal string Title(Wording words)
    {
        var size = IsWhole ? words.Ring(Radius) : words.Arc(Radius, Sweep.Degrees);
        return Name is null ? size : $"{Name}, {size}";
    }
}
