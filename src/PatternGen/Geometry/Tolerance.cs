namespace PatternGen.Geometry;

/// <summary>
/// The one tolerance of the kernel: how near two points must lie to count as one.
/// </summary>
/// <remarks>
/// The merge distance is 1e-9 of the drawing's extent and never below 1e-9 mm; at tangencies, where an error in the
/// gap between two curves grows to its square root along them, the square root of the merge distance is used.
/// For a drawing of 742.5 mm the merge distance is 7.425e-7 mm. The default value has the merge distance 1e-9 mm.
/// Immutable and safe to share between threads.
/// </remarks>
public readonly record struct Tolerance
{
    /// <summary>Share of the extent that merges. Larger values join what a carver sees apart; smaller ones split
    /// triple points that arithmetic in doubles no longer brings together.</summary>
    private const double Share = 1e-9;

    private const double Smallest = 1e-9;

    private readonly double _excess;

    private Tolerance(double merge) => _excess = merge - Smallest;

    /// <summary>Points nearer than this many millimetres are one point. Default 1e-9 mm.</summary>
    public double Merge => Smallest + _excess;

    /// <summary>Points of a tangency nearer than this many millimetres are one: the square root of <see cref="Merge"/>.</summary>
    public double AtTangency => Math.Sqrt(Merge);

    /// <summary>Returns the tolerance for a drawing of the given extent (its larger side, in mm).</summary>
    /// <param name="extent">Size of the drawing in mm, 0 or more. <c>ForExtent(742.5).Merge</c> is 7.425e-7.</param>
    /// <exception cref="ArgumentOutOfRangeException">The extent is negative, NaN or beyond 2 km.</exception>
    public static Tolerance ForExtent(double extent) =>
        new(Math.Max(Smallest, Share * Guard.Within(extent, 0, 4 * Guard.MaxSize)));

    /// <summary>Returns the tolerance for everything inside the given extents.</summary>
    public static Tolerance For(Extents extents) =>
        ForExtent(Math.Max(extents.Width, extents.Height));

    /// <summary>The tolerance with a given merge distance, for work that goes on more coarsely.</summary>
    internal static Tolerance OfMerge(double merge) => new(Math.Max(Smallest, merge));

    /// <summary>Whether two points count as one.</summary>
    public bool Same(Point a, Point b) => a.DistanceTo(b) <= Merge;
}
