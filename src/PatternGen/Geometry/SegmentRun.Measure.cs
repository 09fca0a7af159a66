namespace PatternGen.Geometry;

public abstract partial class SegmentRun
{
    /// <summary>Distance from the start to each segment's start, and the whole length last; filled when first asked for.</summary>
    private volatile double[]? _starts;

    /// <summary>Length along the run in mm, exact. A square of side 3 has 12.</summary>
    public double Length => Starts[^1];

    /// <summary>The smallest upright rectangle that holds the run, arcs included.</summary>
    public Extents Extents
    {
        get
        {
            var extents = Extents.Of(_vertices[0].Point);
            for (var i = 0; i < Count; i++)
                extents = extents.Including(At(i).Extents);
            return extents;
        }
    }

    /// <summary>The tolerance for things of this run's size.</summary>
    internal Tolerance Tolerance => Tolerance.For(Extents);

    private double[] Starts => _starts ??= Accumulated();

    /// <summary>Returns the point at a distance along the run.</summary>
    /// <param name="length">
    /// Distance from the first corner in mm. A closed run goes round again beyond its ends, so that -5 is 5 mm before the
    /// first corner; an open run stops at its nearer end.
    /// </param>
    /// <returns>On a counter-clockwise square of side 3 from (0, 0), length 4 is (3, 1).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    public Point PointAt(double length)
    {
        var (index, within) = Seek(length);
        return At(index).PointAt(within);
    }

    /// <summary>Returns the direction of travel, of length 1, at a distance along the run.</summary>
    /// <param name="length">As for <see cref="PointAt"/>; at a corner the segment that starts there counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    /// <exception cref="InvalidOperationException">The whole run is a single point.</exception>
    public Vector TangentAt(double length)
    {
        var (index, within) = Seek(length);
        return At(index).TangentAt(within);
    }

    /// <summary>Returns the direction to the left of travel, of length 1: into a counter-clockwise contour.</summary>
    /// <param name="length">As for <see cref="PointAt"/>; at a corner the segment that starts there counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    /// <exception cref="InvalidOperationException">The whole run is a single point.</exception>
    public Vector NormalAt(double length) => TangentAt(length).Left;

    /// <summary>Returns the signed curvature in 1/mm: 1 / radius, positive where the run turns left, 0 on lines.</summary>
    /// <param name="length">As for <see cref="PointAt"/>; at a corner the segment that starts there counts.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite.</exception>
    public double CurvatureAt(double length) => At(Seek(length).Index).Curvature;

    /// <summary>Returns the point of the run nearest to a given one, with its place along the run.</summary>
    /// <returns>Of several equally near points, the first along the run.</returns>
    public NearestPoint Nearest(Point point)
    {
        var nearest = _vertices[0].Point;
        var distance = double.PositiveInfinity;
        var index = 0;
        for (var i = 0; i < Count; i++)
        {
            var candidate = At(i).Nearest(point);
            var away = candidate.DistanceTo(point);
            if (away < distance)
                (nearest, distance, index) = (candidate, away, i);
        }
        return new(nearest, distance, StartOf(index) + At(index).LengthAt(nearest), index);
    }

    /// <summary>Returns the distance in mm from a point to the run.</summary>
    public double DistanceTo(Point point) => Nearest(point).Distance;

    /// <summary>Distance from the start of the run to the start of a segment.</summary>
    internal double StartOf(int index) => Starts[index];

    /// <summary>The segment that holds a place along the run, and how far along it that place lies.</summary>
    internal (int Index, double Within) Seek(double length)
    {
        Guard.Finite(length);
        var total = Length;
        if (IsClosed && total > 0)
        {
            length -= Math.Floor(length / total) * total;
            // A tiny negative length rounds up to the whole, which is the first corner again.
            if (length >= total)
                length = 0;
        }
        length = Math.Clamp(length, 0, total);
        var found = Array.BinarySearch(Starts, length);
        var index = found >= 0 ? found : ~found - 1;
        // Doubled corners share their start: the last of them is the one with a direction.
        while (index < Count && Starts[index + 1] == length)
            index++;
        index = LastWithLength(Math.Min(index, Count - 1));
        return (index, length - Starts[index]);
    }

    /// <summary>At the end of an open run the segment that ends there counts, not an empty one after it.</summary>
    private int LastWithLength(int index)
    {
        while (index > 0 && Starts[index + 1] == Starts[index])
            index--;
        return index;
    }

    private double[] Accumulated()
    {
        var starts = new double[Count + 1];
        for (var i = 0; i < Count; i++)
            starts[i + 1] = starts[i] + At(i).Length;
        return starts;
    }
}
