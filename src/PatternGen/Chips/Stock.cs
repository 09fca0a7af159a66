using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The wood: how thick it is, and how its grain runs.</summary>
/// <remarks>
/// The grain is measured from the length of the piece: from the x axis, or, of a member of a frame, from the member's own
/// length as it lies there. Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class Stock
{
    /// <summary>An edge this near to 45 degrees, in the sine of the difference, counts as long grain: arithmetic, not wood, would decide.</summary>
    private const double Noise = 1e-9;

    private Stock(double thickness) => Thickness = thickness;

    private Stock(Stock other)
        : this(other.Thickness)
    {
        Grain = other.Grain;
        EndGrain = other.EndGrain;
        Species = other.Species;
    }

    /// <summary>Thickness in mm.</summary>
    public double Thickness { get; }

    /// <summary>Direction of the grain, counter-clockwise from the length of the piece. Default 0: along it.</summary>
    public Angle Grain { get; private init; }

    /// <summary>Which ends are end grain. Default both.</summary>
    public EndGrain EndGrain { get; private init; }

    /// <summary>Name of the wood, for notes; null, the default, for none.</summary>
    public string? Species { get; private init; }

    /// <summary>Returns wood of a given thickness, with the grain along x.</summary>
    /// <param name="thickness">In mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is not positive.</exception>
    public static Stock Thick(double thickness) => new(Guard.Positive(thickness));

    /// <summary>Returns the stock with its grain in another direction.</summary>
    /// <param name="degrees">Counter-clockwise from the length of the piece; 90 is across it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite.</exception>
    [Pure]
    public Stock GrainAlong(double degrees) => GrainAlong(Angle.FromDegrees(degrees));

    /// <inheritdoc cref="GrainAlong(double)"/>
    /// <param name="direction">Counter-clockwise from the length of the piece.</param>
    [Pure]
    public Stock GrainAlong(Angle direction) => new(this) { Grain = direction };

    /// <summary>Returns the stock with end grain at the given ends only.</summary>
    /// <param name="ends">Which of the two edges that lie across the grain.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public Stock WithEndGrain(EndGrain ends) => new(this) { EndGrain = Guard.Defined(ends) };

    /// <summary>Returns the stock under the name of its wood.</summary>
    /// <param name="species">Such as "basswood".</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public Stock WithSpecies(string species)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(species);
        return new(this) { Species = species };
    }

    /// <summary>Returns whether an edge of the wood is end grain: whether it lies at more than 45 degrees to the grain, at an end that has it.</summary>
    /// <param name="edge">
    /// The direction of the edge, walked with the wood on the left, as outlines run. With the grain along x, the right
    /// end of a board, (0, 1), is end grain, its lower edge, (1, 0), is not.
    /// </param>
    /// <param name="length">Direction of the length of the piece; along x if not given.</param>
    /// <exception cref="ArgumentException">The edge has no direction.</exception>
    public bool IsEndGrain(Vector edge, Angle length = default) =>
        IsAcross(edge, Vector.Towards(length + Grain));

    /// <summary>Returns whether an edge is end grain where the grain runs in a direction of length 1.</summary>
    internal bool IsAcross(Vector edge, Vector grain)
    {
        if (edge.LengthSquared == 0)
            throw new ArgumentException("An edge needs a direction, not (0, 0).", nameof(edge));
        var along = edge.Unit();
        // The wood lies on the left, so out of it is to the right.
        var outwards = grain.Dot(-along.Left);
        if (Math.Abs(outwards) <= Math.Abs(grain.Dot(along)) + Noise)
            return false;
        return EndGrain switch
        {
            EndGrain.AtNoEnd => false,
            EndGrain.AtFirstEnd => outwards < 0,
            EndGrain.AtLastEnd => outwards > 0,
            _ => true,
        };
    }

    /// <summary>Returns thickness, species and grain, for messages.</summary>
    public override string ToString() =>
        $"{Guard.Text(Thickness)} mm {Species ?? "stock"}, grain {Grain}";
}
